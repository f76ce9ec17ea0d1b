package settle.cli.benchmark;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Measures cases and commands, this build and an earlier one by turns, and prints tables. Least
 * times count: on a shared machine they say most about the program.
 */
public final class BenchmarkTable {

  private final Options options;
  private final List<String> asked;
  private final Optional<Build> before;
  private final StringBuilder table = new StringBuilder();
  private final StringBuilder integrations = new StringBuilder();

  private BenchmarkTable(Options options, List<String> asked, Optional<Build> before) {
    this.options = options;
    this.asked = asked;
    this.before = before;
  }

  /**
   * @param args options of JMH, such as {@code -prof stack} or {@code -f 3}
   * @throws CommandLineOptionException if JMH does not know an option
   * @throws RunnerException if JMH cannot run
   * @throws IOException if a command cannot be started, or there is no earlier build where it is
   *     said to be
   */
  public static void main(String[] args)
      throws CommandLineOptionException, RunnerException, IOException {
    List<String> asked =
        Arrays.stream(System.getProperty("bench.cases", "").split("[ ,]+"))
            .filter(name -> !name.isEmpty())
            .toList();
    new BenchmarkTable(new CommandLineOptions(args), asked, Build.before()).print();
  }

  private void print() throws RunnerException, IOException {
    double load = load();
    for (BenchmarkCase theCase : BenchmarkCase.values()) {
      if (asked.isEmpty() || asked.contains(theCase.name())) {
        for (BenchmarkCase.Emitters emitters : theCase.emitters()) {
          measure(theCase, emitters);
        }
      }
    }
    String commands = CommandCosts.table(asked, before);
    System.out.printf(
        Locale.ROOT,
        "%n%s, Java %s, %d processors, load %.1f before, %.1f after%n",
        LocalDate.now(),
        System.getProperty("java.version"),
        Runtime.getRuntime().availableProcessors(),
        load,
        load());
    System.out.print(
        rows(
                """

                | warm, one thread | emitters | states | steps | time | ns per state, step | before | ratio |
                | --- | --- | ---: | ---: | ---: | ---: | ---: | ---: |
                """,
                table)
            + rows(
                """

                | 7 days of eight rooms | engine | off by | DormandPrince853 | off by | tolerance | steps | ratio |
                | --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
                """,
                integrations)
            + commands);
  }

  private static String rows(String heading, StringBuilder rows) {
    return rows.length() == 0 ? "" : heading + rows;
  }

  private void measure(BenchmarkCase theCase, BenchmarkCase.Emitters emitters)
      throws RunnerException {
    Cost now = Cost.UNKNOWN;
    Cost then = Cost.UNKNOWN;
    for (int turn = 0; turn < theCase.pace().turns(); turn++) {
      if (before.isPresent()) {
        then = then.or(cost(before.get(), theCase, emitters));
      }
      now = now.or(cost(Build.now(), theCase, emitters));
    }
    boolean run = now.steps() > 0;
    table.append(
        String.format(
            Locale.ROOT,
            "| %s | %s | %s | %s | %s | %s | %s | %s |%n",
            theCase.title(),
            emitters.name().toLowerCase(Locale.ROOT),
            run ? now.states() : "",
            run ? now.steps() : "",
            time(now),
            run ? digits(now.milliseconds() * 1e6 / now.steps() / now.states()) : "",
            before.isPresent() ? time(then) : "",
            then.known() ? digits(then.milliseconds() / now.milliseconds()) : ""));
    if (theCase.integrated()) {
      integrate(emitters, now);
    }
  }

  private Cost cost(Build build, BenchmarkCase theCase, BenchmarkCase.Emitters emitters)
      throws RunnerException {
    Options paced =
        new OptionsBuilder()
            .parent(options)
            .measurementIterations(theCase.pace().iterations())
            .build();
    System.out.println(build.name() + ": " + theCase.title());
    return Cost.of(
        build,
        CaseBenchmark.class,
        paced,
        Map.of("theCase", theCase.name(), "emitters", emitters.name()));
  }

  /** The general integrator, as loose as the engine's own budget of error lets it be. */
  private void integrate(BenchmarkCase.Emitters emitters, Cost engine) throws RunnerException {
    Accuracy accuracy = Accuracy.of(emitters);
    Cost integrator =
        Cost.of(
            Build.now(),
            IntegratorBenchmark.class,
            options,
            Map.of(
                "emitters", emitters.name(), "tolerance", Double.toString(accuracy.tolerance())));
    double scale = 7 / IntegratorBenchmark.DAYS;
    integrations.append(
        String.format(
            Locale.ROOT,
            "| %s | %s | %s | %s | %s | %s K | %.0f | %.0f |%n",
            emitters.name().toLowerCase(Locale.ROOT),
            time(engine),
            kelvin(accuracy.engineError()),
            milliseconds(integrator.milliseconds() * scale),
            kelvin(accuracy.integratorError()),
            digits(accuracy.tolerance()),
            integrator.steps() * scale,
            integrator.milliseconds() * scale / engine.milliseconds()));
  }

  private static String kelvin(double error) {
    return Double.isNaN(error) ? "" : digits(error) + " K";
  }

  private static String time(Cost cost) {
    return cost.known() ? milliseconds(cost.milliseconds()) : "not measured: see above";
  }

  private static String milliseconds(double milliseconds) {
    return milliseconds < 1000 ? digits(milliseconds) + " ms" : digits(milliseconds / 1000) + " s";
  }

  /** Three digits, and no more than that. */
  static String digits(double value) {
    return new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }

  private static double load() {
    return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
  }
}
