package settle.sim.bench;

import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * Flow through a valve against the temperature its head senses, driven slowly one way.
 *
 * @param sensed ascending, whichever way it was driven [°C]
 * @param flow at each [kg/s]; falls as the temperature rises
 */
public record Sweep(double[] sensed, double[] flow) {

  /** Shares of the largest flow between which a curve counts as straight [-]. */
  private static final double STRAIGHT_FROM = 0.1;

  private static final double STRAIGHT_TO = 0.4;

  /** Fewer readings than these between them make a jump, not a line: a tenth of a kelvin. */
  private static final int FEWEST = (int) (0.1 / TestRig.SPACING);

  /** Share of the largest flow that counts as all of it [-]. */
  private static final double ALL = 1 - 1e-9;

  /** Largest flow [kg/s]. */
  public double most() {
    return flow[0];
  }

  /** Lowest temperature at which nothing flows [°C]; not a number if something always does. */
  public double shutFrom() {
    int last = flow.length - 1;
    if (flow[last] > 0) {
      return Double.NaN;
    }
    int i = last;
    while (i > 0 && flow[i - 1] == 0) {
      i--;
    }
    return sensed[i];
  }

  /** Highest temperature at which all flows that can [°C]. */
  public double openUpTo() {
    return temperatureAt(most() * ALL);
  }

  /** Highest temperature at which so much flows [kg/s], straight between readings [°C]. */
  public double temperatureAt(double wanted) {
    int i = flow.length - 1;
    while (i >= 0 && flow[i] < wanted) {
      i--;
    }
    if (i < 0 || i == flow.length - 1) {
      return Double.NaN;
    }
    double share = (flow[i] - wanted) / (flow[i] - flow[i + 1]);
    return sensed[i] + share * (sensed[i + 1] - sensed[i]);
  }

  /** Flow at a temperature [°C], straight between readings; not a number outside [kg/s]. */
  public double flowAt(double temperature) {
    int last = sensed.length - 1;
    if (!(temperature >= sensed[0] && temperature <= sensed[last])) {
      return Double.NaN;
    }
    double place = (temperature - sensed[0]) / (sensed[last] - sensed[0]) * last;
    int i = Math.min((int) place, last - 1);
    return flow[i] + (place - i) * (flow[i + 1] - flow[i]);
  }

  /**
   * Where the straight part of the curve, extended, meets zero flow: on the opening curve the
   * temperature point S of EN 215 [°C]; not a number for a valve that has no straight part.
   */
  public double extendedToZero() {
    SimpleRegression line = new SimpleRegression();
    for (int i = 0; i < flow.length; i++) {
      if (flow[i] > STRAIGHT_FROM * most() && flow[i] < STRAIGHT_TO * most()) {
        line.addData(flow[i], sensed[i]);
      }
    }
    return line.getN() < FEWEST ? Double.NaN : line.predict(0);
  }
}
