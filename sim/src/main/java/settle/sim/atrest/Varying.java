package settle.sim.atrest;

import java.util.Arrays;

/**
 * A number that varies with several others, and by how much per unit of each: first its value, then
 * its slopes.
 */
final class Varying {

  private final double[] all;

  /** Zero, whatever may vary. */
  Varying(int others) {
    all = new double[1 + others];
  }

  double value() {
    return all[0];
  }

  /** Its slope with one of the others. */
  double slope(int other) {
    return all[1 + other];
  }

  void setSlope(int other, double slope) {
    all[1 + other] = slope;
  }

  /** Gives it another value, slopes staying. */
  void setValue(double value) {
    all[0] = value;
  }

  /** Adds to its value and to its slope with one of the others. */
  void vary(int other, double value, double slope) {
    all[0] += value;
    all[1 + other] += slope;
  }

  /** Adds so many times the slopes of another, the value staying. */
  void addSlopes(double factor, Varying other) {
    for (int i = 1; i < all.length; i++) {
      all[i] += factor * other.all[i];
    }
  }

  /** Makes it a number that does not vary. */
  Varying set(double value) {
    Arrays.fill(all, 0);
    all[0] = value;
    return this;
  }

  /** Makes it so many times another. */
  Varying setTimes(double factor, Varying other) {
    for (int i = 0; i < all.length; i++) {
      all[i] = factor * other.all[i];
    }
    return this;
  }

  /** Adds so many times another. */
  Varying add(double factor, Varying other) {
    for (int i = 0; i < all.length; i++) {
      all[i] += factor * other.all[i];
    }
    return this;
  }

  /** Adds a product. */
  Varying addProduct(Varying a, Varying b) {
    double x = a.all[0];
    double y = b.all[0];
    all[0] += x * y;
    for (int i = 1; i < all.length; i++) {
      all[i] += x * b.all[i] + y * a.all[i];
    }
    return this;
  }

  /** Divides it by another, which is not 0. */
  Varying divide(Varying by) {
    double ratio = all[0] / by.all[0];
    all[0] = ratio;
    for (int i = 1; i < all.length; i++) {
      all[i] = (all[i] - ratio * by.all[i]) / by.all[0];
    }
    return this;
  }

  /**
   * Makes it what leaves a pipe: T_s + (T - T_s) e^(-G/C); where nothing flows, T_s.
   *
   * @param entering T
   * @param around T_s
   * @param loss G, flow or return alone [W/K]
   * @param capacityFlow C [W/K]
   */
  Varying leavePipe(Varying entering, Varying around, double loss, Varying capacityFlow) {
    double c = capacityFlow.all[0];
    double left = c > 0 ? Math.exp(-loss / c) : 0;
    double excess = entering.all[0] - around.all[0];
    double perFlow = c > 0 ? excess * left * loss / (c * c) : 0;
    all[0] = around.all[0] + excess * left;
    for (int i = 1; i < all.length; i++) {
      all[i] =
          around.all[i] + (entering.all[i] - around.all[i]) * left + perFlow * capacityFlow.all[i];
    }
    return this;
  }
}
