package settle.cli.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** What commands cost from start to finish, as somebody types them. */
final class CommandCosts {

  /** A command that hangs is given up [min]. */
  private static final long LONGEST = 10;

  private static final String YEAR_FILE = "year.yaml";

  private final Path work;

  private CommandCosts(Path work) {
    this.work = work;
  }

  /**
   * A command.
   *
   * @param name in the choice of cases
   * @param title in the table
   * @param times how often it is run; the least counts
   * @param before whether an earlier build is given it too
   * @param words behind {@code settle}
   */
  private record Command(
      String name, String title, int times, boolean before, List<String> words) {}

  /**
   * Time taken.
   *
   * @param wall from start to finish [s]
   * @param processor by all threads [s]
   */
  private record Time(double wall, double processor) {

    static final Time UNKNOWN = new Time(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    Time least(Time other) {
      return new Time(Math.min(wall, other.wall), Math.min(processor, other.processor));
    }
  }

  /** Rows of a table, for the commands asked for. */
  static String table(List<String> asked, Optional<Build> before) throws IOException {
    Path work = Files.createTempDirectory("settle-bench");
    Files.writeString(work.resolve(YEAR_FILE), year());
    StringBuilder rows = new StringBuilder();
    CommandCosts costs = new CommandCosts(work);
    for (Command command : costs.commands()) {
      if (asked.isEmpty() || asked.contains(command.name)) {
        rows.append(costs.row(command, before));
      }
    }
    if (rows.length() == 0) {
      return "";
    }
    return """

    | command, start to finish | time | processor time | before | processor time | ratio |
    | --- | ---: | ---: | ---: | ---: | ---: |
    """
        + rows;
  }

  private List<Command> commands() {
    String terrace = Houses.exampleFile("mid-terrace").toString();
    String bakery = Houses.exampleFile("bakery").toString();
    String out = work.resolve("out").toString();
    String skirting = "heated skirting";
    return List.of(
        command("check", "`check` of the mid-terrace", 3, true, "check", terrace),
        command(
            "compare", "`compare`, every file written", 3, true, "compare", terrace, "--out", out),
        command("verdict", "`verdict` of it", 1, true, "verdict", terrace),
        command(
            "bakery",
            "`verdict` of the bakery without odds",
            1,
            true,
            "verdict",
            bakery,
            "--odds",
            "0"),
        command(
            "tune",
            "`tune` of the mid-terrace",
            1,
            true,
            "tune",
            terrace,
            "--arrangement",
            skirting),
        command(
            "year",
            "`simulate` of a year of the insulated house's heat pump",
            1,
            false,
            "simulate",
            work.resolve(YEAR_FILE).toString(),
            "--arrangement",
            skirting));
  }

  private static Command command(
      String name, String title, int times, boolean before, String... words) {
    return new Command(name, title, times, before, List.of(words));
  }

  /** The insulated house in a year of cool days, as {@link Houses#inCoolDays} has them. */
  private static String year() throws IOException {
    String days = Files.readString(Houses.exampleFile("insulated-house"));
    String weather =
        replaced(days, "    ramp: \\{.*", "    design day: {mean: 5 °C, amplitude: 3 K}");
    return replaced(weather, "  length: 72 h", "  length: 365 d");
  }

  private static String replaced(String text, String pattern, String with) {
    String other = text.replaceFirst(pattern, with);
    if (other.equals(text)) {
      throw new IllegalStateException("the example no longer says '" + pattern + "'");
    }
    return other;
  }

  private String row(Command command, Optional<Build> before) throws IOException {
    Time now = Time.UNKNOWN;
    Time then = Time.UNKNOWN;
    for (int i = 0; i < command.times; i++) {
      if (command.before && before.isPresent()) {
        then = then.least(once(before.get(), command.words));
      }
      now = now.least(once(Build.now(), command.words));
    }
    return String.format(
        Locale.ROOT,
        "| %s | %s | %s | %s | %s | %s |%n",
        command.title,
        seconds(now.wall),
        seconds(now.processor),
        seconds(then.wall),
        seconds(then.processor),
        Double.isFinite(then.processor)
            ? BenchmarkTable.digits(then.processor / now.processor)
            : "");
  }

  private static String seconds(double seconds) {
    return Double.isFinite(seconds) ? BenchmarkTable.digits(seconds) + " s" : "";
  }

  private Time once(Build build, List<String> words) throws IOException {
    String launcher = build.root().resolve("settle").toString();
    // The first use builds what is stale and lays out the classes.
    shell(launcher, List.of("--version"));
    System.out.println(build.name() + ": settle " + String.join(" ", words));
    return shell(launcher, words);
  }

  /** Runs it under a shell, which knows what its children have taken once they have ended. */
  private Time shell(String launcher, List<String> words) throws IOException {
    List<String> line = new ArrayList<>();
    line.addAll(
        List.of("bash", "-c", "TIMEFORMAT='%R %U %S'; time \"$@\" >/dev/null 2>&1", "bash"));
    line.add(launcher);
    line.addAll(words);
    Path time = work.resolve("time");
    Process process = new ProcessBuilder(line).redirectError(time.toFile()).start();
    try {
      if (!process.waitFor(LONGEST, TimeUnit.MINUTES)) {
        process.destroy();
        return Time.UNKNOWN;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Time.UNKNOWN;
    }
    String[] parts = Files.readString(time).strip().split(" ");
    if (process.exitValue() > 1 || parts.length != 3) {
      System.out.println("settle ended with status " + process.exitValue());
      return Time.UNKNOWN;
    }
    return new Time(
        Double.parseDouble(parts[0]), Double.parseDouble(parts[1]) + Double.parseDouble(parts[2]));
  }
}
