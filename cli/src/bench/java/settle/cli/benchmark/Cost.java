package settle.cli.benchmark;

import java.util.Map;
import org.openjdk.jmh.results.BenchmarkResult;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * What doing something once costs.
 *
 * @param milliseconds of processor time, in the quickest iteration; infinite before any
 * @param states of the house that was run; 0 where none was
 * @param steps of that run
 */
record Cost(double milliseconds, int states, long steps) {

  static final Cost UNKNOWN = new Cost(Double.POSITIVE_INFINITY, 0, 0);

  /** The lesser of the two. */
  Cost or(Cost other) {
    return other.milliseconds < milliseconds ? other : this;
  }

  boolean known() {
    return Double.isFinite(milliseconds);
  }

  /**
   * Measures in a virtual machine of its own.
   *
   * @param build whose classes it runs
   * @param benchmark a class with one benchmark
   * @param options of JMH
   * @param parameters of the benchmark
   * @return unknown if the build could not do it; what JMH printed says why
   */
  static Cost of(Build build, Class<?> benchmark, Options options, Map<String, String> parameters)
      throws RunnerException {
    OptionsBuilder builder = new OptionsBuilder();
    builder.parent(options);
    builder.include(benchmark.getName() + "\\.");
    builder.shouldFailOnError(false);
    parameters.forEach(builder::param);
    System.setProperty("java.class.path", build.classPath());
    Cost least = UNKNOWN;
    for (RunResult run : new Runner(builder.build()).run()) {
      for (BenchmarkResult forked : run.getBenchmarkResults()) {
        for (IterationResult iteration : forked.getIterationResults()) {
          least = least.or(of(iteration));
        }
      }
    }
    return least;
  }

  private static Cost of(IterationResult iteration) {
    double times = sum(iteration, "times");
    return new Cost(
        sum(iteration, "nanoseconds") / times / 1e6,
        (int) Math.round(sum(iteration, "states") / times),
        Math.round(sum(iteration, "steps") / times));
  }

  private static double sum(IterationResult iteration, String name) {
    return iteration.getSecondaryResults().get(name).getScore();
  }
}
