package settle.sim.hydraulics;

import settle.sim.units.Range;

/**
 * Where the pump of the mains stands: what the source in series with it takes of its head, and what
 * it draws however little it moves.
 *
 * @param leastPower electrical power below which the running pump does not go [W]
 * @param sourceKv flow coefficient of the source and what stands beside it [m³/h at 1 bar];
 *     infinite where the pump's head is what is left outside
 */
public record PumpPlace(double leastPower, double sourceKv) {

  /** A pump that takes nothing but what it moves, its head being what is left outside. */
  public static final PumpPlace FREE = new PumpPlace(0, Double.POSITIVE_INFINITY);

  public PumpPlace {
    Range.notNegative("least power of the pump", leastPower, "W");
    if (!(sourceKv > 0)) {
      throw new IllegalArgumentException("flow coefficient of the source must be > 0 m³/h");
    }
  }

  /** What the source takes of the head [Pa]. */
  public double drop(double massFlow, double density) {
    return Double.isInfinite(sourceKv)
        ? 0
        : FlowCoefficient.pressureDrop(massFlow, sourceKv, density);
  }

  /** A pump as the mains see it. */
  public Pump behind(Pump pump) {
    return Double.isInfinite(sourceKv) ? pump : new ThrottledPump(pump, sourceKv);
  }

  /**
   * Electrical power of a running pump [W].
   *
   * @param pump the pump
   * @param left of its head, what the mains have [Pa]
   * @param massFlow through it [kg/s]
   * @param density of the water [kg/m³]
   */
  public double power(Pump pump, double left, double massFlow, double density) {
    double hydraulic = (left + drop(massFlow, density)) * massFlow / density;
    return Math.max(hydraulic / pump.efficiency(), leastPower);
  }
}
