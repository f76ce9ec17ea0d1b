package settle.sim.comfort;

/**
 * How warm people feel who sit in the middle of a room: ISO 7730:2005.
 *
 * @param air air temperature [°C]
 * @param radiant mean radiant temperature [°C]
 * @param operative operative temperature [°C]
 * @param vote predicted mean vote, PMV: -3 cold, 0 neither, +3 hot
 * @param dissatisfied predicted share of dissatisfied, PPD [-]
 */
public record Comfort(
    double air, double radiant, double operative, double vote, double dissatisfied) {

  /** Sitting and doing little, as of an evening [met]; common practice, no source. */
  public static final double USUAL_MET = 1.2;

  /** Indoor clothing in winter [clo]; common practice, no source. */
  public static final double USUAL_CLO = 1;

  /** Air of a room without draughts [m/s]; common practice, no source. */
  public static final double USUAL_SPEED = 0.1;

  /** Relative humidity of a heated room [-]; common practice, no source. */
  public static final double USUAL_HUMIDITY = 0.5;

  /**
   * Works it out.
   *
   * @param air air temperature [°C]
   * @param radiant mean radiant temperature [°C]
   * @param speed of the air [m/s]
   * @param humidity relative humidity [-]
   * @param met metabolic rate [met]
   * @param clo insulation of the clothing [clo]
   */
  public static Comfort of(
      double air, double radiant, double speed, double humidity, double met, double clo) {
    double vote = ThermalSensation.vote(air, radiant, speed, humidity, met, clo);
    return new Comfort(
        air, radiant, operative(air, radiant, speed), vote, ThermalSensation.dissatisfied(vote));
  }

  /** For people who sit in an ordinary living room. */
  public static Comfort usual(double air, double radiant) {
    return of(air, radiant, USUAL_SPEED, USUAL_HUMIDITY, USUAL_MET, USUAL_CLO);
  }

  /**
   * Operative temperature, ISO 7726:1998 Annex G (from memory): the air counts more the faster it
   * moves [°C].
   *
   * @param air air temperature [°C]
   * @param radiant mean radiant temperature [°C]
   * @param speed of the air, below 1 m/s [m/s]
   */
  public static double operative(double air, double radiant, double speed) {
    double weight = speed < 0.2 ? 0.5 : speed < 0.6 ? 0.6 : 0.7;
    return weight * air + (1 - weight) * radiant;
  }
}
