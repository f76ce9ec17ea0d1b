package settle.plots.chart;

import java.util.ArrayList;
import java.util.List;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.Theme;

/**
 * One plot of a chart.
 *
 * @param name what it shows; empty for nothing
 * @param height of the plot itself on paper 960 wide [px]
 * @param x its horizontal axis
 * @param y its vertical axis
 * @param marks what is on it, back to front
 * @param notes what stands above its right end
 * @param ends what lines are called at their right ends
 */
public record Panel(
    String name, int height, Axis x, Axis y, List<Mark> marks, List<Note> notes, List<End> ends) {

  /**
   * A note above a panel.
   *
   * @param words what it says
   * @param sample of the line or the marker it is about; null for none
   */
  public record Note(String words, Key.Sample sample) {}

  /**
   * Words where a line ends at the right.
   *
   * @param y where [unit of the vertical axis]
   * @param words what it is called there
   * @param colour of the words
   * @param bold whether heavy
   */
  public record End(double y, String words, int colour, boolean bold) {}

  public Panel {
    marks = List.copyOf(marks);
    notes = List.copyOf(notes);
    ends = List.copyOf(ends);
  }

  /** A panel with nothing on it yet. */
  public static Panel of(String name, int height, Axis x, Axis y) {
    return new Panel(name, height, x, y, List.of(), List.of(), List.of());
  }

  /** This panel with more marks on top. */
  public Panel with(List<? extends Mark> more) {
    return new Panel(name, height, x, y, joined(marks, more), notes, ends);
  }

  /** This panel with more marks on top. */
  public Panel with(Mark... more) {
    return with(List.of(more));
  }

  /** This panel with a line. */
  public Panel line(String called, Curve curve, Look look) {
    return with(new Mark.Line(called, curve, look));
  }

  /** This panel with a finely dashed straight line. */
  public Panel fine(String called, double x1, double y1, double x2, double y2) {
    return line(called, Curve.straight(x1, y1, x2, y2), Look.ink(Stroke.FINE_DASH));
  }

  /** This panel with a level across it. */
  public Panel level(String called, double at) {
    return fine(called, x.min(), at, x.max(), at);
  }

  /** This panel with an upright line through it. */
  public Panel upright(String called, double at) {
    return fine(called, at, y.min(), at, y.max());
  }

  /** This panel with a remark at a place. */
  public Panel remark(String words, double atX, double atY, Mark.Side side) {
    return with(new Mark.Words(words, atX, atY, side));
  }

  /** This panel with a note above it. */
  public Panel noted(String words) {
    return noted(words, null);
  }

  /** This panel with a note above it. */
  public Panel noted(String words, Key.Sample sample) {
    List<Note> more = List.of(new Note(words, sample));
    return new Panel(name, height, x, y, marks, joined(notes, more), ends);
  }

  /** This panel with words where a line ends. */
  public Panel ended(double at, String words) {
    return ended(new End(at, words, Theme.INK, false));
  }

  /** This panel with words where a line ends. */
  public Panel ended(End end) {
    return new Panel(name, height, x, y, marks, notes, joined(ends, List.of(end)));
  }

  private static <T> List<T> joined(List<T> some, List<? extends T> more) {
    List<T> all = new ArrayList<>(some);
    all.addAll(more);
    return all;
  }
}
