package settle.cli;

import picocli.CommandLine.Option;

/** The option of every command whose answer may be no. */
final class Strictness {

  @Option(
      names = "--strict",
      description =
          "End with exit status 1 if the answer is no: an arrangement does not keep up, or an aim is missed.")
  private boolean strict;

  /** Exit status of a command that has answered. */
  int status(boolean keepsUp) {
    return strict && !keepsUp ? ExitStatus.DOES_NOT_KEEP_UP : ExitStatus.DONE;
  }
}
