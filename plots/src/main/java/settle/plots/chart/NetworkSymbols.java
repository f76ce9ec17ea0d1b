package settle.plots.chart;

import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import settle.plots.drawing.Sketch;

/** What stands on and at the pipes of a drawing of the network. */
final class NetworkSymbols {

  /** Radius of valves and pumps [px]. */
  static final double RADIUS = 9;

  /** Widest an emitter is drawn [px]. */
  static final double EMITTER = 84;

  private final Sketch g;

  NetworkSymbols(Sketch g) {
    this.g = g;
  }

  /** A valve as a clock face, dark as far as it is open; a bar across it if it is shut. */
  void valve(double x, double y, double opening) {
    disc(x, y);
    g.setColor(HouseTheme.INK);
    if (opening > 0) {
      double degrees = 360 * Math.min(opening, 1);
      double r = RADIUS - 2.5;
      g.fill(new Arc2D.Double(x - r, y - r, 2 * r, 2 * r, 90, -degrees, Arc2D.PIE));
    } else {
      g.setStroke(HouseTheme.stroke(2.4f));
      g.draw(new Line2D.Double(x, y - RADIUS - 4, x, y + RADIUS + 4));
    }
  }

  /** A pump: two chevrons the way the water goes. */
  void pump(double x, double y) {
    disc(x, y);
    g.setColor(HouseTheme.INK);
    g.setStroke(HouseTheme.stroke(2f));
    for (double at = x - 4; at < x + 2; at += 5) {
      Path2D chevron = new Path2D.Double();
      chevron.moveTo(at, y - 4.5);
      chevron.lineTo(at + 4, y);
      chevron.lineTo(at, y + 4.5);
      g.draw(chevron);
    }
  }

  /** A vessel. */
  void vessel(double x, double y, double width, double height) {
    box(new RoundRectangle2D.Double(x - width / 2, y - height / 2, width, height, 14, 14));
  }

  /** The source. */
  void source(Rectangle2D where) {
    box(where);
  }

  /**
   * Skirting, long and low.
   *
   * @param share its length to that of the longest [-]
   */
  void skirting(double x, double y, double share) {
    double width = EMITTER * (0.35 + 0.65 * share);
    box(new Rectangle2D.Double(x, y - 11, width, 22));
    g.setStroke(HouseTheme.THIN);
    g.draw(new Line2D.Double(x + 6, y, x + width - 6, y));
  }

  /**
   * A radiator, ribbed.
   *
   * @param share its rated output to that of the largest [-]
   */
  void radiator(double x, double y, double share) {
    double width = EMITTER * (0.25 + 0.45 * share);
    box(new Rectangle2D.Double(x, y - 19, width, 38));
    g.setStroke(HouseTheme.HAIRLINE);
    for (double rib = x + 7; rib < x + width - 2; rib += 7) {
      g.draw(new Line2D.Double(rib, y - 14, rib, y + 14));
    }
  }

  private void disc(double x, double y) {
    box(new Ellipse2D.Double(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS));
  }

  private void box(Shape shape) {
    g.setColor(HouseTheme.PAPER);
    g.fill(shape);
    g.setColor(HouseTheme.INK);
    g.setStroke(HouseTheme.stroke(1.8f));
    g.draw(shape);
  }
}
