package settle.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Options of the commands that run a scenario. */
final class RunOptions {

  @Parameters(
      paramLabel = "FILE",
      description = "The scenario: a house and how it is heated (YAML).")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Write summary.txt, summary.json, traces.csv, plots and report.html to this folder; it is made if it is not there.")
  private Path out;

  @Option(
      names = "--json",
      description = "Print the result as one JSON document, and nothing else, on standard output.")
  private boolean json;

  @Option(
      names = {"-q", "--quiet"},
      description = "Print no summary and no progress.")
  private boolean quiet;

  @Option(
      names = "--step",
      paramLabel = "DURATION",
      converter = DurationConverter.class,
      description =
          "Time step after an event, such as '5 s'; the long steps of quiet stretches change in proportion.")
  private Double step;

  @Option(
      names = "--error-bars",
      description =
          "Run again with half the step and twice the resolution, and state how far each figure moves.")
  private boolean errorBars;

  @Option(
      names = "--strict",
      description = "End with exit status 1 if an arrangement does not keep up.")
  private boolean strict;

  Path file() {
    return file;
  }

  /** Where to write files; null for none. */
  Path out() {
    return out;
  }

  boolean json() {
    return json;
  }

  boolean quiet() {
    return quiet;
  }

  /** Step after an event [s]; null for the scenario's own. */
  Double step() {
    return step;
  }

  boolean errorBars() {
    return errorBars;
  }

  boolean strict() {
    return strict;
  }
}
