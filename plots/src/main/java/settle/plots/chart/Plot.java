package settle.plots.chart;

import settle.plots.drawing.Box;
import settle.plots.drawing.Path;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.Theme;

/**
 * Where the values of a panel lie on paper.
 *
 * @param g what is drawn on
 * @param area the plot itself, axes not included
 * @param x what it shows from left to right
 * @param y what it shows from bottom to top
 */
record Plot(Sketch g, Box area, Axis x, Axis y) {

  /** So far beyond the plot a line shows that runs along its edge [px]. */
  private static final double RIM = 2;

  /** Where a value lies [px]. */
  double px(double value) {
    return area.x() + (value - x.min()) * perX();
  }

  /** Where a value lies [px]. */
  double py(double value) {
    return area.bottom() - (value - y.min()) * perY();
  }

  private double perX() {
    return area.width() / (x.max() - x.min());
  }

  private double perY() {
    return area.height() / (y.max() - y.min());
  }

  /** Draws a curve as one path, so that its dashes run on. */
  void line(Curve curve, Look look) {
    if (curve.isEmpty()) {
      return;
    }
    Path path = null;
    boolean on = false;
    Curve thin = Thinning.of(curve, perX(), perY());
    for (int i = 0; i < thin.x().length; i++) {
      if (Double.isNaN(thin.y()[i])) {
        on = false;
        continue;
      }
      double atX = px(thin.x()[i]);
      double atY = py(thin.y()[i]);
      if (on) {
        path.to(atX, atY);
      } else {
        path = path == null ? Path.from(atX, atY) : path.move(atX, atY);
        on = true;
      }
    }
    Box within = new Box(area.x(), area.y() - RIM, area.width(), area.height() + 2 * RIM);
    g.line(path, look.colour(), look.stroke(), within);
  }

  /** Shades between two curves. */
  void band(Curve lower, Curve upper) {
    int n = lower.x().length;
    int start = -1;
    for (int i = 0; i <= n; i++) {
      boolean gap = i == n || Double.isNaN(lower.y()[i]) || Double.isNaN(upper.y()[i]);
      if (!gap && start < 0) {
        start = i;
      }
      if (gap && start >= 0) {
        shade(lower.part(start, i), upper.part(start, i));
        start = -1;
      }
    }
  }

  private void shade(Curve lower, Curve upper) {
    Curve there = Thinning.of(lower, perX(), perY());
    Curve back = Thinning.of(upper, perX(), perY());
    Path band = Path.from(inX(there.x()[0]), inY(there.y()[0]));
    for (int i = 1; i < there.x().length; i++) {
      band.to(inX(there.x()[i]), inY(there.y()[i]));
    }
    for (int i = back.x().length - 1; i >= 0; i--) {
      band.to(inX(back.x()[i]), inY(back.y()[i]));
    }
    g.fill(band.close(), Theme.BAND);
  }

  /** Where a value lies, or the nearest edge of the plot [px]. */
  private double inX(double value) {
    return Math.min(Math.max(px(value), area.x()), area.right());
  }

  /** Where a value lies, or the nearest edge of the plot [px]. */
  private double inY(double value) {
    return Math.min(Math.max(py(value), area.y()), area.bottom());
  }
}
