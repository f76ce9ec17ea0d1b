package settle.sim.fabric;

/**
 * Direction of heat flow through an element, seen from the room, with its inside surface:
 * convection coefficients 5.0, 2.5 and 0.7 W/(m2 K) and radiation coefficient 5.13 W/(m2 K), the
 * components behind the inside surface resistances of ISO 6946:2017, Table 7 (0.10, 0.13, 0.17 m2
 * K/W).
 */
public enum HeatFlow {
  /** Heat flows up: a ceiling or roof. */
  UPWARD(5.0, 0.10),
  /** Heat flows sideways: a wall or window. */
  HORIZONTAL(2.5, 0.13),
  /** Heat flows down: a floor. */
  DOWNWARD(0.7, 0.17);

  /**
   * Radiation coefficient of an inside surface h_r [W/(m2 K)], emissivity 0.9 near 20 degrees
   * Celsius.
   */
  public static final double RADIATION_COEFFICIENT = 5.13;

  /** Outside surface resistance R_se [m2 K/W], ISO 6946:2017, Table 7. */
  public static final double OUTSIDE_RESISTANCE = 0.04;

  private final double convectionCoefficient;
  private final double insideResistance;

  HeatFlow(double convectionCoefficient, double insideResistance) {
    this.convectionCoefficient = convectionCoefficient;
    this.insideResistance = insideResistance;
  }

  /**
   * Convection coefficient of the inside surface.
   *
   * @return h_c [W/(m2 K)]
   */
  public double convectionCoefficient() {
    return convectionCoefficient;
  }

  /**
   * Inside surface resistance as printed in the standard.
   *
   * @return R_si [m2 K/W]
   */
  public double insideResistance() {
    return insideResistance;
  }

  /**
   * Inside surface resistance that follows from the two coefficients, 1/(h_c + h_r); within 1.5 %
   * of the printed one.
   *
   * @return [m2 K/W]
   */
  public double combinedResistance() {
    return 1 / (convectionCoefficient + RADIATION_COEFFICIENT);
  }
}
