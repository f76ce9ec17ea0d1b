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
@Warmup(time = 700, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(time = 500, timeUnit = TimeUnit.MILLISECONDS)
public class CaseBenchmark {

  /** What is done. */
  @Param public BenchmarkCase theCase;

  /** With what the house is heated. */
  @Param public BenchmarkCase.Emitters emitters;

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
    if (theCase.pace() == BenchmarkCase.Pace.ONCE) {
      Task week = theCase.week(emitters);
      long enough = System.nanoTime() + 3_000_000_000L;
      while (System.nanoTime() < enough) {
        week.once();
      }
    }
    task = theCase.task(emitters);
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
