package settle.plots.chart;

import java.util.List;

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
   * @param sample of the line or the marker it is about
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

  /** A panel without notes. */
  public Panel(String name, int height, Axis x, Axis y, List<? extends Mark> marks) {
    this(name, height, x, y, List.copyOf(marks), List.of(), List.of());
  }
}
