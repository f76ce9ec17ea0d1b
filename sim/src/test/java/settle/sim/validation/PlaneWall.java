package settle.sim.validation;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Plane wall of half thickness L that cools through a film on both sides, exact series: Incropera
 * and DeWitt, equation 5.42. All temperatures as a share of the first difference to the air.
 */
final class PlaneWall {

  private static final int TERMS = 60;

  private PlaneWall() {}

  /**
   * Temperature at x/L after Fo = alpha t/L^2.
   *
   * @param biot h L/lambda
   * @param fourier Fo, not much below 0.005 for this number of terms
   * @param position x/L, 0 at the centre
   */
  static double temperature(double biot, double fourier, double position) {
    double sum = 0;
    BrentSolver solver = new BrentSolver(1e-15, 1e-14);
    for (int k = 0; k < TERMS; k++) {
      double low = k * Math.PI + 1e-12;
      double high = (k + 0.5) * Math.PI - 1e-12;
      double zeta = solver.solve(500, z -> z * Math.sin(z) - biot * Math.cos(z), low, high);
      double coefficient = 4 * Math.sin(zeta) / (2 * zeta + Math.sin(2 * zeta));
      sum += coefficient * Math.exp(-zeta * zeta * fourier) * Math.cos(zeta * position);
    }
    return sum;
  }
}
