package settle.cli.benchmark;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
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

/**
 * One case. What JMH measures is time on the wall; beside it the time that the thread had a
 * processor for is counted, which on a shared machine is what the program costs.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx2g")
@Warmup(iterations = 0)
@Measurement(time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class CaseBenchmark {

  /** What is done. */
  @Param public BenchmarkCase theCase;

  /** With what the house is heated. */
  @Param public BenchmarkCase.Emitters emitters;

  /** Processor time for which it is done before it counts [ns]: while others compile. */
  private static final long WARM_UP = 3_000_000_000L;

  private Task task;

  /** Sums over an iteration. */
  @State(Scope.Thread)
  @AuxCounters(AuxCounters.Type.EVENTS)
  public static class Sums {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /** Processor time [ns]. */
    public double nanoseconds;

    /** How often it was done. */
    public double times;

    /** Steps of runs. */
    public double steps;

    /** States of the house run, once for each time. */
    public double states;

    void add(long from, Task.Done done) {
      nanoseconds += THREADS.getCurrentThreadCpuTime() - from;
      times++;
      steps += done.steps();
      states += done.states();
    }
  }

  /** Prepares the house. */
  @Setup
  public void prepare() {
    try {
      Task before = theCase.warmUp(emitters);
      long enough = Sums.THREADS.getCurrentThreadCpuTime() + WARM_UP;
      do {
        before.once();
      } while (Sums.THREADS.getCurrentThreadCpuTime() < enough);
      task = theCase.task(emitters);
    } catch (LinkageError e) {
      throw new IllegalStateException(
          "this build does not have what the case asks of it, which was compiled for another: "
              + e.getMessage(),
          e);
    }
  }

  /** Does it. */
  @Benchmark
  public Object once(Sums sums) {
    long from = Sums.THREADS.getCurrentThreadCpuTime();
    Task.Done done = task.once();
    sums.add(from, done);
    return done.result();
  }
}
