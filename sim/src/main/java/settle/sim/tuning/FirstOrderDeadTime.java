package settle.sim.tuning;

import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * A lag with a dead time, G(s) = k e^(-theta s)/(tau s + 1): the plainest picture of a plant that a
 * controller can be set by.
 *
 * @param gain k: what comes of a step of 1 in the end
 * @param lag tau [s]
 * @param deadTime theta [s]
 */
public record FirstOrderDeadTime(double gain, double lag, double deadTime) {

  private static final int MOST_ITERATIONS = 400;
  private static final double ACCURACY = 1e-12;

  /** Shares of the time looked at from which the dead time is sought [-]. */
  private static final double[] FIRST_DEAD_TIMES = {0, 0.02, 0.05, 0.1, 0.2};

  /** y(t) = k (1 - e^(-(t - theta)/tau)) after a step of 1 at t = 0. */
  public double stepResponse(double time) {
    return time <= deadTime ? 0 : gain * -Math.expm1(-(time - deadTime) / lag);
  }

  /**
   * The one whose step response comes closest to what was seen, by least squares (Levenberg and
   * Marquardt) in k, ln tau and theta, from several first guesses of the dead time: the corner at
   * theta makes more than one valley.
   *
   * @param time instants from the step on [s], ascending, evenly spaced
   * @param seen response to a step of 1 then; not modified
   */
  public static FirstOrderDeadTime fitted(double[] time, double[] seen) {
    double span = time[time.length - 1];
    FirstOrderDeadTime best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double share : FIRST_DEAD_TIMES) {
      FirstOrderDeadTime found = fitted(time, seen, share * span);
      double squares = found.squares(time, seen);
      if (squares < least) {
        least = squares;
        best = found;
      }
    }
    return best;
  }

  private static FirstOrderDeadTime fitted(double[] time, double[] seen, double firstDeadTime) {
    double span = time[time.length - 1];
    double end = seen[seen.length - 1];
    double[] found =
        new LevenbergMarquardtOptimizer()
            .optimize(
                new LeastSquaresBuilder()
                    .start(new double[] {end, Math.log(span / 3), firstDeadTime})
                    .target(seen)
                    .model(p -> responses(p, time))
                    .parameterValidator(p -> physical(p, span))
                    .lazyEvaluation(false)
                    .maxIterations(MOST_ITERATIONS)
                    .maxEvaluations(MOST_ITERATIONS)
                    .checker(
                        (i, before, now) ->
                            Math.abs(before.getCost() - now.getCost()) <= ACCURACY * now.getCost())
                    .build())
            .getPoint()
            .toArray();
    return new FirstOrderDeadTime(found[0], Math.exp(found[1]), found[2]);
  }

  /** Step response and its slopes in k, ln tau and theta at every instant. */
  private static Pair<RealVector, RealMatrix> responses(RealVector p, double[] time) {
    double k = p.getEntry(0);
    double tau = Math.exp(p.getEntry(1));
    double theta = p.getEntry(2);
    double[] y = new double[time.length];
    double[][] slopes = new double[time.length][3];
    for (int i = 0; i < y.length; i++) {
      double s = time[i] - theta;
      if (s > 0) {
        double decay = Math.exp(-s / tau);
        y[i] = k * (1 - decay);
        slopes[i][0] = 1 - decay;
        slopes[i][1] = -k * decay * s / tau;
        slopes[i][2] = -k * decay / tau;
      }
    }
    return new Pair<>(new ArrayRealVector(y, false), new Array2DRowRealMatrix(slopes, false));
  }

  /** A dead time below 0 means a lag that is shorter, not a plant that knows beforehand. */
  private static RealVector physical(RealVector p, double span) {
    p.setEntry(1, Math.min(Math.max(p.getEntry(1), 0), 20));
    p.setEntry(2, Math.min(Math.max(p.getEntry(2), 0), span / 2));
    return p;
  }

  private double squares(double[] time, double[] seen) {
    double sum = 0;
    for (int i = 0; i < time.length; i++) {
      double off = stepResponse(time[i]) - seen[i];
      sum += off * off;
    }
    return sum;
  }

  /**
   * Half rule (Skogestad 2003): the largest lag takes half of the next one on, the dead time the
   * other half and whatever is smaller.
   *
   * @param gain k
   * @param lags descending [s]; not modified
   * @param deadTime [s]
   */
  public static FirstOrderDeadTime byHalfRule(double gain, double[] lags, double deadTime) {
    double lag = lags[0];
    double theta = deadTime;
    if (lags.length > 1) {
      lag += lags[1] / 2;
      theta += lags[1] / 2;
    }
    for (int i = 2; i < lags.length; i++) {
      theta += lags[i];
    }
    return new FirstOrderDeadTime(gain, lag, theta);
  }

  /** This process behind a further lag [s], by the half rule. */
  public FirstOrderDeadTime behind(double further) {
    return further <= lag
        ? byHalfRule(gain, new double[] {lag, further}, deadTime)
        : byHalfRule(gain, new double[] {further, lag}, deadTime);
  }
}
