package settle.plots.chart;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.SeriesMarkers;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.TextStyle;
import settle.plots.drawing.TextStyle.Anchor;

/**
 * One plot: axes with units, bands, curves. The chart library draws the curves and markers; axes
 * and words are set here, so that words stay words.
 */
final class Panel {

  /** Room left of the plot for its numbers [px]. */
  static final int LEFT = 50;

  /** Room above the plot for name and unit [px]. */
  static final int ABOVE = 28;

  /** Room below the plot for its numbers [px]. */
  static final int BELOW = 24;

  /** Further room below for the caption [px]. */
  static final int CAPTION = 20;

  private final Rectangle2D area;
  private final Axis horizontal;
  private final Axis vertical;
  private final XYChart chart;
  private boolean zeroed;
  private final Path2D band = new Path2D.Double(Path2D.WIND_NON_ZERO);

  /**
   * @param x left edge of the plot itself [px]
   * @param y its upper edge [px]
   * @param width [px]
   * @param height [px]
   */
  Panel(int x, int y, int width, int height, Axis horizontal, Axis vertical) {
    this.area = new Rectangle2D.Double(x, y, width, height);
    this.horizontal = horizontal;
    this.vertical = vertical;
    this.chart = new XYChart(width, height, new HouseTheme());
    chart.getStyler().setXAxisMin(horizontal.min());
    chart.getStyler().setXAxisMax(horizontal.max());
    chart.getStyler().setYAxisMin(vertical.min());
    chart.getStyler().setYAxisMax(vertical.max());
  }

  /** The plot itself, axes not included [px]. */
  Rectangle2D area() {
    return area;
  }

  /** What it shows from left to right. */
  Axis horizontal() {
    return horizontal;
  }

  /** What it shows from bottom to top. */
  Axis vertical() {
    return vertical;
  }

  /** The curves it holds, for checking. */
  XYChart chart() {
    return chart;
  }

  /** Where a value lies [px]. */
  double px(double x) {
    return area.getX()
        + (x - horizontal.min()) / (horizontal.max() - horizontal.min()) * area.getWidth();
  }

  /** Where a value lies [px]. */
  double py(double y) {
    return area.getMaxY()
        - (y - vertical.min()) / (vertical.max() - vertical.min()) * area.getHeight();
  }

  /** Adds a line; a curve without any value is left out. */
  void line(String name, Curve curve, Look look) {
    if (curve.isEmpty()) {
      return;
    }
    Curve thin = thinned(curve);
    XYSeries series = chart.addSeries(name, thin.x(), thin.y());
    series.setLineColor(look.colour());
    series.setLineStyle(look.stroke());
    series.setMarker(SeriesMarkers.NONE);
  }

  /** A curve without the points nobody could see on this panel. */
  Curve thinned(Curve curve) {
    double perX = area.getWidth() / (horizontal.max() - horizontal.min());
    double perY = area.getHeight() / (vertical.max() - vertical.min());
    return Thinning.of(curve, perX, perY);
  }

  /** Rules the line of zero, for what can fall below it. */
  void zeroed() {
    zeroed = true;
  }

  /** Adds a marker at a point. */
  void point(String name, double x, double y, Look look) {
    XYSeries series = chart.addSeries(name, new double[] {x}, new double[] {y});
    series.setLineStyle(SeriesLines.NONE);
    series.setMarker(look.marker());
    series.setMarkerColor(look.colour());
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
        band.moveTo(px(lower.x()[start]), py(lower.y()[start]));
        for (int k = start + 1; k < i; k++) {
          band.lineTo(px(lower.x()[k]), py(lower.y()[k]));
        }
        for (int k = i - 1; k >= start; k--) {
          band.lineTo(px(upper.x()[k]), py(upper.y()[k]));
        }
        band.closePath();
        start = -1;
      }
    }
  }

  /** Draws everything: band, grid, axes, curves. */
  void paint(Sketch g) {
    g.setClip(area);
    g.setColor(HouseTheme.BAND);
    g.fill(band);
    g.setClip(null);
    paintGrid(g);
    AffineTransform outside = g.getTransform();
    g.translate(area.getX(), area.getY());
    chart.paint(g, (int) area.getWidth(), (int) area.getHeight());
    g.setTransform(outside);
  }

  /** Writes the name above the plot. */
  void name(Sketch g, String name) {
    g.text(name, area.getX(), area.getY() - 10, HouseTheme.NAME);
  }

  /** Writes a remark above the plot at its right end. */
  void remark(Sketch g, String words) {
    g.text(
        words,
        area.getMaxX(),
        area.getY() - 10,
        HouseTheme.LABEL.in(HouseTheme.INK).at(Anchor.END));
  }

  /** Writes what the horizontal axis shows, and the days if it shows some. */
  void caption(Sketch g) {
    double base = area.getMaxY() + BELOW + 14;
    g.text(horizontal.caption(), area.getMaxX(), base, HouseTheme.LABEL.at(Anchor.END));
    double end = area.getMaxX() - Lettering.width(horizontal.caption(), HouseTheme.LABEL);
    for (Tick tick : horizontal.ticks()) {
      double half = Lettering.width(tick.note(), HouseTheme.LABEL) / 2;
      if (!tick.note().isEmpty() && px(tick.value()) + half + 12 < end) {
        g.text(tick.note(), px(tick.value()), base, HouseTheme.LABEL.at(Anchor.MIDDLE));
      }
    }
  }

  /** Draws a level line across the plot, and its meaning above the plot at the right end. */
  void level(Sketch g, double y, String meaning) {
    g.setColor(HouseTheme.INK);
    g.setStroke(HouseTheme.FINE_DASH);
    g.draw(new Line2D.Double(area.getX(), py(y), area.getMaxX(), py(y)));
    double end = area.getMaxX() - Lettering.width(meaning, HouseTheme.LABEL) - 8;
    double base = area.getY() - 10;
    g.draw(new Line2D.Double(end - 34, base - 5, end, base - 5));
    g.text(meaning, area.getMaxX(), base, HouseTheme.LABEL.in(HouseTheme.INK).at(Anchor.END));
  }

  private void paintGrid(Sketch g) {
    g.setStroke(HouseTheme.HAIRLINE);
    TextStyle label = HouseTheme.LABEL;
    for (Tick tick : vertical.ticks()) {
      double y = py(tick.value());
      rule(g, HouseTheme.GRID, area.getX(), y, area.getMaxX(), y);
      g.text(tick.label(), area.getX() - 8, y + 5, label.at(Anchor.END));
    }
    for (Tick tick : horizontal.ticks()) {
      double x = px(tick.value());
      rule(g, tick.strong() ? HouseTheme.DAY : HouseTheme.GRID, x, area.getY(), x, area.getMaxY());
      rule(g, HouseTheme.INK, x, area.getMaxY(), x, area.getMaxY() + 5);
      g.text(tick.label(), x, area.getMaxY() + 20, label.at(Anchor.MIDDLE));
    }
    g.setStroke(HouseTheme.THIN);
    rule(g, HouseTheme.INK, area.getX(), area.getMaxY(), area.getMaxX(), area.getMaxY());
    if (zeroed) {
      rule(g, HouseTheme.INK, area.getX(), py(0), area.getMaxX(), py(0));
    }
    g.text(vertical.caption(), area.getX() - 8, area.getY() - 10, label.at(Anchor.END));
  }

  private static void rule(Sketch g, Color colour, double x1, double y1, double x2, double y2) {
    g.setColor(colour);
    g.draw(new Line2D.Double(x1, y1, x2, y2));
  }
}
