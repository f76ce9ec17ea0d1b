package settle.sim.hydraulics;

import settle.sim.units.Range;

/**
 * Heat that a metre of pipe loses to still air per kelvin between water and air: conduction through
 * wall and insulation, each a hollow cylinder, and a surface coefficient outside; EN ISO
 * 12241:2008, 4.1 (linear thermal transmittance), from memory. The water's own film is neglected.
 *
 * <pre>
 *   Psi = pi / ( ln(D_o/D_i)/(2 lambda_wall) + ln(D_e/D_o)/(2 lambda_ins) + 1/(h D_e) )
 * </pre>
 */
public final class PipeLoss {

  /**
   * Surface coefficient of a horizontal pipe in a room, convection and radiation [W/(m² K)]; the
   * order that EN ISO 12241 gives for a painted or plastic surface, from memory.
   */
  public static final double INDOOR_SURFACE = 10;

  /**
   * Conductivity of common pipe insulation [W/(m K)]: flexible foam or mineral wool, common
   * practice, no source.
   */
  public static final double INSULATION = 0.035;

  private PipeLoss() {}

  /**
   * Psi [W/(m K)].
   *
   * @param bore D_i [m], > 0
   * @param outsideDiameter D_o [m], above the bore
   * @param wallConductivity [W/(m K)], > 0
   * @param insulation thickness of the insulation [m]; 0 for a bare pipe
   * @param insulationConductivity [W/(m K)], > 0
   * @param surfaceCoefficient h [W/(m² K)], > 0
   */
  public static double perMetre(
      double bore,
      double outsideDiameter,
      double wallConductivity,
      double insulation,
      double insulationConductivity,
      double surfaceCoefficient) {
    Range.positive("wall of pipe", outsideDiameter - bore, "m");
    Range.notNegative("insulation of pipe", insulation, "m");
    double outermost = outsideDiameter + 2 * insulation;
    double wall = Math.log(outsideDiameter / bore) / (2 * wallConductivity);
    double cover = Math.log(outermost / outsideDiameter) / (2 * insulationConductivity);
    double surface = 1 / (surfaceCoefficient * outermost);
    return Math.PI / (wall + cover + surface);
  }
}
