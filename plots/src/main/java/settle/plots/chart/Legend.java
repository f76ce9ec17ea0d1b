package settle.plots.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.Sketch;
import settle.plots.words.Comparison;

/** The strip above a picture that says which line is which. */
final class Legend {

  /** Height it takes up [px]. */
  static final int HEIGHT = 34;

  private static final double SAMPLE = 46;
  private static final double BASE = 19;

  private final Sketch g;
  private double x;

  /**
   * @param g where to draw
   * @param left where it begins [px]
   */
  Legend(Sketch g, double left) {
    this.g = g;
    this.x = left;
  }

  /** One entry per arrangement. */
  Legend arrangements(Comparison comparison) {
    List<String> names = comparison.results().stream().map(r -> r.arrangement().name()).toList();
    for (int i = 0; i < names.size(); i++) {
      Look look = HouseTheme.arrangement(i);
      line(names.get(i), look);
    }
    return this;
  }

  /** A line with its name. */
  Legend line(String name, Look look) {
    g.setColor(look.colour());
    g.setStroke(look.stroke());
    g.draw(new Line2D.Double(x, BASE - 5, x + SAMPLE, BASE - 5));
    return named(name);
  }

  /** A shaded range with its name. */
  Legend band(String name) {
    Rectangle2D sample = new Rectangle2D.Double(x, BASE - 12, SAMPLE, 14);
    g.setColor(HouseTheme.BAND);
    g.fill(sample);
    return named(name);
  }

  /** The mark of a start. */
  Legend start() {
    g.setColor(HouseTheme.INK);
    g.fill(SourceAtWork.mark(x + 6, BASE - 5));
    x -= SAMPLE - 14;
    return named("start");
  }

  /** Points with their name: a marker per arrangement. */
  Legend markers(int arrangements, String name) {
    for (int i = 0; i < arrangements; i++) {
      Look look = HouseTheme.arrangement(i);
      g.setColor(look.colour());
      look.marker().paint(g, x + 5, BASE - 5, 9);
      x += 14;
    }
    x -= SAMPLE;
    return named(name);
  }

  /** A valve half open. */
  Legend valve(String name) {
    new NetworkSymbols(g).valve(x + NetworkSymbols.RADIUS, BASE - 5, 0.35);
    x -= SAMPLE - 2 * NetworkSymbols.RADIUS;
    return named(name);
  }

  /** Words that go for all of the picture. */
  Legend note(String words) {
    x -= SAMPLE + 8;
    return named(words);
  }

  private Legend named(String name) {
    g.text(name, x + SAMPLE + 8, BASE, HouseTheme.LABEL.in(HouseTheme.INK));
    x += SAMPLE + 8 + Lettering.width(name, HouseTheme.LABEL) + 26;
    return this;
  }
}
