package settle.sim.water;

import settle.sim.units.Temperatures;

/**
 * Liquid water from 0 to 100 degrees Celsius at the pressures of a heating system (0.1 to 0.4 MPa;
 * pressure matters less than 0.02 % there and is left out).
 *
 * <p>Against IAPWS-IF97: density 0.01 %, specific heat 0.02 %, viscosity 0.05 %; conductivity as
 * IAPWS 2011.
 */
public final class Water {

  /** Density where a run does not ask for more, that of 50 degrees Celsius [kg/m3]. */
  public static final double DENSITY = 988;

  /** Specific heat where a run does not ask for more, that of 50 degrees Celsius [J/(kg K)]. */
  public static final double SPECIFIC_HEAT = 4180;

  private Water() {}

  /**
   * Density at 101 325 Pa: Kell, J. Chem. Eng. Data 20 (1975), page 97, equation 16; printed for 0
   * to 150 degrees Celsius.
   *
   * @param temperature [degrees Celsius]
   * @return rho [kg/m3]
   */
  public static double density(double temperature) {
    double t = temperature;
    return (999.83952
            + t
                * (16.945176
                    + t
                        * (-7.9870401e-3
                            + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12)))))
        / (1 + 16.879850e-3 * t);
  }

  /**
   * Specific heat at constant pressure: polynomial fitted to IAPWS-IF97 at 0.2 MPa in steps of 10
   * K, largest residual 0.43 J/(kg K).
   *
   * @param temperature [degrees Celsius]
   * @return c_p [J/(kg K)]
   */
  public static double specificHeat(double temperature) {
    double t = temperature;
    return 4218.812
        + t
            * (-3.17080
                + t * (9.83972e-2 + t * (-1.576063e-3 + t * (1.344252e-5 + t * -4.37572e-8))));
  }

  /**
   * Dynamic viscosity at 0.1 MPa: IAPWS SR6-08 (revised 2011), equation for viscosity; printed for
   * -20 to 110 degrees Celsius.
   *
   * @param temperature [degrees Celsius]
   * @return mu [Pa s]
   */
  public static double dynamicViscosity(double temperature) {
    double reduced = Temperatures.kelvin(temperature) / 300;
    return 1e-6
        * (280.68 * Math.pow(reduced, -1.9)
            + 511.45 * Math.pow(reduced, -7.7)
            + 61.131 * Math.pow(reduced, -19.6)
            + 0.45903 * Math.pow(reduced, -40.0));
  }

  /**
   * Thermal conductivity at 0.1 MPa: IAPWS SR6-08 (revised 2011), equation for conductivity;
   * printed for 0 to 110 degrees Celsius.
   *
   * @param temperature [degrees Celsius]
   * @return lambda [W/(m K)]
   */
  public static double conductivity(double temperature) {
    double reduced = Temperatures.kelvin(temperature) / 300;
    return 1.6630 * Math.pow(reduced, -1.15)
        - 1.7781 * Math.pow(reduced, -3.4)
        + 1.1567 * Math.pow(reduced, -6.0)
        - 0.432115 * Math.pow(reduced, -7.6);
  }
}
