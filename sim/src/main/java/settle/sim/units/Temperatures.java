package settle.sim.units;

/** The one place where degrees Celsius meet kelvin. */
public final class Temperatures {

  /** Thermodynamic temperature of 0 degrees Celsius [K] (definition of the Celsius scale). */
  public static final double ZERO_CELSIUS = 273.15;

  private Temperatures() {}

  /**
   * Thermodynamic temperature.
   *
   * @param celsius temperature [degrees Celsius]
   * @return the same temperature [K]
   */
  public static double kelvin(double celsius) {
    return celsius + ZERO_CELSIUS;
  }

  /**
   * Celsius temperature.
   *
   * @param kelvin thermodynamic temperature [K]
   * @return the same temperature [degrees Celsius]
   */
  public static double celsius(double kelvin) {
    return kelvin - ZERO_CELSIUS;
  }
}
