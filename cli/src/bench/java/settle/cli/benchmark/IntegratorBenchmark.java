package settle.cli.benchmark;

import java.lang.management.ManagementFactory;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import settle.sim.engine.SampleHouses;
import settle.sim.house.House;

/** The general integrator on eight rooms, recording nothing. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 1, time = 1)
@Measurement(iterations = 2, time = 1)
public class IntegratorBenchmark {

  /** Length of the run [d]: two set-backs and two warm-ups. */
  static final double DAYS = 2;

  /** With what it is heated. */
  @Param public BenchmarkCase.Emitters emitters;

  /** Error per step allowed in a temperature [K]. */
  @Param("1")
  public double tolerance;

  /** The house that is integrated. */
  static House house() {
    return SampleHouses.eightRooms(DAYS, SampleHouses.ideal());
  }

  /** The first days of a run. */
  @Benchmark
  public double[] once(CaseBenchmark.Sums sums) {
    House house = house();
    long from = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    GeneralIntegration integration = new GeneralIntegration(house, emitters.of(house), tolerance);
    double[] end =
        integration.run(DAYS * 86_400, new double[0], (index, room, air, operative) -> {});
    sums.add(from, new Task.Done(end, integration.states(), integration.steps()));
    return end;
  }
}
