package settle.plots.chart;

import settle.plots.drawing.Box;
import settle.plots.drawing.Path;
import settle.plots.drawing.Sketch;

/** The shape of a single point. */
public enum Marker {
  NONE,
  CIRCLE,
  SQUARE,
  TRIANGLE,
  DIAMOND,
  /** A triangle that points down, at what happens at an instant. */
  POINTER;

  /** How large markers are across [px]. */
  static final double SIZE = 9;

  void draw(Sketch g, double x, double y, double size, int colour) {
    double r = size / 2;
    switch (this) {
      case NONE -> {}
      case CIRCLE -> g.fill(Path.disc(x, y, r), colour);
      case SQUARE -> g.fill(new Box(x - r, y - r, size, size).path(), colour);
      case TRIANGLE ->
          g.fill(Path.from(x, y - r).to(x + r, y + r).to(x - r, y + r).close(), colour);
      case DIAMOND ->
          g.fill(Path.from(x, y - r).to(x + r, y).to(x, y + r).to(x - r, y).close(), colour);
      case POINTER -> g.fill(Path.from(x, y + r).to(x - r, y - r).to(x + r, y - r).close(), colour);
    }
  }
}
