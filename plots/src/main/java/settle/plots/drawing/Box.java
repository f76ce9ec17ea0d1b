package settle.plots.drawing;

/**
 * A rectangle [px].
 *
 * @param x its left edge
 * @param y its upper edge
 * @param width across
 * @param height down
 */
public record Box(double x, double y, double width, double height) {

  /** Its right edge. */
  public double right() {
    return x + width;
  }

  /** Its lower edge. */
  public double bottom() {
    return y + height;
  }

  /** Its outline. */
  public Path path() {
    return Path.from(x, y).to(right(), y).to(right(), bottom()).to(x, bottom()).close();
  }
}
