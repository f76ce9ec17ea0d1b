package settle.sim.hydraulics;

import settle.sim.units.Range;

/**
 * A round metal tube and what a metre of it holds.
 *
 * @param outsideDiameter [m], above twice the wall
 * @param wall wall thickness [m], above 0
 * @param density density of the metal [kg/m3]
 * @param specificHeat specific heat of the metal [J/(kg K)]
 */
public record Tube(double outsideDiameter, double wall, double density, double specificHeat) {

  /** Checks the ranges. */
  public Tube {
    Range.positive("wall of tube", wall, "m");
    Range.positive("bore of tube", outsideDiameter - 2 * wall, "m");
    Range.positive("density of tube", density, "kg/m3");
    Range.positive("specific heat of tube", specificHeat, "J/(kg K)");
  }

  /**
   * A copper tube; 8900 kg/m3 and 380 J/(kg K) by EN ISO 10456:2007, Table 3.
   *
   * @param outsideDiameter [m]
   * @param wall wall thickness [m]
   * @return the tube
   */
  public static Tube copper(double outsideDiameter, double wall) {
    return new Tube(outsideDiameter, wall, 8900, 380);
  }

  /**
   * Inside diameter.
   *
   * @return [m]
   */
  public double bore() {
    return outsideDiameter - 2 * wall;
  }

  /**
   * Water held per metre.
   *
   * @return [m3/m], the same number as the free area [m2]
   */
  public double waterPerMetre() {
    return Math.PI * bore() * bore() / 4;
  }

  /**
   * Metal per metre.
   *
   * @return [kg/m]
   */
  public double metalPerMetre() {
    return density * Math.PI * wall * (outsideDiameter - wall);
  }

  /**
   * Heat capacity per metre of water and metal in good contact.
   *
   * @param waterDensity [kg/m3]
   * @param waterSpecificHeat [J/(kg K)]
   * @return C' [J/(m K)]
   */
  public double heatCapacityPerMetre(double waterDensity, double waterSpecificHeat) {
    return waterPerMetre() * waterDensity * waterSpecificHeat + metalPerMetre() * specificHeat;
  }
}
