package settle.plots.chart;

import settle.plots.drawing.Lettering;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.Theme;

/** The strip above a picture that says which line is which; it goes on below where it is full. */
public final class Legend {

  /** Height of a line of it [px]. */
  public static final int HEIGHT = 34;

  private static final double BASE = 19;
  private static final double GAP = 8;
  private static final double BETWEEN = 26;

  private final Sketch g;
  private final double left;
  private double x;
  private double y;

  /**
   * @param g where to draw
   * @param left where it begins [px]
   */
  public Legend(Sketch g, double left) {
    this.g = g;
    this.left = left;
    this.x = left;
  }

  /** Adds an entry. */
  public void add(Key key) {
    double samples = 0;
    for (Key.Sample sample : key.samples()) {
      samples += sample.width() + 4;
    }
    double words = x + (samples == 0 ? 0 : samples - 4 + GAP);
    double end = words + Lettering.width(key.words(), Theme.LABEL);
    if (end > Theme.WIDTH && x > left) {
      x = left;
      y += HEIGHT - 10;
      add(key);
      return;
    }
    double at = x;
    for (Key.Sample sample : key.samples()) {
      sample.draw(g, at, y + BASE - 5);
      at += sample.width() + 4;
    }
    g.text(key.words(), words, y + BASE, Theme.LABEL);
    x = end + BETWEEN;
  }

  /** Where it ends [px]. */
  double bottom() {
    return y + HEIGHT;
  }
}
