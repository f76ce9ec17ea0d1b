package settle.plots.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * How a series is drawn.
 *
 * @param colour of line and markers
 * @param stroke of the line
 * @param marker at single points
 */
record Look(Color colour, BasicStroke stroke, Marker marker) {

  /** A line without markers. */
  static Look line(Color colour, BasicStroke stroke) {
    return new Look(colour, stroke, SeriesMarkers.NONE);
  }
}
