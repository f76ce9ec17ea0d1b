package settle.plots.chart;

import settle.plots.drawing.Picture;

/**
 * One chart of a comparison.
 *
 * @param name short name, fit for a file name
 * @param title what it shows
 * @param meaning what it says, in a sentence or two, from the figures of these very runs
 * @param picture the drawing
 */
public record Chart(String name, String title, String meaning, Picture picture) {

  /** Width of the pixel image [px]: crisp on a projector. */
  private static final int PNG_WIDTH = 1800;

  /** An SVG file with real text, the title on top. */
  public String svg() {
    return picture.titledSvg(name);
  }

  /** A PNG file, the title on top. */
  public byte[] png() {
    return picture.png(PNG_WIDTH);
  }
}
