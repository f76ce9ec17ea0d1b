package settle.cli;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Options of the commands that run a scenario. */
final class RunOptions {

  @Mixin private CommonOptions common;

  @Option(
      names = "--step",
      paramLabel = "DURATION",
      converter = DurationConverter.class,
      description =
          "Time step after an event, such as '5 s'; the longer steps of quiet periods change in proportion.")
  private Double step;

  @Option(
      names = "--error-bars",
      description =
          "Run again at two and four times the resolution, and state how far each figure moves.")
  private boolean errorBars;

  /** Those of every command that answers for a scenario. */
  CommonOptions common() {
    return common;
  }

  /** Step after an event [s]; null for the scenario's own. */
  Double step() {
    return step;
  }

  boolean errorBars() {
    return errorBars;
  }
}
