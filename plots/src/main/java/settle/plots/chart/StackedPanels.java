package settle.plots.chart;

import java.util.ArrayList;
import java.util.List;
import settle.plots.drawing.Sketch;

/** Panels above one another that share their time axis. */
final class StackedPanels {

  private static final int RIGHT = 30;

  /** Width of each plot [px]. */
  static final int PLOT_WIDTH = HouseTheme.WIDTH - Panel.LEFT - RIGHT;

  private final Axis time;
  private final List<Panel> panels = new ArrayList<>();
  private final List<String> names = new ArrayList<>();
  private int y = Legend.HEIGHT;

  StackedPanels(Axis time) {
    this.time = time;
  }

  /** Adds a panel below those there are. */
  Panel add(String name, int height, Axis vertical) {
    Panel panel = new Panel(Panel.LEFT, y + Panel.ABOVE, PLOT_WIDTH, height, time, vertical);
    y += Panel.ABOVE + height + Panel.BELOW + 6;
    panels.add(panel);
    names.add(name);
    return panel;
  }

  /** Draws them all, the caption of the time axis below the last. */
  void paint(Sketch g) {
    for (int i = 0; i < panels.size(); i++) {
      panels.get(i).paint(g);
      panels.get(i).name(g, names.get(i));
    }
    panels.get(panels.size() - 1).caption(g);
  }

  /** Height of it all, legend included [px]. */
  int height() {
    return y + Panel.CAPTION;
  }

  /** The panels from top to bottom. */
  List<Panel> panels() {
    return panels;
  }
}
