package settle.sim.valve;

/**
 * The water about a head: passing water renews it, the room cools it,
 *
 * <pre>
 *   dT_w/dt = m/M (T_in - T_w) + (T_a - T_w)/tau_w
 * </pre>
 *
 * @param mass M of the water that takes the passing water's temperature [kg], > 0
 * @param cooling tau_w with which it cools to the room while it stands [s], > 0
 */
public record HeadWater(double mass, double cooling) {

  /** That of a 15 mm body: 50 g that cool within twenty minutes; common practice, no source. */
  public static final HeadWater USUAL = new HeadWater(0.05, 1200);

  public HeadWater {
    if (!(mass > 0 && cooling > 0)) {
      throw new IllegalArgumentException(
          "water about a head: mass " + mass + " kg and cooling " + cooling + " s must be > 0");
    }
  }

  /**
   * Its temperature at rest.
   *
   * @param massFlow m through the valve [kg/s]
   * @param inlet temperature of the water entering [°C]; ignored without flow
   * @param air of the room [°C]
   * @return T_w [°C]
   */
  public double atRest(double massFlow, double inlet, double air) {
    if (!(massFlow > 0)) {
      return air;
    }
    double renewal = massFlow / mass;
    return (renewal * inlet + air / cooling) / (renewal + 1 / cooling);
  }
}
