package settle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.function.Function;
import picocli.CommandLine.Model.CommandSpec;
import settle.cli.output.Layout;
import settle.scenarios.document.PlainText;

/** Output of a command: progress, result, errors. */
final class Talk {

  private final Speech speech;
  private final PrintWriter out;
  private final Progress progress;
  private final Layout layout;

  Talk(CommandSpec command, Speech speech) {
    this.speech = speech;
    out = command.commandLine().getOut();
    Terminal terminal = Settle.of(command).terminal();
    progress =
        new Progress(
            command.commandLine().getErr(),
            terminal.watched() && !speech.quiet(),
            terminal.width(),
            System::nanoTime);
    layout = new Layout(terminal.width(), speech.full());
  }

  /** The progress shown to the user. */
  Progress progress() {
    return progress;
  }

  /**
   * Prints the result in the form asked for.
   *
   * @param json as a document
   * @param summary as text in a layout
   */
  void say(String json, Function<Layout, String> summary) {
    if (speech.json()) {
      out.print(json);
    } else if (!speech.quiet()) {
      out.print(PlainText.of(summary.apply(layout)));
    }
    out.flush();
  }

  /** A model that cannot be solved. */
  static Failure unsolvable(ArithmeticException e) {
    // From another thread it arrives as the cause of a nameless copy.
    Throwable told = e.getCause() == null ? e : e.getCause();
    return new Failure(
        ExitStatus.COULD_NOT_FINISH, "the model cannot be solved: " + told.getMessage(), e);
  }

  /** A folder that cannot be written. */
  static Failure unwritable(IOException e, Path folder) {
    return new Failure(
        ExitStatus.COULD_NOT_FINISH, "cannot write " + FileTrouble.describe(e, folder), e);
  }
}
