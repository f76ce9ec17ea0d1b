package settle.plots.chart;

import java.util.List;
import settle.plots.drawing.Drawing;
import settle.plots.drawing.Picture;

/**
 * A chart.
 *
 * @param name short name, fit for a file name
 * @param title what it shows
 * @param meaning what it says, in a sentence or two, from the figures it was drawn from
 * @param keys which line is which
 * @param columns how many panels stand side by side
 * @param panels row by row
 * @param below sentences below them
 */
public record Chart(
    String name,
    String title,
    String meaning,
    List<Key> keys,
    int columns,
    List<Panel> panels,
    List<String> below)
    implements Picture {

  public Chart {
    keys = List.copyOf(keys);
    panels = List.copyOf(panels);
    below = List.copyOf(below);
  }

  /** A chart whose panels say it all. */
  public Chart(
      String name, String title, String meaning, List<Key> keys, int columns, List<Panel> panels) {
    this(name, title, meaning, keys, columns, panels, List.of());
  }

  /** A chart of one panel, or of panels above one another. */
  public Chart(String name, String title, String meaning, List<Key> keys, Panel... panels) {
    this(name, title, meaning, keys, 1, List.of(panels));
  }

  @Override
  public Drawing drawing() {
    return new ChartDrawing(this).draw();
  }
}
