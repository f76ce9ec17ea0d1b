package settle.plots.chart;

import java.util.Arrays;

/**
 * Points of a line, gaps being not a number.
 *
 * @param x ascending within each stretch
 * @param y as long as x
 */
public record Curve(double[] x, double[] y) {

  /** A curve without a point. */
  public static final Curve NONE = new Curve(new double[0], new double[0]);

  /** A straight line. */
  public static Curve straight(double x1, double y1, double x2, double y2) {
    return new Curve(new double[] {x1, x2}, new double[] {y1, y2});
  }

  /** This curve, so much higher. */
  public Curve raised(double by) {
    return new Curve(x, Arrays.stream(y).map(v -> v + by).toArray());
  }

  /** This curve, so much further along. */
  public Curve later(double by) {
    return by == 0 ? this : new Curve(Arrays.stream(x).map(v -> v + by).toArray(), y);
  }

  /** Its points from one position to before another. */
  Curve part(int from, int to) {
    return new Curve(Arrays.copyOfRange(x, from, to), Arrays.copyOfRange(y, from, to));
  }

  /** Smallest value; positive infinity if there is none. */
  public double least() {
    return Arrays.stream(y).filter(v -> !Double.isNaN(v)).min().orElse(Double.POSITIVE_INFINITY);
  }

  /** Largest value; negative infinity if there is none. */
  public double most() {
    return Arrays.stream(y).filter(v -> !Double.isNaN(v)).max().orElse(Double.NEGATIVE_INFINITY);
  }

  /** Last value; not a number if there is none. */
  public double last() {
    int i = y.length - 1;
    while (i >= 0 && Double.isNaN(y[i])) {
      i--;
    }
    return i < 0 ? Double.NaN : y[i];
  }

  /** Whether there is nothing to draw. */
  public boolean isEmpty() {
    return Arrays.stream(y).allMatch(Double::isNaN);
  }

  /** Value at x, straight lines between; not a number outside or in a gap. */
  public double at(double position) {
    int i = Arrays.binarySearch(x, position);
    if (i >= 0) {
      return y[i];
    }
    int next = -i - 1;
    if (next == 0 || next == x.length) {
      return Double.NaN;
    }
    double s = (position - x[next - 1]) / (x[next] - x[next - 1]);
    return y[next - 1] + s * (y[next] - y[next - 1]);
  }
}
