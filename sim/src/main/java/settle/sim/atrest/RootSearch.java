package settle.sim.atrest;

import java.util.function.DoubleUnaryOperator;

/**
 * Looks for a root between two points whose values are known, and never gives up with less than the
 * best point it saw: inverse quadratic interpolation where the three last points allow it, halving
 * otherwise (Chandrupatla, Advances in Engineering Software 28, 1997, from memory).
 *
 * <p>Values at the ends are handed over, not asked for again: what answers from where it last stood
 * may answer otherwise by a rounding, and a bracket would be lost.
 */
final class RootSearch {

  private static final int MOST_ROUNDS = 100;

  private double root;
  private double residual;

  /** Point on the one side, on the other, and the one before. */
  private double x1;

  private double x2;
  private double x3;
  private double f1;
  private double f2;
  private double f3;

  /**
   * Searches from the middle.
   *
   * @param f the function
   * @param low one end
   * @param atLow its value there
   * @param high the other end
   * @param atHigh its value there
   * @param accuracy asked of the root
   * @param agreement asked of the value there
   * @return whether a root lies between; if not, {@link #root} is the end that comes nearer to one
   */
  boolean between(
      DoubleUnaryOperator f,
      double low,
      double atLow,
      double high,
      double atHigh,
      double accuracy,
      double agreement) {
    return from((low + high) / 2, f, low, atLow, high, atHigh, accuracy, agreement);
  }

  /**
   * Searches from a guess on.
   *
   * @param guess between the ends
   * @param f the function
   * @param low one end
   * @param atLow its value there
   * @param high the other end
   * @param atHigh its value there
   * @param accuracy asked of the root
   * @param agreement asked of the value there
   * @return whether a root lies between; if not, {@link #root} is the end that comes nearer to one
   */
  boolean from(
      double guess,
      DoubleUnaryOperator f,
      double low,
      double atLow,
      double high,
      double atHigh,
      double accuracy,
      double agreement) {
    x1 = high;
    f1 = atHigh;
    x2 = low;
    f2 = atLow;
    keepBest();
    if (Math.abs(residual) <= agreement) {
      return true;
    }
    if (!(f1 > 0 ^ f2 > 0)) {
      return false;
    }
    double along = low == high ? 0.5 : (guess - x1) / (x2 - x1);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double x = x1 + along * (x2 - x1);
      move(x, f.applyAsDouble(x));
      double least = accuracy / 2 / Math.abs(x2 - x1);
      if (Math.abs(residual) <= agreement || !(least < 0.5)) {
        return true;
      }
      along = Math.min(Math.max(along(), least), 1 - least);
    }
    return true;
  }

  private void move(double x, double f) {
    if (f > 0 == f1 > 0) {
      x3 = x1;
      f3 = f1;
    } else {
      x3 = x2;
      f3 = f2;
      x2 = x1;
      f2 = f1;
    }
    x1 = x;
    f1 = f;
    keepBest();
  }

  private void keepBest() {
    boolean first = Math.abs(f1) <= Math.abs(f2);
    root = first ? x1 : x2;
    residual = first ? f1 : f2;
  }

  /** Where to look next, as a share of the way from the last point to the other side. */
  private double along() {
    double xi = (x1 - x2) / (x3 - x2);
    double phi = (f1 - f2) / (f3 - f2);
    boolean smooth = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
    return smooth
        ? f1 / (f2 - f1) * (f3 / (f2 - f3))
            + (x3 - x1) / (x2 - x1) * (f1 / (f3 - f1)) * (f2 / (f3 - f2))
        : 0.5;
  }

  /** The point whose value came nearest to 0. */
  double root() {
    return root;
  }

  /** The value there. */
  double residual() {
    return residual;
  }
}
