package settle.cli;

import picocli.CommandLine.Option;

/** Options of every command that may talk for long: in which form, and whether at all. */
final class Speech {

  @Option(
      names = "--json",
      description = "Print the result as one JSON document and nothing else on standard output.")
  private boolean json;

  @Option(
      names = {"-q", "--quiet"},
      description = "Print no summary and no progress.")
  private boolean quiet;

  @Option(
      names = "--full",
      description = "Print everything that was found, not only the answer and what it rests on.")
  private boolean full;

  boolean full() {
    return full;
  }

  boolean json() {
    return json;
  }

  boolean quiet() {
    return quiet;
  }
}
