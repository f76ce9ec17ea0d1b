package settle.sim.emitter;

import settle.sim.units.Temperatures;

/**
 * Dry air at 101 325 Pa, for natural convection from surfaces of heating systems; valid from -50 to
 * 150 degrees Celsius.
 *
 * <p>Viscosity and conductivity: U.S. Standard Atmosphere 1976, part 1, equations 51 and 53.
 * Density: ideal gas with R = 287.05 J/(kg K) (same source). Specific heat: 1007 J/(kg K), constant
 * within 0.7 % over the range (tabulated 1006 at 250 K, 1007 at 300 K, 1014 at 400 K).
 */
public final class Air {

  /** Specific heat at constant pressure [J/(kg K)]. */
  public static final double SPECIFIC_HEAT = 1007;

  private static final double PRESSURE = 101_325;
  private static final double GAS_CONSTANT = 287.05;

  private Air() {}

  /**
   * Density.
   *
   * @param temperature [degrees Celsius]
   * @return rho [kg/m3]
   */
  public static double density(double temperature) {
    return PRESSURE / (GAS_CONSTANT * Temperatures.kelvin(temperature));
  }

  /**
   * Dynamic viscosity, mu = 1.458e-6 T^(3/2)/(T + 110.4).
   *
   * @param temperature [degrees Celsius]
   * @return mu [Pa s]
   */
  public static double dynamicViscosity(double temperature) {
    double t = Temperatures.kelvin(temperature);
    return 1.458e-6 * t * Math.sqrt(t) / (t + 110.4);
  }

  /**
   * Thermal conductivity, lambda = 2.64638e-3 T^(3/2)/(T + 245.4 x 10^(-12/T)).
   *
   * @param temperature [degrees Celsius]
   * @return lambda [W/(m K)]
   */
  public static double conductivity(double temperature) {
    double t = Temperatures.kelvin(temperature);
    return 2.64638e-3 * t * Math.sqrt(t) / (t + 245.4 * Math.pow(10, -12 / t));
  }

  /**
   * Kinematic viscosity.
   *
   * @param temperature [degrees Celsius]
   * @return nu [m2/s]
   */
  public static double kinematicViscosity(double temperature) {
    return dynamicViscosity(temperature) / density(temperature);
  }

  /**
   * Thermal diffusivity.
   *
   * @param temperature [degrees Celsius]
   * @return alpha [m2/s]
   */
  public static double diffusivity(double temperature) {
    return conductivity(temperature) / (density(temperature) * SPECIFIC_HEAT);
  }

  /**
   * Prandtl number nu/alpha.
   *
   * @param temperature [degrees Celsius]
   * @return Pr [1]
   */
  public static double prandtl(double temperature) {
    return kinematicViscosity(temperature) / diffusivity(temperature);
  }
}
