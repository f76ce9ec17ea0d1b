package settle.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Options of every command that answers for a scenario. */
final class CommonOptions {

  @Parameters(
      paramLabel = "FILE",
      description = "The scenario: a house and how it is heated (YAML).")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Write summary.txt, summary.json, plots and report.html to this folder, and traces.csv of what is simulated; it is made if it is not there.")
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

  boolean strict() {
    return strict;
  }
}
