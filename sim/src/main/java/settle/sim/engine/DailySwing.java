package settle.sim.engine;

/**
 * How air and fabric of a house stand to where they would rest, at an instant of a day like all
 * days before it. Programme and gains make it, so it is nearly the same for a house that is set a
 * little otherwise, and whoever lives through many such days need not wait for it each time.
 */
public final class DailySwing {

  private final double before;
  private final double[][] rest;
  private final double[][] then;

  /**
   * @param before how long before a day's beginning that instant is [s]
   * @param rest the rooms' state at rest
   * @param then their state at that instant
   */
  DailySwing(double before, double[][] rest, double[][] then) {
    this.before = before;
    this.rest = rest;
    this.then = then;
  }

  /** How long before a day's beginning that instant is [s]. */
  double before() {
    return before;
  }

  double[][] rest() {
    return rest;
  }

  double[][] then() {
    return then;
  }
}
