package settle.sim.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import settle.sim.house.House;

/** The general integrator on the same house, recording nothing. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class IntegratorBenchmark {

  /** What is run. */
  @Param({"ONE_ROOM_48_H", "EIGHT_ROOMS_7_DAYS"})
  public BenchmarkCase theCase;

  /** With what it is heated. */
  @Param public BenchmarkCase.Emitters emitters;

  /** Error per step allowed in a temperature [K]. */
  @Param("1")
  public double tolerance;

  private House house;

  /** Prepares the house. */
  @Setup
  public void prepare() {
    house = theCase.house();
  }

  /** The first days of a run. */
  @Benchmark
  public double[] run() {
    return new GeneralIntegration(house, emitters.of(house), tolerance)
        .run(theCase.integratedDays() * 86_400, new double[0], (index, room, air, operative) -> {});
  }
}
