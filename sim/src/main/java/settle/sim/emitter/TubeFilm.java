package settle.sim.emitter;

import settle.sim.water.Water;

/**
 * Film between water and wall of a round tube, g = Nu lambda pi per metre of tube.
 *
 * <ul>
 *   <li>laminar, up to Re 2300: Nu = 0.47 Ra^(1/4), Ra on bore and difference of wall and water,
 *       but not below 4.36 of constant heat flux: natural convection dominates at the bores and
 *       temperatures of heating (form of Morcos and Bergles, J. Heat Transfer 97, 1975, from
 *       memory);
 *   <li>turbulent, from Re 4000: Gnielinski (Int. Chem. Eng. 16, 1976);
 *   <li>between: straight in Re.
 * </ul>
 *
 * Properties are those of {@link Water}, from tables between 0 and 100 °C.
 */
public final class TubeFilm {

  /** Nusselt number of laminar forced convection with constant heat flux. */
  public static final double CONSTANT_FLUX = 4.36;

  /** Highest Reynolds number at which the flow is laminar. */
  public static final double LAMINAR_LIMIT = 2300;

  /** Lowest Reynolds number at which Gnielinski's equation holds alone. */
  public static final double TURBULENT_LIMIT = 4000;

  private static final double GRAVITY = 9.80665;
  private static final double MIXED = 0.47;
  private static final double APART = 2.5;
  private static final int POINTS = 41;

  private final double[] least = new double[POINTS];
  private final double[] natural = new double[POINTS];
  private final double[] reynoldsPerFlow = new double[POINTS];
  private final double[] prandtl = new double[POINTS];
  private final double[] perNusselt = new double[POINTS];

  // Last flow and temperature asked for
  private double forced;
  private double share;
  private double growth;

  /**
   * @param bore of the tube [m]
   */
  public TubeFilm(double bore) {
    for (int i = 0; i < POINTS; i++) {
      double t = i * APART;
      perNusselt[i] = Math.PI * Water.conductivity(t);
      least[i] = CONSTANT_FLUX * perNusselt[i];
      natural[i] = MIXED * Math.pow(Math.max(rayleigh(bore, t, 1), 0), 0.25) * perNusselt[i];
      reynoldsPerFlow[i] = 4 / (Math.PI * bore * Water.dynamicViscosity(t));
      prandtl[i] = prandtl(t);
    }
  }

  /**
   * Rayleigh number of water in a tube.
   *
   * @param bore [m]
   * @param temperature of the water [°C]
   * @param difference of wall and water [K]
   */
  public static double rayleigh(double bore, double temperature, double difference) {
    double density = Water.density(temperature);
    double expansion =
        (Water.density(temperature - 0.5) - Water.density(temperature + 0.5)) / density;
    double viscosity = Water.dynamicViscosity(temperature) / density;
    double diffusivity =
        Water.conductivity(temperature) / (density * Water.specificHeat(temperature));
    return GRAVITY
        * expansion
        * Math.abs(difference)
        * bore
        * bore
        * bore
        / (viscosity * diffusivity);
  }

  /** Nusselt number of laminar flow at a Rayleigh number. */
  public static double laminar(double rayleigh) {
    return Math.max(CONSTANT_FLUX, MIXED * Math.pow(rayleigh, 0.25));
  }

  /**
   * Nusselt number of turbulent flow in a smooth tube, (f/8)(Re - 1000) Pr/(1 + 12.7 sqrt(f/8)
   * (Pr^(2/3) - 1)), f = (0.79 ln Re - 1.64)^-2.
   */
  public static double gnielinski(double reynolds, double prandtl) {
    double root = 0.79 * Math.log(reynolds) - 1.64;
    double f = 1 / (8 * root * root);
    return f
        * (reynolds - 1000)
        * prandtl
        / (1 + 12.7 * Math.sqrt(f) * (Math.cbrt(prandtl * prandtl) - 1));
  }

  /** Prandtl number of water at a temperature [°C]. */
  public static double prandtl(double temperature) {
    return Water.dynamicViscosity(temperature)
        * Water.specificHeat(temperature)
        / Water.conductivity(temperature);
  }

  /**
   * Takes a flow.
   *
   * @param massFlow [kg/s]
   * @param temperature of the water on average [°C]
   */
  void flow(double massFlow, double temperature) {
    double re = massFlow * at(reynoldsPerFlow, temperature);
    share = Math.min(Math.max((re - LAMINAR_LIMIT) / (TURBULENT_LIMIT - LAMINAR_LIMIT), 0), 1);
    forced =
        share > 0
            ? at(perNusselt, temperature)
                * gnielinski(Math.max(re, TURBULENT_LIMIT), at(prandtl, temperature))
            : 0;
  }

  /**
   * Film of the flow that was taken [W/(m K)].
   *
   * @param temperature of the water here [°C]
   * @param difference of wall and water here [K]
   */
  double conductance(double temperature, double difference) {
    growth = 0;
    if (share == 1) {
      return forced;
    }
    double still = (1 - share) * still(temperature, difference);
    growth *= still / (still + share * forced);
    return still + share * forced;
  }

  /** How the conductance asked for last goes with the difference, d ln g/d ln d [-]. */
  double growth() {
    return growth;
  }

  private double still(double temperature, double difference) {
    double x = Math.min(Math.max(temperature / APART, 0), POINTS - 1.001);
    int i = (int) x;
    double part = x - i;
    double perRoot = natural[i] + (natural[i + 1] - natural[i]) * part;
    double forcedLeast = least[i] + (least[i + 1] - least[i]) * part;
    double free = perRoot * Math.sqrt(Math.sqrt(Math.abs(difference)));
    growth = free > forcedLeast ? 0.25 : 0;
    return Math.max(forcedLeast, free);
  }

  private static double at(double[] table, double temperature) {
    double x = Math.min(Math.max(temperature / APART, 0), POINTS - 1.001);
    int i = (int) x;
    return table[i] + (table[i + 1] - table[i]) * (x - i);
  }
}
