package settle.plots.chart;

import java.util.Arrays;

/**
 * Leaves out points nobody can see: those closer to the line through their neighbours than a
 * fraction of a pixel (the Ramer-Douglas-Peucker rule).
 */
final class Thinning {

  /** How far a point may lie off the drawn line [px]. */
  private static final double TOLERANCE = 0.25;

  private Thinning() {}

  /**
   * Leaves out points of a curve that nobody would miss; gaps stay.
   *
   * @param curve any curve
   * @param pixelsPerX [px] per unit of x
   * @param pixelsPerY [px] per unit of y
   */
  static Curve of(Curve curve, double pixelsPerX, double pixelsPerY) {
    int n = curve.x().length;
    boolean[] keep = new boolean[n];
    int start = -1;
    for (int i = 0; i <= n; i++) {
      boolean gap = i == n || Double.isNaN(curve.y()[i]);
      if (!gap && start < 0) {
        start = i;
      }
      if (gap && start >= 0) {
        mark(curve, start, i - 1, pixelsPerX, pixelsPerY, keep);
        start = -1;
      }
      if (gap && i < n && i > 0 && !Double.isNaN(curve.y()[i - 1])) {
        keep[i] = true;
      }
    }
    double[] x = new double[n];
    double[] y = new double[n];
    int kept = 0;
    for (int i = 0; i < n; i++) {
      if (keep[i]) {
        x[kept] = curve.x()[i];
        y[kept++] = curve.y()[i];
      }
    }
    return new Curve(Arrays.copyOf(x, kept), Arrays.copyOf(y, kept));
  }

  private static void mark(Curve c, int from, int to, double px, double py, boolean[] keep) {
    int[] stack = new int[64];
    int depth = 0;
    keep[from] = true;
    keep[to] = true;
    stack[depth++] = from;
    stack[depth++] = to;
    while (depth > 0) {
      int b = stack[--depth];
      int a = stack[--depth];
      int farthest = farthest(c, a, b, px, py);
      if (farthest > 0) {
        keep[farthest] = true;
        if (depth + 4 > stack.length) {
          stack = Arrays.copyOf(stack, 2 * stack.length);
        }
        stack[depth++] = a;
        stack[depth++] = farthest;
        stack[depth++] = farthest;
        stack[depth++] = b;
      }
    }
  }

  /** Index of the point farthest from the chord, or -1 if all are close enough. */
  private static int farthest(Curve c, int a, int b, double px, double py) {
    double dx = (c.x()[b] - c.x()[a]) * px;
    double dy = (c.y()[b] - c.y()[a]) * py;
    double chord = Math.hypot(dx, dy);
    double largest = TOLERANCE;
    int index = -1;
    for (int i = a + 1; i < b; i++) {
      double ex = (c.x()[i] - c.x()[a]) * px;
      double ey = (c.y()[i] - c.y()[a]) * py;
      double off = chord > 0 ? Math.abs(dx * ey - dy * ex) / chord : Math.hypot(ex, ey);
      if (off > largest) {
        largest = off;
        index = i;
      }
    }
    return index;
  }
}
