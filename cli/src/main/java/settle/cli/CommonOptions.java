package settle.cli;

import java.nio.file.Path;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Options of every command that answers for a scenario. */
final class CommonOptions {

  @Parameters(
      paramLabel = "FILE",
      converter = FileConverter.class,
      description = "The scenario: a house and how it is heated (YAML).")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      converter = FolderConverter.class,
      description =
          "Write report.html, summary.txt, summary.json and plots to this folder, and traces.csv of runs; the folder is made if it is not there.")
  private Path out;

  @Mixin private Speech speech;

  Path file() {
    return file;
  }

  /** Where to write files; null for none. */
  Path out() {
    return out;
  }

  /** The form of the output. */
  Speech speech() {
    return speech;
  }
}
