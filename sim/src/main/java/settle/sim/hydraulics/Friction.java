package settle.sim.hydraulics;

/**
 * Friction in a round tube: dp/L = (f/D) rho v^2/2 (Darcy-Weisbach) with the Darcy factor f.
 *
 * <p>Laminar up to Re 2000, f = 64/Re. Turbulent from Re 4000, Colebrook and White (Colebrook, J.
 * Inst. Civ. Eng. 11 (1939), pages 133-156), 1/sqrt(f) = -2 log10((k/D)/3.7 + 2.51/(Re sqrt(f))),
 * within 6e-7 of f. Between them nothing reliable is published: f runs straight in Re from the one
 * to the other, which keeps it continuous and the gradient rising with the flow.
 */
public final class Friction {

  /** Highest Reynolds number taken as laminar. */
  public static final double LAMINAR_LIMIT = 2000;

  /** Lowest Reynolds number taken as turbulent. */
  public static final double TURBULENT_LIMIT = 4000;

  static final double HALF_LN10 = Math.log(10) / 2;

  /** Colebrook's constants as they stand in {@link #inverseRoot}. */
  static final double ROUGH = HALF_LN10 / (3.7 * 2.51);

  private static final double SMOOTH = HALF_LN10 / 2.51;

  private Friction() {}

  /**
   * Reynolds number v D/nu = 4 m/(pi D mu).
   *
   * @param massFlow [kg/s], either sign
   * @param bore inside diameter D [m]
   * @param dynamicViscosity mu [Pa s]
   * @return Re [1], 0 or more
   */
  public static double reynolds(double massFlow, double bore, double dynamicViscosity) {
    return 4 * Math.abs(massFlow) / (Math.PI * bore * dynamicViscosity);
  }

  /**
   * Darcy friction factor.
   *
   * @param reynolds Re [1], above 0
   * @param relativeRoughness k/D [1], 0 for a smooth tube, at most about 0.05
   * @return f [1]
   */
  public static double darcyFactor(double reynolds, double relativeRoughness) {
    if (reynolds <= LAMINAR_LIMIT) {
      return 64 / reynolds;
    }
    if (reynolds >= TURBULENT_LIMIT) {
      return colebrookWhite(reynolds, relativeRoughness);
    }
    return blended(reynolds, colebrookWhite(TURBULENT_LIMIT, relativeRoughness));
  }

  /**
   * Darcy factor between laminar and turbulent flow: straight between the two limits.
   *
   * @param reynolds Re [1], from {@link #LAMINAR_LIMIT} to {@link #TURBULENT_LIMIT}
   * @param turbulentFactor f at {@link #TURBULENT_LIMIT} [1]
   * @return f [1]
   */
  static double blended(double reynolds, double turbulentFactor) {
    double laminar = 64 / LAMINAR_LIMIT;
    return laminar
        + (turbulentFactor - laminar)
            * (reynolds - LAMINAR_LIMIT)
            / (TURBULENT_LIMIT - LAMINAR_LIMIT);
  }

  /**
   * Darcy factor of turbulent flow by Colebrook and White.
   *
   * @param reynolds Re [1]
   * @param relativeRoughness k/D [1]
   * @return f [1]
   */
  public static double colebrookWhite(double reynolds, double relativeRoughness) {
    double x = inverseRoot(reynolds, ROUGH * relativeRoughness);
    return 1 / (x * x);
  }

  /**
   * 1/sqrt(f) of turbulent flow, explicitly. With y = ln(10)/2 x and K = Re k/D ln(10)/(2 3.7
   * 2.51), Colebrook's equation is y + ln(K + y) = ln(Re ln(10)/(2 2.51)). One step of fourth order
   * (Clamond, Ind. Eng. Chem. Res. 48, 2009, from memory) from y two below the right side, which is
   * about where y is at the lowest Re, leaves 6e-7 of f at Re 4000 and less beyond.
   *
   * @param reynolds Re [1]
   * @param rough {@link #ROUGH} k/D [1]
   * @return 1/sqrt(f) [1]
   */
  static double inverseRoot(double reynolds, double rough) {
    double k = reynolds * rough;
    double right = Math.log(SMOOTH * reynolds);
    double y = right - 2;
    double argument = k + y;
    double rise = 1 + argument;
    double e = (Math.log(argument) - 2) / rise;
    y -= (rise + e / 2) * e * argument / (rise + e * (1 + e / 3));
    return y / HALF_LN10;
  }

  /**
   * Pressure lost per metre of straight tube; an odd function of the flow.
   *
   * @param massFlow m [kg/s], either sign
   * @param bore inside diameter D [m]
   * @param roughness k [m]; 1.5e-6 for drawn copper
   * @param density rho [kg/m3]
   * @param dynamicViscosity mu [Pa s]
   * @return dp/L [Pa/m], with the sign of the flow
   */
  public static double pressureGradient(
      double massFlow, double bore, double roughness, double density, double dynamicViscosity) {
    double velocity = massFlow / (density * Math.PI * bore * bore / 4);
    double re = reynolds(massFlow, bore, dynamicViscosity);
    if (re <= LAMINAR_LIMIT) {
      return 32 * dynamicViscosity * velocity / (bore * bore); // f = 64/Re, finite at rest
    }
    return darcyFactor(re, roughness / bore) / bore * density * velocity * Math.abs(velocity) / 2;
  }
}
