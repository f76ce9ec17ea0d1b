package settle.sim.tuning;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * How far a PI controller about a lag with a dead time is from swinging by itself, read off the
 * open loop
 *
 * <pre>
 *   L(jw) = k K_c (1 + 1/(jw T_i)) e^(-jw theta)/(1 + jw tau)
 * </pre>
 *
 * @param gainMargin how many times stronger the loop may get [-]
 * @param phaseMargin how much later it may get where its gain is 1 [degrees]
 * @param sensitivity M_s: largest |1/(1 + L)|, the inverse of the nearest that L comes to -1 [-]
 * @param ultimatePeriod period with which it swings at the gain margin [s]
 */
public record LoopMargins(
    double gainMargin, double phaseMargin, double sensitivity, double ultimatePeriod) {

  private static final int POINTS_PER_DECADE = 400;
  private static final double ACCURACY = 1e-12;

  /**
   * Works them out; the plant has a dead time.
   *
   * @param plant what is controlled
   * @param gain K_c [1/K where the plant's gain is in K]
   * @param integralTime T_i [s]; infinite for none
   */
  public static LoopMargins of(FirstOrderDeadTime plant, double gain, double integralTime) {
    Loop loop = new Loop(plant, gain, integralTime);
    double fast = Math.PI / plant.deadTime();
    double slow = 1e-6 * fast;
    double crossing = root(w -> loop.phase(w) + Math.PI, slow, fast);
    double gainMargin = 1 / loop.size(crossing);
    double phaseMargin = Double.POSITIVE_INFINITY;
    if (loop.size(slow) > 1) {
      double unity = root(w -> loop.size(w) - 1, slow, Math.max(fast, 10 * crossing));
      phaseMargin = Math.toDegrees(Math.PI + loop.phase(unity));
    }
    double sensitivity = 0;
    for (double w = slow; w < 10 * fast; w *= Math.pow(10, 1.0 / POINTS_PER_DECADE)) {
      sensitivity = Math.max(sensitivity, loop.sensitivity(w));
    }
    return new LoopMargins(gainMargin, phaseMargin, sensitivity, 2 * Math.PI / crossing);
  }

  private static double root(DoubleUnaryOperator f, double low, double high) {
    return new BrentSolver(ACCURACY).solve(500, f::applyAsDouble, low, high);
  }

  private record Loop(FirstOrderDeadTime plant, double gain, double integralTime) {

    double size(double w) {
      return plant.gain()
          * gain
          * Math.hypot(1, 1 / (w * integralTime))
          / Math.hypot(1, w * plant.lag());
    }

    /** [rad] */
    double phase(double w) {
      return -Math.atan(1 / (w * integralTime)) - w * plant.deadTime() - Math.atan(w * plant.lag());
    }

    double sensitivity(double w) {
      double real = 1 + size(w) * Math.cos(phase(w));
      double imaginary = size(w) * Math.sin(phase(w));
      return 1 / Math.hypot(real, imaginary);
    }
  }
}
