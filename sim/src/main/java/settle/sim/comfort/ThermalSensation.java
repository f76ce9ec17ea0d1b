package settle.sim.comfort;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Predicted mean vote and predicted percentage of dissatisfied: ISO 7730:2005, clauses 4 and 5,
 * without external work.
 *
 * <p>Holds for 46 to 232 W/m² of metabolism, 0 to 2 clo, air of 10 to 30 °C, radiant temperature of
 * 10 to 40 °C, air below 1 m/s, vapour below 2700 Pa and votes of -2 to 2.
 */
public final class ThermalSensation {

  /** One met [W/m²]. */
  private static final double MET = 58.15;

  /** One clo [m² K/W]. */
  private static final double CLO = 0.155;

  /** The standard's zero of the Celsius scale [K]. */
  private static final double KELVIN = 273;

  private static final double ACCURACY = 1e-9;

  private ThermalSensation() {}

  /**
   * Predicted mean vote, equation 1.
   *
   * @param ta air temperature [°C]
   * @param tr mean radiant temperature [°C]
   * @param speed of the air relative to the body [m/s]
   * @param humidity relative humidity [-]
   * @param met metabolic rate [met]
   * @param clo insulation of the clothing [clo]
   */
  public static double vote(
      double ta, double tr, double speed, double humidity, double met, double clo) {
    double m = met * MET;
    double pa = humidity * saturation(ta);
    double clothing = clothingTemperature(ta, tr, speed, m, clo * CLO);
    double dry = dryLoss(ta, tr, speed, clothing, areaFactor(clo * CLO));
    double load =
        m
            - 3.05e-3 * (5733 - 6.99 * m - pa)
            - 0.42 * (m - MET)
            - 1.7e-5 * m * (5867 - pa)
            - 0.0014 * m * (34 - ta)
            - dry;
    return (0.303 * Math.exp(-0.036 * m) + 0.028) * load;
  }

  /**
   * Predicted share of dissatisfied [-], equation 5; never below 0.05.
   *
   * @param vote predicted mean vote
   */
  public static double dissatisfied(double vote) {
    double square = vote * vote;
    return 1 - 0.95 * Math.exp(-0.03353 * square * square - 0.2179 * square);
  }

  /**
   * Root of equation 2, t_cl = 35.7 - 0.028 M - I_cl (dry loss at t_cl) [°C]. Its right side falls
   * as t_cl rises, so there is one, between the skin and what surrounds the body.
   */
  private static double clothingTemperature(
      double ta, double tr, double speed, double m, double insulation) {
    double skin = 35.7 - 0.028 * m;
    double factor = areaFactor(insulation);
    UnivariateFunction excess = t -> t - skin + insulation * dryLoss(ta, tr, speed, t, factor);
    double coolest = Math.min(skin, Math.min(ta, tr)) - 1;
    double warmest = Math.max(skin, Math.max(ta, tr)) + 1;
    return new BrentSolver(ACCURACY).solve(200, excess, coolest, warmest);
  }

  /** Radiation and convection from the clothing [W/m²], equation 3 for the coefficient. */
  private static double dryLoss(
      double ta, double tr, double speed, double clothing, double factor) {
    double hc =
        Math.max(2.38 * Math.sqrt(Math.sqrt(Math.abs(clothing - ta))), 12.1 * Math.sqrt(speed));
    return factor * (3.96e-8 * (fourth(clothing) - fourth(tr)) + hc * (clothing - ta));
  }

  /** Clothed over naked surface [-], equation 4. */
  private static double areaFactor(double insulation) {
    return insulation <= 0.078 ? 1 + 1.29 * insulation : 1.05 + 0.645 * insulation;
  }

  /** Saturation pressure as the standard's program has it, Annex D [Pa]. */
  private static double saturation(double ta) {
    return 1000 * Math.exp(16.6536 - 4030.183 / (ta + 235));
  }

  private static double fourth(double celsius) {
    double square = (celsius + KELVIN) * (celsius + KELVIN);
    return square * square;
  }
}
