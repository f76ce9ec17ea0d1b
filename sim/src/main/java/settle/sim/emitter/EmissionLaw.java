package settle.sim.emitter;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Emission of a heated path, K y^n per unit of path with y = T - Tref the local excess temperature
 * [K]: calibration at the rating point and the exact solutions at any flow.
 *
 * <p>Rating: EN 442-2:2014, output Phi50 at flow 75, return 65, room 20 degrees Celsius (mean
 * excess 50 K), exponent n. The local law and its closed forms are elementary integrals of
 *
 * <pre>
 *   m c dy/dx = - K' y^n          moving:   y(x)^(1-n) = y(0)^(1-n) + (n-1) K' x/(m c)
 *   C' dy/dt  = - K' y^n          standing: y(t)^(1-n) = y(0)^(1-n) + (n-1) K' t/C'
 * </pre>
 *
 * <p>Valid for n of 1 and more; n = 1 (exponential) is reached smoothly. Nothing is emitted at zero
 * or negative excess.
 */
public final class EmissionLaw {

  /** Excess of the flow over the room at the rating point [K]: 75 - 20. */
  public static final double RATED_FLOW_EXCESS = 55;

  /** Excess of the return over the room at the rating point [K]: 65 - 20. */
  public static final double RATED_RETURN_EXCESS = 45;

  /** Arithmetic mean excess at the rating point [K]. */
  public static final double RATED_MEAN_EXCESS = 50;

  /** Drop from flow to return at the rating point [K]. */
  public static final double RATED_DROP = RATED_FLOW_EXCESS - RATED_RETURN_EXCESS;

  private EmissionLaw() {}

  /**
   * Emission coefficient K'L of a whole path whose steady solution at 75/65/20 gives exactly the
   * rated output.
   *
   * @param phi50 rated output [W]
   * @param n exponent, 1 or more
   * @return K'L [W/K^n]
   */
  public static double distributedCoefficient(double phi50, double n) {
    return ratedCapacityFlow(phi50)
        * inversePowerIntegral(RATED_RETURN_EXCESS, RATED_FLOW_EXCESS, n);
  }

  /**
   * Emission coefficient of each cell of a chain of equal, fully mixed cells, calibrated on the
   * chain itself: with
   *
   * <pre>
   *   m c (y[k-1] - y[k]) = K y[k]^n,  k = 1..M,  y[0] = 55 K,  m c = Phi50/10
   * </pre>
   *
   * <p>the outlet is y[M] = 45 K, so that the chain gives the rated output. Solved from the outlet
   * backwards, where each cell is explicit, for the K that meets the inlet.
   *
   * @param phi50 rated output [W]
   * @param n exponent, 1 or more
   * @param cells number of cells M, 1 or more
   * @return K of one cell [W/K^n]
   */
  public static double chainCoefficient(double phi50, double n, int cells) {
    // Every cell lies between 45 and 55 K, so M K y^n = Phi50 bounds K; a tenth more on both sides
    // keeps a root at a bound inside.
    double least = 0.9 * RATED_DROP / (cells * Math.pow(RATED_FLOW_EXCESS, n));
    double most = 1.1 * RATED_DROP / (cells * Math.pow(RATED_RETURN_EXCESS, n));
    double perCapacityFlow =
        new BrentSolver(1e-15, 1e-18)
            .solve(
                200,
                k -> chainInlet(RATED_RETURN_EXCESS, n, k, cells) - RATED_FLOW_EXCESS,
                least,
                most);
    return ratedCapacityFlow(phi50) * perCapacityFlow;
  }

  private static double chainInlet(
      double outletExcess, double n, double coefficientPerCapacityFlow, int cells) {
    double y = outletExcess;
    for (int k = 0; k < cells; k++) {
      y += coefficientPerCapacityFlow * Math.pow(y, n);
    }
    return y;
  }

  /**
   * Capacity flow of the rating point.
   *
   * @param phi50 rated output [W]
   * @return m c [W/K]
   */
  public static double ratedCapacityFlow(double phi50) {
    return phi50 / RATED_DROP;
  }

  /**
   * Output at a mean excess relative to the rated output, (excess/50)^n: EN 442-2:2014,
   * characteristic equation.
   *
   * @param excess mean excess temperature [K]
   * @param n exponent
   * @return output / rated output, 0 at zero or negative excess
   */
  public static double ratedFactor(double excess, double n) {
    return excess > 0 ? Math.pow(excess / RATED_MEAN_EXCESS, n) : 0;
  }

  /**
   * Excess at the end of the path in steady flow.
   *
   * @param inletExcess excess at the inlet [K]
   * @param n exponent, 1 or more
   * @param coefficient K'L of the path [W/K^n]
   * @param capacityFlow m c [W/K], 0 or more; without flow the outlet reaches the room
   * @return excess at the outlet [K]
   */
  public static double outletExcess(
      double inletExcess, double n, double coefficient, double capacityFlow) {
    return decayed(inletExcess, n, coefficient / capacityFlow);
  }

  /**
   * Excess of the last of a chain of fully mixed cells in steady flow, m c (y[k-1] - y[k]) = K
   * y[k]^n. Left of the root is never reached: Newton's steps from above fall on a convex function.
   *
   * @param inletExcess excess at the inlet [K]
   * @param n exponent, 1 or more
   * @param coefficient K of one cell [W/K^n]
   * @param cells number of cells
   * @param capacityFlow m c [W/K], above 0
   * @return excess of the water that leaves [K]
   */
  public static double chainOutletExcess(
      double inletExcess, double n, double coefficient, int cells, double capacityFlow) {
    if (!(inletExcess > 0)) {
      return inletExcess;
    }
    double perFlow = coefficient / capacityFlow;
    double entering = inletExcess;
    for (int cell = 0; cell < cells; cell++) {
      double y = entering;
      double step;
      do {
        double power = perFlow * Math.pow(y, n - 1);
        step = (y * (1 + power) - entering) / (1 + n * power);
        y -= step;
      } while (step > 1e-13 * y);
      entering = y;
    }
    return entering;
  }

  /**
   * Excess part of the way along the path in steady flow.
   *
   * @param inletExcess excess at the inlet [K]
   * @param n exponent, 1 or more
   * @param coefficient K'L of the whole path [W/K^n]
   * @param capacityFlow m c [W/K], above 0
   * @param share position x/L, 0 to 1
   * @return excess at that position [K]
   */
  public static double excessAt(
      double inletExcess, double n, double coefficient, double capacityFlow, double share) {
    return decayed(inletExcess, n, coefficient * share / capacityFlow);
  }

  /**
   * Excess of a body of water that cools in place (also of a parcel that travels: the same law in
   * its own time).
   *
   * @param initialExcess excess at the start [K]
   * @param n exponent, 1 or more
   * @param coefficient emission coefficient of the body [W/K^n]
   * @param capacity heat capacity of the body [J/K]
   * @param duration time [s], 0 or more
   * @return excess after that time [K]
   */
  public static double excessAfter(
      double initialExcess, double n, double coefficient, double capacity, double duration) {
    return decayed(initialExcess, n, coefficient * duration / capacity);
  }

  /** y with y^(1-n) = start^(1-n) + (n-1) reach; reach is K'L/(m c) or K t/C [K^(1-n)]. */
  private static double decayed(double start, double n, double reach) {
    if (!(start > 0) || reach == 0) {
      return start;
    }
    double unit = reach * Math.pow(start, n - 1);
    return start * (n == 1 ? Math.exp(-unit) : Math.exp(-Math.log1p((n - 1) * unit) / (n - 1)));
  }

  /**
   * Exact mean of y^n over the path between two points of a steady profile,
   *
   * <pre>
   *   (n-1)(y1 - y2) / (y2^(1-n) - y1^(1-n))
   * </pre>
   *
   * <p>so that mean x K'L of the stretch is the heat it emits. Accurate as the two approach each
   * other (y^n) and as n approaches 1 (logarithmic mean). Symmetric in its two points.
   *
   * @param y1 excess at one end [K]
   * @param y2 excess at the other end [K]
   * @param n exponent, 1 or more
   * @return mean of y^n [K^n], 0 if either end is at or below the room
   */
  public static double meanEmissionPower(double y1, double y2, double n) {
    if (!(y1 > 0) || !(y2 > 0)) {
      return 0;
    }
    double relativeDifference = (y1 - y2) / y2;
    if (relativeDifference == 0) {
      return Math.pow(y2, n);
    }
    double logRatio = Math.log1p(relativeDifference);
    return Math.pow(y2, n) * (relativeDifference / logRatio) / relativeExpm1((1 - n) * logRatio);
  }

  /**
   * Integral of y^(-n) dy from low to high: (low^(1-n) - high^(1-n))/(n-1), ln(high/low) at n = 1.
   */
  private static double inversePowerIntegral(double low, double high, double n) {
    double logRatio = Math.log(high / low);
    return Math.pow(low, 1 - n) * logRatio * relativeExpm1((1 - n) * logRatio);
  }

  /** (e^a - 1)/a, 1 at a = 0. */
  private static double relativeExpm1(double a) {
    return a == 0 ? 1 : Math.expm1(a) / a;
  }
}
