package settle.cli;

import java.io.PrintWriter;

/**
 * One line on the terminal that says what is being done and vanishes when it is done; silent
 * anywhere else.
 */
final class Progress implements AutoCloseable {

  private static final String ERASE_LINE = "\r\u001B[K";

  private final PrintWriter err;
  private final boolean shown;

  Progress(PrintWriter err, boolean shown) {
    this.err = err;
    this.shown = shown;
  }

  void stage(String what) {
    if (shown) {
      err.print(ERASE_LINE + "settle: " + what + " …");
      err.flush();
    }
  }

  @Override
  public void close() {
    if (shown) {
      err.print(ERASE_LINE);
      err.flush();
    }
  }
}
