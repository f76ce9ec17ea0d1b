package settle.plots.chart;

import settle.plots.drawing.Stroke;
import settle.plots.drawing.Stroke.Dash;
import settle.plots.drawing.Theme;

/**
 * How a line and what belongs to it is drawn.
 *
 * @param colour of all of it, 0xRRGGBB
 * @param stroke of the line
 * @param marker at single points
 */
public record Look(int colour, Stroke stroke, Marker marker) {

  /**
   * Dark blue, rust, teal, plum: apart in hue for the colour-blind, the first two apart in grey
   * too.
   */
  private static final int[] COLOURS = {0x17375e, 0xcf5a1b, 0x1f8a78, 0x7b4a86};

  private static final Dash[] DASHES = {Dash.SOLID, Dash.DASHED, Dash.DOTTED, Dash.DASH_DOTTED};

  private static final Marker[] MARKERS = {
    Marker.CIRCLE, Marker.SQUARE, Marker.TRIANGLE, Marker.DIAMOND
  };

  /** How the i-th arrangement is drawn, everywhere. */
  public static Look arrangement(int i) {
    int k = i % COLOURS.length;
    return new Look(COLOURS[k], new Stroke(Stroke.HEAVY.width(), DASHES[k]), MARKERS[k]);
  }

  /** A line in ink. */
  public static Look ink(Stroke stroke) {
    return new Look(Theme.INK, stroke, Marker.NONE);
  }

  /** This colour and marker with another line. */
  public Look with(Stroke other) {
    return new Look(colour, other, marker);
  }
}
