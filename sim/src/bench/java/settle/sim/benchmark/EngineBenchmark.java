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
import settle.sim.model.HouseModel;
import settle.sim.engine.HouseRun;
import settle.sim.engine.Simulation;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;

/** The engine: a run of a prepared house; and all that a study does with it. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 2, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class EngineBenchmark {

  /** What is run. */
  @Param public BenchmarkCase theCase;

  /** With what it is heated. */
  @Param public BenchmarkCase.Emitters emitters;

  private House house;
  private Arrangement arrangement;
  private HouseModel model;

  /** Prepares the house. */
  @Setup
  public void prepare() {
    house = theCase.house();
    arrangement = emitters.of(house);
    model = new HouseModel(house, arrangement, 1);
  }

  /** Every step of a run, recorded. */
  @Benchmark
  public Trace run() {
    HouseRun run = new HouseRun(model, house.run());
    run.run();
    return run.trace();
  }

  /** Preparation, run, settled house and figures. */
  @Benchmark
  public RunResult study() {
    return Simulation.run(house, arrangement);
  }
}
