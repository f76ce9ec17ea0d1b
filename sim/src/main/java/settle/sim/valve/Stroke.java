package settle.sim.valve;

/**
 * A stroke at constant speed after a goal that itself moves straight; exact for a stretch of time.
 * Lifts are shares of the full stroke; reach is how far the stroke gets in the stretch, its length
 * over the travel time.
 */
final class Stroke {

  private Stroke() {}

  /**
   * Share of the stretch after which the goal is caught: the way to it over the speed at which it
   * closes; 1 if it is not.
   */
  private static double caughtAfter(double from, double goalStart, double goalEnd, double reach) {
    double way = goalStart - from;
    double closing = reach - direction(from, goalStart, goalEnd) * (goalEnd - goalStart);
    return closing > Math.abs(way) ? Math.abs(way) / closing : 1;
  }

  private static double direction(double from, double goalStart, double goalEnd) {
    return Math.signum(goalStart != from ? goalStart - from : goalEnd - goalStart);
  }

  private static double towards(double from, double to, double reach) {
    return to > from ? Math.min(from + reach, to) : Math.max(from - reach, to);
  }

  /** Lift at the end of the stretch. */
  static double end(double from, double goalStart, double goalEnd, double reach) {
    double s = caughtAfter(from, goalStart, goalEnd, reach);
    double there = from + direction(from, goalStart, goalEnd) * reach * s;
    return towards(there, goalEnd, reach * (1 - s));
  }

  /** Mean lift over the stretch: straight until the goal is caught, straight after it. */
  static double mean(double from, double goalStart, double goalEnd, double reach) {
    double s = caughtAfter(from, goalStart, goalEnd, reach);
    double there = from + direction(from, goalStart, goalEnd) * reach * s;
    double end = towards(there, goalEnd, reach * (1 - s));
    return s * (from + there) / 2 + (1 - s) * (there + end) / 2;
  }
}
