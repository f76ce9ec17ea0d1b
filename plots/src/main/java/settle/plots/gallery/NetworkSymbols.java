package settle.plots.gallery;

import settle.plots.chart.Key;
import settle.plots.drawing.Box;
import settle.plots.drawing.Path;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.Theme;

/** What stands on and at the pipes of a drawing of the network. */
record NetworkSymbols(Sketch g) {

  /** Radius of valves and pumps [px]. */
  static final double RADIUS = 9;

  /** Widest an emitter is drawn [px]. */
  static final double EMITTER = 84;

  /** A valve that is a third open, for the legend. */
  record ValveSample() implements Key.Sample {

    @Override
    public double width() {
      return 2 * RADIUS;
    }

    @Override
    public void draw(Sketch g, double x, double middle) {
      new NetworkSymbols(g).valve(x + RADIUS, middle, 0.35);
    }
  }

  /** A valve as a clock face, dark as far as it is open; a bar across it if it is shut. */
  void valve(double x, double y, double opening) {
    box(Path.disc(x, y, RADIUS));
    if (opening > 0) {
      g.fill(Path.wedge(x, y, RADIUS - 2.5, Math.min(opening, 1)), Theme.INK);
    } else {
      g.line(Path.line(x, y - RADIUS - 4, x, y + RADIUS + 4), Theme.INK, new Stroke(2.4));
    }
  }

  /** A pump: two chevrons the way the water goes. */
  void pump(double x, double y) {
    box(Path.disc(x, y, RADIUS));
    for (double at = x - 4; at < x + 2; at += 5) {
      Path chevron = Path.from(at, y - 4.5).to(at + 4, y).to(at, y + 4.5);
      g.line(chevron, Theme.INK, new Stroke(2));
    }
  }

  /** A vessel, its edges cut off. */
  void vessel(double x, double y, double width, double height) {
    double left = x - width / 2;
    double right = x + width / 2;
    double top = y - height / 2;
    double bottom = y + height / 2;
    double edge = 6;
    box(
        Path.from(left + edge, top)
            .to(right - edge, top)
            .to(right, top + edge)
            .to(right, bottom - edge)
            .to(right - edge, bottom)
            .to(left + edge, bottom)
            .to(left, bottom - edge)
            .to(left, top + edge)
            .close());
  }

  /**
   * Skirting, long and low.
   *
   * @param share its length to that of the longest [-]
   */
  void skirting(double x, double y, double share) {
    double width = EMITTER * (0.35 + 0.65 * share);
    box(new Box(x, y - 11, width, 22).path());
    g.line(Path.line(x + 6, y, x + width - 6, y), Theme.INK, Stroke.THIN);
  }

  /**
   * A radiator, ribbed.
   *
   * @param share its rated output to that of the largest [-]
   */
  void radiator(double x, double y, double share) {
    double width = EMITTER * (0.25 + 0.45 * share);
    box(new Box(x, y - 19, width, 38).path());
    for (double rib = x + 7; rib < x + width - 2; rib += 7) {
      g.line(Path.line(rib, y - 14, rib, y + 14), Theme.INK, Stroke.HAIRLINE);
    }
  }

  /** An outline on paper of its own. */
  void box(Path outline) {
    g.fill(outline, Theme.PAPER);
    g.line(outline, Theme.INK, new Stroke(1.8));
  }
}
