package settle.plots.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;
import org.knowm.xchart.style.theme.AbstractBaseTheme;
import settle.plots.drawing.TextStyle;

/**
 * The look of every chart: dark ink on white, few colours, and nothing told by colour alone. Sizes
 * are for a picture 960 wide: shown 1600 wide the smallest letters are 23 px high, on A4 between
 * margins 7.5 pt.
 */
final class HouseTheme extends AbstractBaseTheme {

  /** Width of every picture [px]. */
  static final int WIDTH = 960;

  /** Letters, axes, the want-temperature. */
  static final Color INK = new Color(0x1d2329);

  /** Second-rank words. */
  static final Color FAINT_INK = new Color(0x565d63);

  /** The palest ink a line may have. */
  static final Color PALE_INK = new Color(0x858d93);

  /** Grid. */
  static final Color GRID = new Color(0xdfe2e0);

  /** Where one day ends and the next begins. */
  static final Color DAY = new Color(0x9aa19f);

  /** What is allowed or wanted: the band round want, the range a head throttles in. */
  static final Color BAND = new Color(0xefe6cf);

  static final Color PAPER = Color.WHITE;

  /** Axis labels, captions. */
  static final TextStyle LABEL = new TextStyle(14, FAINT_INK);

  /** Names inside a picture. */
  static final TextStyle NAME = new TextStyle(15, INK).heavy();

  /** Heavy line widths carry across a room and survive a photocopy [px]. */
  static final float LINE_WIDTH = 2.6f;

  static final BasicStroke SOLID = stroke(LINE_WIDTH);
  static final BasicStroke THIN = stroke(1.4f);
  static final BasicStroke HAIRLINE = stroke(1f);
  static final BasicStroke FINE_DASH = stroke(1.4f, 5, 4);

  /**
   * Dark blue, rust, teal, plum: apart in hue for the colour-blind, the first two apart in grey
   * too.
   */
  private static final Color[] COLOURS = {
    new Color(0x17375e), new Color(0xcf5a1b), new Color(0x1f8a78), new Color(0x7b4a86)
  };

  private static final BasicStroke[] STROKES = {
    SOLID,
    stroke(LINE_WIDTH, 10, 5),
    stroke(LINE_WIDTH, 2.5f, 4),
    stroke(LINE_WIDTH, 12, 4, 2.5f, 4)
  };

  private static final Marker[] MARKERS = {
    SeriesMarkers.CIRCLE, SeriesMarkers.SQUARE, SeriesMarkers.TRIANGLE_UP, SeriesMarkers.DIAMOND
  };

  private static final Color CLEAR = new Color(255, 255, 255, 0);

  /** How the i-th arrangement is drawn, everywhere. */
  static Look arrangement(int i) {
    int k = i % COLOURS.length;
    return new Look(COLOURS[k], STROKES[k], MARKERS[k]);
  }

  /** A colour on the way from one to another; {@code share} of the way, 0 to 1. */
  static Color between(Color from, Color to, double share) {
    return new Color(
        (int) Math.round(from.getRed() + share * (to.getRed() - from.getRed())),
        (int) Math.round(from.getGreen() + share * (to.getGreen() - from.getGreen())),
        (int) Math.round(from.getBlue() + share * (to.getBlue() - from.getBlue())));
  }

  static BasicStroke stroke(float width, float... dashes) {
    return new BasicStroke(
        width,
        BasicStroke.CAP_BUTT,
        BasicStroke.JOIN_ROUND,
        1,
        dashes.length == 0 ? null : dashes,
        0);
  }

  @Override
  public Color getChartBackgroundColor() {
    return CLEAR;
  }

  @Override
  public Color getPlotBackgroundColor() {
    return CLEAR;
  }

  @Override
  public int getChartPadding() {
    return 0;
  }

  @Override
  public int getPlotMargin() {
    return 0;
  }

  @Override
  public double getPlotContentSize() {
    return 1;
  }

  @Override
  public boolean isPlotBorderVisible() {
    return false;
  }

  @Override
  public boolean isPlotGridLinesVisible() {
    return false;
  }

  @Override
  public boolean isPlotGridVerticalLinesVisible() {
    return false;
  }

  @Override
  public boolean isPlotGridHorizontalLinesVisible() {
    return false;
  }

  @Override
  public boolean isPlotTicksMarksVisible() {
    return false;
  }

  @Override
  public boolean isChartTitleVisible() {
    return false;
  }

  @Override
  public boolean isLegendVisible() {
    return false;
  }

  @Override
  public boolean isXAxisTitleVisible() {
    return false;
  }

  @Override
  public boolean isYAxisTitleVisible() {
    return false;
  }

  @Override
  public boolean isXAxisTicksVisible() {
    return false;
  }

  @Override
  public boolean isYAxisTicksVisible() {
    return false;
  }

  /** No ticks of the library's own, so none need be sought: wider apart than any plot. */
  @Override
  public int getXAxisTickMarkSpacingHint() {
    return 100_000;
  }

  /** The same. */
  @Override
  public int getYAxisTickMarkSpacingHint() {
    return 100_000;
  }

  @Override
  public int getMarkerSize() {
    return 9;
  }
}
