package settle.plots.drawing;

import java.util.Arrays;

/** A way from point to point [px]: straight lines and cubic curves, in one or more stretches. */
public final class Path {

  private final StringBuilder steps = new StringBuilder();
  private double[] points = new double[16];
  private int size;

  private Path() {}

  /** A path that begins at a point. */
  public static Path from(double x, double y) {
    return new Path().move(x, y);
  }

  /** A straight line. */
  public static Path line(double x1, double y1, double x2, double y2) {
    return from(x1, y1).to(x2, y2);
  }

  /** A circle. */
  public static Path disc(double x, double y, double radius) {
    return from(x, y - radius).arc(x, y, radius, 1).close();
  }

  /** A piece of cake: so large a share of a circle, clockwise from the top. */
  public static Path wedge(double x, double y, double radius, double share) {
    return from(x, y).to(x, y - radius).arc(x, y, radius, share).close();
  }

  /** Goes on with a stretch of its own. */
  public Path move(double x, double y) {
    return add('M', x, y);
  }

  /** Goes on straight. */
  public Path to(double x, double y) {
    return add('L', x, y);
  }

  /** Goes back to where this stretch began. */
  public Path close() {
    return add('Z');
  }

  /** Goes a share of the way round a circle, clockwise from its top, a quarter at most at once. */
  private Path arc(double x, double y, double radius, double share) {
    int pieces = (int) Math.ceil(share * 4);
    double angle = 2 * Math.PI * share / pieces;
    double reach = 4.0 / 3 * Math.tan(angle / 4);
    for (int i = 0; i < pieces; i++) {
      double s1 = Math.sin(i * angle);
      double c1 = Math.cos(i * angle);
      double s2 = Math.sin((i + 1) * angle);
      double c2 = Math.cos((i + 1) * angle);
      add(
          'C',
          x + radius * (s1 + reach * c1),
          y - radius * (c1 - reach * s1),
          x + radius * (s2 - reach * c2),
          y - radius * (c2 + reach * s2),
          x + radius * s2,
          y - radius * c2);
    }
    return this;
  }

  private Path add(char step, double... at) {
    steps.append(step);
    if (size + at.length > points.length) {
      points = Arrays.copyOf(points, 2 * points.length);
    }
    for (double value : at) {
      points[size++] = value;
    }
    return this;
  }

  /** Its steps as SVG has them: M for move, L for line, C for curve, Z for close. */
  public String steps() {
    return steps.toString();
  }

  /** How many numbers a step needs: x and y of each point, those that steer a curve first. */
  public static int numbers(char step) {
    return step == 'Z' ? 0 : step == 'C' ? 6 : 2;
  }

  /** The numbers of all steps in turn [px]. */
  public double[] points() {
    return Arrays.copyOf(points, size);
  }
}
