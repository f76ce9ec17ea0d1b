package settle.sim.water;

import settle.sim.units.Temperatures;

/**
 * Saturation line of water: IAPWS-IF97 (release of 2007, revised 2012), region 4, equations 30 and
 * 31 and Table 34; valid from 0 to 373 degrees Celsius. One implicit quadratic serves both
 * directions.
 */
public final class Saturation {

  private static final double N1 = 0.11670521452767e4;
  private static final double N2 = -0.72421316703206e6;
  private static final double N3 = -0.17073846940092e2;
  private static final double N4 = 0.12020824702470e5;
  private static final double N5 = -0.32325550322333e7;
  private static final double N6 = 0.14915108613530e2;
  private static final double N7 = -0.48232657361591e4;
  private static final double N8 = 0.40511340542057e6;
  private static final double N9 = -0.23855557567849;
  private static final double N10 = 0.65017534844798e3;

  /** The release's pressure unit p* = 1 MPa [Pa]. */
  private static final double REFERENCE_PRESSURE = 1e6;

  private Saturation() {}

  /**
   * Saturation pressure.
   *
   * @param temperature [degrees Celsius], 0 to 373
   * @return [Pa]
   */
  public static double pressure(double temperature) {
    double t = Temperatures.kelvin(temperature);
    double theta = t + N9 / (t - N10); // equation 29b
    double a = theta * theta + N1 * theta + N2;
    double b = N3 * theta * theta + N4 * theta + N5;
    double c = N6 * theta * theta + N7 * theta + N8;
    double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c)); // equation 30
    return REFERENCE_PRESSURE * root * root * root * root;
  }

  /**
   * Saturation temperature: the dew point at a partial pressure of water vapour.
   *
   * @param pressure [Pa], 611 to 22e6
   * @return [degrees Celsius]
   */
  public static double temperature(double pressure) {
    double beta = Math.sqrt(Math.sqrt(pressure / REFERENCE_PRESSURE)); // equation 29a
    double e = beta * beta + N3 * beta + N6;
    double f = N1 * beta * beta + N4 * beta + N7;
    double g = N2 * beta * beta + N5 * beta + N8;
    double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g)); // equation 31
    double sum = N10 + d;
    return Temperatures.celsius((sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2);
  }
}
