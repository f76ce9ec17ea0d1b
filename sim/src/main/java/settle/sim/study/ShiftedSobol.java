package settle.sim.study;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Standard normal points from Sobol's sequence, several times over, each time shifted by a vector
 * of its own, modulo 1 (Cranley and Patterson 1976).
 *
 * <p>Sobol's sequence rather than a Latin hypercube: twice as many points contain those that were
 * there, so that convergence can be watched without solving anything twice; and the shifts, being
 * independent, say how far off the mean is. The sequence's first point, the origin, is kept:
 * shifted it is as good as any, and a power of two of points is balanced only with it.
 */
public final class ShiftedSobol {

  private static final NormalDistribution NORMAL = new NormalDistribution();

  /** Nearest to 0 or 1 that a coordinate comes; the sequence itself has 52 bits. */
  private static final double EDGE = 0x1p-53;

  private final double[][] points;
  private final double[][] shifts;

  /**
   * @param dimensions of each point
   * @param points in each shifted copy; a power of two is balanced
   * @param shifts how many copies
   * @param seed of the shifts
   */
  public ShiftedSobol(int dimensions, int points, int shifts, long seed) {
    SobolSequenceGenerator sequence = new SobolSequenceGenerator(dimensions);
    this.points = new double[points][];
    for (int i = 0; i < points; i++) {
      this.points[i] = sequence.nextVector();
    }
    Well19937c random = new Well19937c(seed);
    this.shifts = new double[shifts][dimensions];
    for (double[] shift : this.shifts) {
      for (int d = 0; d < dimensions; d++) {
        shift[d] = random.nextDouble();
      }
    }
  }

  /** A point of a copy, every coordinate standard normal; a new array. */
  public double[] normal(int shift, int point) {
    double[] z = new double[points[point].length];
    for (int d = 0; d < z.length; d++) {
      double u = points[point][d] + shifts[shift][d];
      u -= Math.floor(u);
      z[d] = NORMAL.inverseCumulativeProbability(Math.min(Math.max(u, EDGE), 1 - EDGE));
    }
    return z;
  }
}
