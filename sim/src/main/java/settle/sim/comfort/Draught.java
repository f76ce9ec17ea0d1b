package settle.sim.comfort;

/**
 * Draught rating, ISO 7730:2005 equation 6 (from memory): the share of people whom moving air at
 * the neck annoys. For 20 to 26 °C, air below 0.5 m/s and turbulence of 0.1 to 0.6; at the feet it
 * says more than people feel.
 */
public final class Draught {

  /** Air slower than this is not felt [m/s]. */
  private static final double STILL = 0.05;

  private Draught() {}

  /**
   * Share of dissatisfied [-].
   *
   * @param air air temperature [°C]
   * @param speed mean air speed [m/s]
   * @param turbulence standard deviation of the speed over its mean [-]; 0.4 where unknown
   */
  public static double rating(double air, double speed, double turbulence) {
    double v = Math.max(speed, STILL);
    double percent = (34 - air) * Math.pow(v - STILL, 0.62) * (0.37 * v * 100 * turbulence + 3.14);
    return Math.min(Math.max(percent, 0), 100) / 100;
  }
}
