package settle.cli;

import java.io.PrintWriter;
import java.util.function.LongSupplier;
import settle.plots.words.Quantities;
import settle.scenarios.document.PlainText;

/**
 * One line on the terminal that says what is being done, how much of it and how long it will still
 * take, and vanishes when it is done; silent anywhere else. Any thread may tell.
 */
final class Progress implements AutoCloseable {

  static final String ERASE_LINE = "\r\u001B[K";

  private static final int BAR = 16;

  /** Time between two pictures of the bar [ns]: smooth to the eye and nothing to the run. */
  private static final long PERIOD = 100_000_000;

  /** Time before which an estimate of the time left is a guess [ns]. */
  private static final long FIRST_ESTIMATE = 700_000_000;

  private final PrintWriter err;
  private final boolean shown;
  private final int width;
  private final LongSupplier clock;

  private String stage = "";
  private long begun;
  private long drawn;

  /**
   * @param err where to draw
   * @param shown whether someone watches
   * @param width of a line [characters]
   * @param clock [ns]
   */
  Progress(PrintWriter err, boolean shown, int width, LongSupplier clock) {
    this.err = err;
    this.shown = shown;
    this.width = width;
    this.clock = clock;
  }

  synchronized void stage(String what) {
    stage = PlainText.line(what);
    begun = clock.getAsLong();
    drawn = begun;
    draw("settle: " + stage + " …");
  }

  /**
   * How much of the stage is done.
   *
   * @param done share [-], 0 to 1
   */
  synchronized void share(double done) {
    long now = clock.getAsLong();
    if (!shown || now - drawn < PERIOD) {
      return;
    }
    drawn = now;
    int full = (int) (BAR * done);
    String left = "";
    if (now - begun >= FIRST_ESTIMATE && done > 0) {
      double seconds = (now - begun) * 1e-9 * (1 - done) / done;
      left = ", " + Quantities.duration(Math.ceil(seconds)) + " left";
    }
    draw(
        "settle: "
            + stage
            + "  "
            + "■".repeat(full)
            + "·".repeat(BAR - full)
            + "  "
            + (int) (100 * done)
            + " %"
            + left);
  }

  private void draw(String line) {
    if (shown) {
      // A line that overflows would stay behind.
      boolean fits = line.codePointCount(0, line.length()) < width;
      err.print(
          ERASE_LINE
              + (fits ? line : line.substring(0, line.offsetByCodePoints(0, width - 2)) + "…"));
      err.flush();
    }
  }

  @Override
  public void close() {
    draw("");
  }
}
