package settle.sim.source;

import settle.sim.water.Saturation;

/**
 * Flue gas of methane burnt completely in air at 101 325 Pa: its dew point, and the upper bound of
 * gross efficiency.
 *
 * <pre>
 *   CH4 + 2 (1+e)(O2 + 79.05/20.95 N2)  ->  CO2 + 2 H2O + 2 e O2 + 2 (1+e) 79.05/20.95 N2
 * </pre>
 *
 * <p>e is the excess air as a ratio. Air: 20.95 % oxygen, the rest counted as nitrogen, and what
 * vapour it brings. Natural gas with some ethane and nitrogen lies 0.2 to 0.3 K lower in dew point;
 * humid air 0.6 to 1.3 K higher than dry.
 */
public final class FlueGas {

  private static final double PRESSURE = 101_325;
  private static final double NITROGEN_PER_OXYGEN = 79.05 / 20.95;
  private static final double WATER_PER_METHANE = 2;

  /** Reference temperature of the heating value [degrees Celsius]. */
  private static final double REFERENCE_TEMPERATURE = 25;

  /** Gross heat of combustion of methane at 25 degrees Celsius [J/mol] (ISO 6976:1995, Table 3). */
  private static final double GROSS_HEAT = 890_630;

  /** Heat of vaporisation of water at 25 degrees Celsius [J/mol] (ISO 6976:1995, 44.016 kJ/mol). */
  private static final double VAPORISATION_HEAT = 44_016;

  // Molar heat capacities at constant pressure, mean 25 to 120 degrees Celsius [J/(mol K)], within
  // 2 % of handbook values.
  private static final double CARBON_DIOXIDE_HEAT = 38.5;
  private static final double WATER_VAPOUR_HEAT = 33.8;
  private static final double OXYGEN_HEAT = 29.6;
  private static final double NITROGEN_HEAT = 29.15;

  private FlueGas() {}

  /**
   * Dew point of the flue gas of dry air.
   *
   * @param excessAir e as a ratio, 0 or more; domestic burners run at 0.2 to 0.3
   * @return [degrees Celsius]
   */
  public static double dewPoint(double excessAir) {
    return dewPoint(excessAir, 0);
  }

  /**
   * Dew point of the flue gas.
   *
   * @param excessAir e as a ratio, 0 or more
   * @param humidity water per dry air [mol/mol]
   * @return [degrees Celsius]
   */
  public static double dewPoint(double excessAir, double humidity) {
    double vapour = WATER_PER_METHANE + humidity * airMoles(excessAir);
    return Saturation.temperature(vapour / (vapour + dryMoles(excessAir)) * PRESSURE);
  }

  /**
   * Share of the flue's vapour that has condensed where it leaves saturated: the dry gas carries
   * p/(p_0 - p) of vapour, p being the saturation pressure.
   *
   * @param flueTemperature temperature at which it leaves [degrees Celsius], 0 to 150
   * @param dewPoint of the gas [degrees Celsius]
   * @return 0 at the dew point and above [-]
   */
  public static double condensed(double flueTemperature, double dewPoint) {
    if (flueTemperature >= dewPoint) {
      return 0;
    }
    return 1 - perDryMole(flueTemperature) / perDryMole(dewPoint);
  }

  /**
   * Gross efficiency where a share of the vapour condenses; nothing is lost from the case; fuel and
   * air, with the vapour it brings, enter at 25 degrees Celsius.
   *
   * @param flueTemperature temperature of the flue gas as it leaves [degrees Celsius], 0 to 150
   * @param excessAir e as a ratio, 0 or more
   * @param humidity water per dry air [mol/mol]
   * @param condensed share of the vapour that condenses [-]
   * @return heat to the water / gross heat of the fuel
   */
  public static double grossEfficiency(
      double flueTemperature, double excessAir, double humidity, double condensed) {
    double brought = humidity * airMoles(excessAir);
    double vapour = (WATER_PER_METHANE + brought) * (1 - condensed);
    return efficiency(flueTemperature, excessAir, vapour, vapour - brought);
  }

  /**
   * Share of carbon dioxide in the dry flue gas, as read on a flue gas analyser.
   *
   * @param excessAir e as a ratio, 0 or more
   * @return share, 0 to 1
   */
  public static double dryCarbonDioxide(double excessAir) {
    return 1 / dryMoles(excessAir);
  }

  /**
   * Upper bound of the gross efficiency: flue gas leaves at the given temperature, saturated where
   * that is below the dew point; nothing is lost with the condensate (at most 0.2 points) or from
   * the case; fuel and air enter at 25 degrees Celsius.
   *
   * @param flueTemperature temperature of the flue gas as it leaves [degrees Celsius], 0 to 150
   * @param excessAir e as a ratio, 0 or more
   * @return heat to the water / gross heat of the fuel
   */
  public static double grossEfficiencyBound(double flueTemperature, double excessAir) {
    double vapour = vapourMoles(flueTemperature, excessAir);
    return efficiency(flueTemperature, excessAir, vapour, vapour);
  }

  /**
   * @param vapour that leaves, per mole of methane
   * @param made of it, what the fire made and nothing condensed; below 0 where some of the air's
   *     own condenses
   */
  private static double efficiency(
      double flueTemperature, double excessAir, double vapour, double made) {
    double rise = flueTemperature - REFERENCE_TEMPERATURE;
    double sensible =
        rise
            * (CARBON_DIOXIDE_HEAT
                + OXYGEN_HEAT * oxygenMoles(excessAir)
                + NITROGEN_HEAT * nitrogenMoles(excessAir)
                + WATER_VAPOUR_HEAT * vapour);
    return 1 - (sensible + VAPORISATION_HEAT * made) / GROSS_HEAT;
  }

  /** Water that leaves as vapour, per mole of methane: all of it, or what saturates the dry gas. */
  private static double vapourMoles(double flueTemperature, double excessAir) {
    if (flueTemperature >= dewPoint(excessAir)) {
      return WATER_PER_METHANE;
    }
    return dryMoles(excessAir) * perDryMole(flueTemperature);
  }

  /** Vapour that a mole of dry gas carries when saturated. */
  private static double perDryMole(double temperature) {
    double pressure = Saturation.pressure(temperature);
    return pressure / (PRESSURE - pressure);
  }

  private static double airMoles(double excessAir) {
    return 2 * (1 + excessAir) * (1 + NITROGEN_PER_OXYGEN);
  }

  private static double dryMoles(double excessAir) {
    return 1 + oxygenMoles(excessAir) + nitrogenMoles(excessAir);
  }

  private static double oxygenMoles(double excessAir) {
    return 2 * excessAir;
  }

  private static double nitrogenMoles(double excessAir) {
    return 2 * (1 + excessAir) * NITROGEN_PER_OXYGEN;
  }
}
