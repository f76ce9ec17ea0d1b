package settle.sim.hydraulics;

/**
 * A circulator. Its head falls, stays or, less than in proportion, rises with the flow; switched
 * off it passes nothing, a check valve being part of it.
 */
public sealed interface Pump permits ConstantPump, ProportionalPump, CurvePump {

  /**
   * Differential pressure it makes [Pa], >= 0.
   *
   * @param massFlow m [kg/s], >= 0
   * @param density of the water [kg/m³]
   */
  double head(double massFlow, double density);

  /**
   * Slope of its head, d head/d m [Pa s/kg].
   *
   * @param massFlow m [kg/s], >= 0
   * @param density of the water [kg/m³]
   */
  double slope(double massFlow, double density);

  /** Hydraulic over electrical power [-], above 0, at most 1. */
  double efficiency();
}
