package settle.sim.hydraulics;

/**
 * An automatic bypass in a network that is being solved: one more leaf, once the pressure at its
 * place is above its set pressure.
 */
final class BypassFlow {

  /** Flow below which one whose pressure is too low has shut [kg/s]. */
  private static final double SHUT = 1e-10;

  private static final int MOST_ROUNDS = 200;

  private final Bypass bypass;

  /** Mass flow when open per root of the pressure [kg/(s sqrt(Pa))]. */
  private final double capacity;

  private double flow;

  // At that flow: pressure it takes [Pa] and its rise
  private double drop;
  private double slope;

  /**
   * @param bypass what it is made of; null if there is none
   * @param density of the water [kg/m³]
   */
  BypassFlow(Bypass bypass, double density) {
    this.bypass = bypass;
    capacity = bypass == null ? 0 : FlowCoefficient.massFlow(1, bypass.kv(), density);
  }

  /** Mass flow [kg/s]. */
  double flow() {
    return flow;
  }

  double drop() {
    return drop;
  }

  double slope() {
    return slope;
  }

  void shut() {
    flow = 0;
  }

  /** Opens a little if it is shut and a pressure [Pa] would open it; whether it does. */
  boolean opens(double pressure) {
    if (bypass == null || flow > 0 || pressure <= bypass.setPressure()) {
      return false;
    }
    flow = NetworkFlow.LEAST_FLOW;
    return true;
  }

  /**
   * Follows the pressure at its place.
   *
   * @param pressure [Pa]
   * @param share of the change that is made [-]
   * @param least relative change below which it counts as staying [-]
   * @return whether it stays
   */
  boolean follow(double pressure, double share, double least) {
    double change = (pressure - drop) / slope;
    boolean stays =
        Math.abs(change)
            <= least * Math.max(flow, NetworkFlow.LEAST_FLOW) + NetworkFlow.rounding(drop) / slope;
    flow = Math.max(flow + share * change, flow / 10);
    if (flow < SHUT) {
      flow = 0;
    }
    return stays;
  }

  /**
   * Finds the pressure it takes at its flow. Opening, m = k sqrt(p) (p - set)/band: with x =
   * sqrt(p) the root of x³ - set x - m band/k = 0 above sqrt(set), which Newton's method reaches
   * from above. Open, m = k sqrt(p).
   */
  void look() {
    double set = bypass.setPressure();
    double open = flow / capacity;
    if (open * open >= set + bypass.band()) {
      drop = open * open;
      slope = 2 * open / capacity;
      return;
    }
    double constant = open * bypass.band();
    double x = Math.sqrt(set + bypass.band());
    for (int i = 0; i < MOST_ROUNDS; i++) {
      double step = (x * (x * x - set) - constant) / (3 * x * x - set);
      x -= step;
      if (Math.abs(step) < 1e-14 * x) {
        break;
      }
    }
    drop = x * x;
    slope = 2 * x * bypass.band() / capacity / (3 * x * x - set);
  }
}
