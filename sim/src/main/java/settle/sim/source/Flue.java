package settle.sim.source;

import settle.sim.units.Range;

/**
 * The flue of a boiler on natural gas: its gas leaves some kelvin above the water that enters,
 * saturated where that is below its dew point. How much of its vapour condenses follows from that
 * temperature and the dew point; how much heat goes up with it, from the excess air too.
 *
 * @param excessAir e as a ratio, 0 or more [-]
 * @param dewPoint temperature below which its vapour condenses [°C]
 * @param approach how far above the water that enters it leaves [K]
 * @param caseLoss share of the fuel's gross heat that the case loses while firing [-]
 */
public record Flue(double excessAir, double dewPoint, double approach, double caseLoss) {

  /** Excess air of domestic burners [-]; common practice, no source. */
  public static final double USUAL_EXCESS_AIR = 0.25;

  /**
   * How far above the return the flue of a condensing boiler is [K]; common practice, no source.
   */
  public static final double USUAL_APPROACH = 5;

  /** Loss of its case [-]; common practice, no source. */
  public static final double USUAL_CASE_LOSS = 0.01;

  /**
   * Water in the air it burns [mol/mol]: 8 °C and three quarters of saturation, a heating season of
   * the temperate west of Europe; common practice, no source.
   */
  public static final double AIR_HUMIDITY = 0.008;

  /** Flue temperatures between which the laws hold [°C]. */
  private static final double COLDEST = 0;

  private static final double HOTTEST = 150;

  public Flue {
    Range.within("excess air", excessAir, 0, 5, "1");
    Range.within("dew point of the flue", dewPoint, 0, 95, "°C");
    Range.within("approach of the flue", approach, 0, 200, "K");
    Range.within("loss of the case", caseLoss, 0, 0.5, "1");
  }

  /** That of a condensing boiler as most are, its dew point given [°C]. */
  public static Flue usual(double dewPoint) {
    return new Flue(USUAL_EXCESS_AIR, dewPoint, USUAL_APPROACH, USUAL_CASE_LOSS);
  }

  /** Dew point of methane's flue gas with so much excess air, humid as air mostly is [°C]. */
  public static double dewPoint(double excessAir) {
    return FlueGas.dewPoint(excessAir, AIR_HUMIDITY);
  }

  /**
   * Share of its vapour that condenses [-].
   *
   * @param entering temperature of the water that enters the boiler [°C]
   */
  public double condensed(double entering) {
    return FlueGas.condensed(leaves(entering), dewPoint);
  }

  /**
   * Gross efficiency of the boiler [-].
   *
   * @param entering temperature of the water that enters the boiler [°C]
   */
  public double efficiency(double entering) {
    double flue = leaves(entering);
    double condensed = FlueGas.condensed(flue, dewPoint);
    return FlueGas.grossEfficiency(flue, excessAir, AIR_HUMIDITY, condensed) - caseLoss;
  }

  private double leaves(double entering) {
    return Math.min(Math.max(entering + approach, COLDEST), HOTTEST);
  }
}
