package settle.plots.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import settle.plots.drawing.Box;
import settle.plots.drawing.Drawing;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.Path;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.TextStyle;
import settle.plots.drawing.TextStyle.Anchor;
import settle.plots.drawing.Theme;

/** Draws any chart: its legend, its panels with their axes row by row, what stands below. */
final class ChartDrawing {

  /** Least room left of a plot for its numbers [px]. */
  private static final double LEFT = 50;

  /** Least room right of it, for half of its last label [px]. */
  private static final double RIGHT = 30;

  /** Room above it for name and unit, where it has them [px]. */
  private static final double ABOVE = 28;

  /** Room below it for its numbers [px]. */
  private static final double BELOW = 24;

  /** Further room below for the caption [px]. */
  private static final double CAPTION = 20;

  private static final double BETWEEN_ROWS = 8;
  private static final double LINE = 22;

  /** Between names at the ends of lines, and from the plot to them [px]. */
  private static final double END_SPACING = 17;

  private static final double LEADER = 12;

  private final Chart chart;
  private final Sketch g = new Sketch();
  private final double left;
  private final double width;

  ChartDrawing(Chart chart) {
    this.chart = chart;
    double before = LEFT;
    double behind = RIGHT;
    for (Panel panel : chart.panels()) {
      for (Tick tick : panel.y().ticks()) {
        if (tick.kind() == Tick.Kind.NAME) {
          before = Math.max(before, Lettering.width(tick.label(), Theme.NAME) + 14);
        }
      }
      for (Mark mark : panel.marks()) {
        behind = Math.max(behind, mark.beyond());
      }
      for (Panel.End end : panel.ends()) {
        behind = Math.max(behind, Lettering.width(end.words(), style(end)) + LEADER + 12);
      }
    }
    left = Math.ceil(before);
    width = Math.floor((double) Theme.WIDTH / chart.columns() - left - behind);
  }

  Drawing draw() {
    double y = 4;
    if (!chart.keys().isEmpty()) {
      Legend legend = new Legend(g, left);
      chart.keys().forEach(legend::add);
      y = legend.bottom();
    }
    int columns = chart.columns();
    int panels = chart.panels().size();
    for (int first = 0; first < panels; first += columns) {
      y = row(first, Math.min(first + columns, panels), y) + BETWEEN_ROWS;
    }
    for (String sentence : chart.below()) {
      g.text(sentence, left, y + 10, Theme.LABEL);
      y += LINE;
    }
    return g.drawing(Theme.WIDTH, y);
  }

  /** Draws a row and says where it ends [px]. */
  private double row(int first, int end, double y) {
    double bottom = y;
    for (int i = first; i < end; i++) {
      Panel panel = chart.panels().get(i);
      boolean headed = !panel.name().isEmpty() || !panel.y().caption().isEmpty();
      double x = left + (double) Theme.WIDTH / chart.columns() * (i - first);
      Box area = new Box(x, y + (headed ? ABOVE : 8), width, panel.height());
      boolean captioned = isLastOfItsAxis(i);
      draw(panel, new Plot(g, area, panel.x().at(width), panel.y()), captioned);
      bottom = Math.max(bottom, area.bottom() + BELOW + (captioned ? CAPTION : 0));
    }
    return bottom;
  }

  /** Whether no panel below shares the time that the i-th shows. */
  private boolean isLastOfItsAxis(int i) {
    int below = i + chart.columns();
    Axis x = chart.panels().get(i).x();
    return below >= chart.panels().size()
        || x.time().isEmpty()
        || !chart.panels().get(below).x().equals(x);
  }

  private void draw(Panel panel, Plot plot, boolean captioned) {
    panel.marks().stream().filter(Mark::belowGrid).forEach(mark -> mark.draw(plot));
    axes(plot);
    panel.marks().stream().filter(mark -> !mark.belowGrid()).forEach(mark -> mark.draw(plot));
    g.text(panel.name(), plot.area().x(), plot.area().y() - 10, Theme.NAME);
    notes(panel.notes(), plot.area());
    ends(panel.ends(), plot);
    if (captioned) {
      caption(plot);
    }
  }

  private void axes(Plot plot) {
    Box area = plot.area();
    for (Tick tick : plot.y().ticks()) {
      double y = plot.py(tick.value());
      if (tick.kind() == Tick.Kind.NAME) {
        g.text(tick.label(), area.x() - 10, y + 5, Theme.NAME.at(Anchor.END));
      } else {
        rule(area.x(), y, area.right(), y, Theme.GRID, Stroke.HAIRLINE);
        g.text(tick.label(), area.x() - 8, y + 5, Theme.FAINT.at(Anchor.END));
      }
    }
    for (Tick tick : plot.x().ticks()) {
      double x = plot.px(tick.value());
      int colour = tick.kind() == Tick.Kind.STRONG ? Theme.DAY : Theme.GRID;
      rule(x, area.y(), x, area.bottom(), colour, Stroke.HAIRLINE);
      rule(x, area.bottom(), x, area.bottom() + 5, Theme.INK, Stroke.HAIRLINE);
      g.text(tick.label(), x, area.bottom() + 20, Theme.FAINT.at(Anchor.MIDDLE));
    }
    rule(area.x(), area.bottom(), area.right(), area.bottom(), Theme.INK, Stroke.THIN);
    g.text(plot.y().caption(), area.x() - 8, area.y() - 10, Theme.FAINT.at(Anchor.END));
  }

  private void rule(double x1, double y1, double x2, double y2, int colour, Stroke stroke) {
    g.line(Path.line(x1, y1, x2, y2), colour, stroke);
  }

  /** What the horizontal axis shows, and the days if it shows some. */
  private void caption(Plot plot) {
    double base = plot.area().bottom() + BELOW + 14;
    String words = plot.x().caption();
    g.text(words, plot.area().right(), base, Theme.FAINT.at(Anchor.END));
    double end = plot.area().right() - Lettering.width(words, Theme.FAINT);
    for (Tick tick : plot.x().ticks()) {
      double half = Lettering.width(tick.note(), Theme.FAINT) / 2;
      if (plot.px(tick.value()) + half + 12 < end) {
        g.text(tick.note(), plot.px(tick.value()), base, Theme.FAINT.at(Anchor.MIDDLE));
      }
    }
  }

  /** Notes from the right end of the plot to the left, each behind its sample. */
  private void notes(List<Panel.Note> notes, Box area) {
    double x = area.right();
    double base = area.y() - 10;
    for (int i = notes.size() - 1; i >= 0; i--) {
      Panel.Note note = notes.get(i);
      g.text(note.words(), x, base, Theme.LABEL.at(Anchor.END));
      x -= Lettering.width(note.words(), Theme.LABEL) + 6;
      if (note.sample() != null) {
        x -= note.sample().width();
        note.sample().draw(g, x, base - 5);
      }
      x -= 14;
    }
  }

  /** Names at the right ends of lines, moved apart where they would cover one another. */
  private void ends(List<Panel.End> unsorted, Plot plot) {
    List<Panel.End> ends = new ArrayList<>(unsorted);
    ends.sort(Comparator.comparingDouble(e -> plot.py(e.y())));
    double[] y =
        spread(
            ends.stream().mapToDouble(e -> plot.py(e.y())).toArray(),
            plot.area().y() + 4,
            plot.area().bottom() - 2);
    double x = plot.area().right();
    for (int i = 0; i < y.length; i++) {
      Panel.End end = ends.get(i);
      rule(x + 1, plot.py(end.y()), x + LEADER, y[i], Theme.FAINT_INK, Stroke.HAIRLINE);
      g.text(end.words(), x + LEADER + 3, y[i] + 5, style(end));
    }
  }

  private static TextStyle style(Panel.End end) {
    return (end.bold() ? Theme.NAME : Theme.LABEL).in(end.colour());
  }

  /**
   * Least shift that keeps places apart and within bounds: ascending places in, ascending places
   * out.
   */
  static double[] spread(double[] wanted, double least, double most) {
    double[] y = wanted.clone();
    for (int pass = 0; pass < 50; pass++) {
      for (int i = 1; i < y.length; i++) {
        double overlap = END_SPACING - (y[i] - y[i - 1]);
        if (overlap > 0) {
          y[i - 1] -= overlap / 2;
          y[i] += overlap / 2;
        }
      }
      if (y.length > 0) {
        y[0] = Math.max(y[0], least);
        y[y.length - 1] = Math.min(y[y.length - 1], most);
      }
    }
    return y;
  }
}
