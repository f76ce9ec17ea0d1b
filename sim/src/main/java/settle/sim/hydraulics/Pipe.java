package settle.sim.hydraulics;

import settle.sim.units.Range;

/**
 * Flow and return pipe together, of one size.
 *
 * @param name what it is called
 * @param bore inside diameter [m]
 * @param roughness absolute roughness [m]
 * @param length flow and return together [m]; 0 for none
 * @param fittings sum of the loss coefficients zeta of its fittings [-]
 * @param heatCapacity of water and metal [J/(m K)]; 0 where delay and loss are neglected
 * @param lossCoefficient heat lost to its surroundings [W/(m K)]; 0 if its heat capacity is
 */
public record Pipe(
    String name,
    double bore,
    double roughness,
    double length,
    double fittings,
    double heatCapacity,
    double lossCoefficient) {

  public Pipe {
    String of = " of pipe '" + name + "'";
    Range.positive("bore" + of, bore, "m");
    Range.notNegative("roughness" + of, roughness, "m");
    Range.notNegative("length" + of, length, "m");
    Range.notNegative("fittings" + of, fittings, "1");
    Range.notNegative("heat capacity" + of, heatCapacity, "J/(m K)");
    Range.notNegative("loss coefficient" + of, lossCoefficient, "W/(m K)");
    if (lossCoefficient > 0 && heatCapacity == 0) {
      throw new IllegalArgumentException(
          "heat capacity" + of + " must be above 0, since it loses heat");
    }
  }

  /** A pipe whose delay and loss are neglected. */
  public static Pipe withoutDelay(
      String name, double bore, double roughness, double length, double fittings) {
    return new Pipe(name, bore, roughness, length, fittings, 0, 0);
  }

  /** Whether water takes time to pass it. */
  public boolean delays() {
    return heatCapacity > 0 && length > 0;
  }

  /** Free cross-section [m²]. */
  public double area() {
    return Math.PI * bore * bore / 4;
  }

  /** Water held [m³]. */
  public double waterVolume() {
    return area() * length;
  }
}
