package settle.plots.chart;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.TextStyle;
import settle.plots.drawing.TextStyle.Anchor;

/** What a teacher adds to a curve with chalk: numbers, arrows, spans, drop lines, remarks. */
final class Teaching {

  private static final double RADIUS = 13;
  private static final double ARROW = 13;

  private static final TextStyle REMARK =
      HouseTheme.LABEL.in(HouseTheme.INK).rimmed(HouseTheme.PAPER);

  private final Sketch g;

  Teaching(Sketch g) {
    this.g = g;
  }

  /** A number in a circle. */
  void number(int number, double x, double y) {
    Shape disc = new Ellipse2D.Double(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS);
    g.setColor(HouseTheme.PAPER);
    g.fill(disc);
    g.setColor(HouseTheme.INK);
    g.setStroke(HouseTheme.stroke(2));
    g.draw(disc);
    g.text(
        Integer.toString(number), x, y + 5.5, HouseTheme.NAME.in(HouseTheme.INK).at(Anchor.MIDDLE));
  }

  /** An arrow head in the middle of the way from one place to another. */
  void arrow(double x1, double y1, double x2, double y2, Look look) {
    double length = Math.hypot(x2 - x1, y2 - y1);
    if (length < 3 * ARROW) {
      return;
    }
    double dx = (x2 - x1) / length;
    double dy = (y2 - y1) / length;
    double tipX = (x1 + x2) / 2 + dx * ARROW / 2;
    double tipY = (y1 + y2) / 2 + dy * ARROW / 2;
    Path2D head = new Path2D.Double();
    head.moveTo(tipX, tipY);
    head.lineTo(tipX - ARROW * dx - ARROW / 2 * dy, tipY - ARROW * dy + ARROW / 2 * dx);
    head.lineTo(tipX - ARROW * dx + ARROW / 2 * dy, tipY - ARROW * dy - ARROW / 2 * dx);
    head.closePath();
    g.setColor(look.colour());
    g.fill(head);
  }

  /** A fine dashed line. */
  void dashed(double x1, double y1, double x2, double y2) {
    g.setColor(HouseTheme.INK);
    g.setStroke(HouseTheme.FINE_DASH);
    g.draw(new Line2D.Double(x1, y1, x2, y2));
  }

  /** A span between two places at one height, with what it measures above its right end. */
  void span(double x1, double x2, double y, String words) {
    g.setColor(HouseTheme.INK);
    g.setStroke(HouseTheme.stroke(1.8f));
    g.draw(new Line2D.Double(x1, y, x2, y));
    g.draw(new Line2D.Double(x1, y - 6, x1, y + 6));
    g.draw(new Line2D.Double(x2, y - 6, x2, y + 6));
    remark(words, Math.max(x1, x2) + 9, y - 4);
  }

  /** Words that begin at a place. */
  void remark(String words, double x, double y) {
    g.text(words, x, y, REMARK);
  }

  /** Words that end at a place. */
  void remarkBefore(String words, double x, double y) {
    g.text(words, x, y, REMARK.at(Anchor.END));
  }
}
