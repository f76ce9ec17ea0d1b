package settle.sim.benchmark;

import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.util.Statistics;
import settle.sim.model.HouseModel;
import settle.sim.engine.HouseRun;
import settle.sim.house.Arrangement;
import settle.sim.house.House;

/**
 * Measures every case, engine and general integrator one after the other, and prints one table.
 * Least times are given first: on a shared machine they say most about the program.
 */
public final class BenchmarkTable {

  private final CommandLineOptions options;

  /** Integrations done, by rooms, days and emitters. */
  private final Map<String, Integrated> integrations = new HashMap<>();

  private record Integrated(Accuracy accuracy, double milliseconds, long steps, int states) {}

  private BenchmarkTable(CommandLineOptions options) {
    this.options = options;
  }

  /**
   * @param args options of JMH, such as {@code -prof stack} or {@code -f 1}; names of cases narrow
   *     it down
   * @throws CommandLineOptionException if JMH does not know an option
   * @throws RunnerException if a benchmark fails
   */
  public static void main(String[] args) throws CommandLineOptionException, RunnerException {
    new BenchmarkTable(new CommandLineOptions(args)).print();
  }

  private void print() throws RunnerException {
    StringBuilder table = new StringBuilder();
    table.append(
        String.format(
            Locale.ROOT,
            "%nOne thread, %s, Java %s, %d processors, load %.1f before%n%n",
            LocalDate.now(),
            System.getProperty("java.version"),
            Runtime.getRuntime().availableProcessors(),
            load()));
    table.append(
        String.format(
            "%-34s %-10s %6s %8s %10s %10s %10s %8s %9s%n",
            "engine",
            "emitters",
            "states",
            "steps",
            "least ms",
            "median ms",
            "study ms",
            "ns/st/st",
            "error K"));
    StringBuilder general = new StringBuilder();
    general.append(
        String.format(
            "%n%-34s %-10s %6s %8s %10s %10s %10s %8s %9s%n",
            "DormandPrince853",
            "emitters",
            "states",
            "steps",
            "least ms",
            "tolerance",
            "ratio",
            "ns/st/st",
            "error K"));
    for (BenchmarkCase theCase : BenchmarkCase.values()) {
      if (!wanted(theCase)) {
        continue;
      }
      for (BenchmarkCase.Emitters emitters : BenchmarkCase.Emitters.values()) {
        measure(theCase, emitters, table, general);
      }
    }
    table.append(general);
    table.append(
        String.format(
            Locale.ROOT,
            """

            load %.1f after
            ns/st/st: nanoseconds per state and step. An emitter's parcels count as one state.
            study: preparation, run, settled house and figures; least of all.
            error: largest in any room's air or operative temperature over two days, more than 10 min
            after a switch, against the same cells integrated at a tolerance of 1e-5 K. The integrator
            is as loose as keeps it within 0.02 K, to which tests hold the engine. It is given
            skirting as 20 mixed cells, which are themselves some 0.05 K off: the ratio flatters it. It
            is measured on two days; 7 and 212 are scaled from them.
            ratio: least time of the integrator over least time of the engine.
            """,
            load()));
    System.out.print(table);
  }

  private boolean wanted(BenchmarkCase theCase) {
    return options.getIncludes().isEmpty() || options.getIncludes().contains(theCase.name());
  }

  private void measure(
      BenchmarkCase theCase,
      BenchmarkCase.Emitters emitters,
      StringBuilder table,
      StringBuilder general)
      throws RunnerException {
    Map<Method, Statistics> engine = new EnumMap<>(Method.class);
    for (Method method : Method.values()) {
      engine.put(method, jmh(EngineBenchmark.class, method.name, theCase, emitters, Double.NaN));
    }
    Integrated integrated = theCase.integrable() ? integrated(theCase, emitters) : null;
    House house = theCase.house();
    Arrangement arrangement = emitters.of(house);
    HouseModel model = new HouseModel(house, arrangement, 1);
    HouseRun run = new HouseRun(model, house.run());
    run.run();
    double least = engine.get(Method.RUN).getMin();
    table.append(
        String.format(
            Locale.ROOT,
            "%-34s %-10s %6d %8d %10.2f %10.2f %10.2f %8.2f %9s%n",
            theCase.title(),
            emitters.name().toLowerCase(Locale.ROOT),
            model.states(),
            run.steps(),
            least,
            engine.get(Method.RUN).getPercentile(50),
            engine.get(Method.STUDY).getMin(),
            least * 1e6 / run.steps() / model.states(),
            integrated == null ? "" : kelvin(integrated.accuracy.engineError())));
    if (integrated != null) {
      double scale = theCase.days() / theCase.integratedDays();
      double milliseconds = integrated.milliseconds * scale;
      general.append(
          String.format(
              Locale.ROOT,
              "%-34s %-10s %6d %8.0f %10.0f %10.2g %10.0f %8.2f %9s%n",
              theCase.title(),
              emitters.name().toLowerCase(Locale.ROOT),
              integrated.states,
              integrated.steps * scale,
              milliseconds,
              integrated.accuracy.tolerance(),
              milliseconds / least,
              integrated.milliseconds * 1e6 / integrated.steps / integrated.states,
              kelvin(integrated.accuracy.integratorError())));
    }
  }

  private static String kelvin(double error) {
    return Double.isNaN(error) ? "" : String.format(Locale.ROOT, "%.4f", error);
  }

  private Integrated integrated(BenchmarkCase theCase, BenchmarkCase.Emitters emitters)
      throws RunnerException {
    String key = theCase.rooms() + " " + theCase.integratedDays() + " " + emitters;
    if (!integrations.containsKey(key)) {
      Accuracy accuracy = Accuracy.of(theCase, emitters);
      Statistics time =
          jmh(IntegratorBenchmark.class, "run", theCase, emitters, accuracy.tolerance());
      House house = theCase.house();
      GeneralIntegration once =
          new GeneralIntegration(house, emitters.of(house), accuracy.tolerance());
      once.run(
          theCase.integratedDays() * 86_400, new double[0], (index, room, air, operative) -> {});
      integrations.put(key, new Integrated(accuracy, time.getMin(), once.steps(), once.states()));
    }
    return integrations.get(key);
  }

  /** Benchmarks of the engine. */
  private enum Method {
    RUN("run"),
    STUDY("study");

    private final String name;

    Method(String name) {
      this.name = name;
    }
  }

  private Statistics jmh(
      Class<?> benchmark,
      String method,
      BenchmarkCase theCase,
      BenchmarkCase.Emitters emitters,
      double tolerance)
      throws RunnerException {
    OptionsBuilder builder = new OptionsBuilder();
    builder.parent(options);
    builder.include(benchmark.getName() + "\\." + method + "$");
    builder.param("theCase", theCase.name());
    builder.param("emitters", emitters.name());
    if (!Double.isNaN(tolerance)) {
      builder.param("tolerance", Double.toString(tolerance));
    }
    Collection<RunResult> results = new Runner(builder.build()).run();
    return results.iterator().next().getPrimaryResult().getStatistics();
  }

  private static double load() {
    return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
  }
}
