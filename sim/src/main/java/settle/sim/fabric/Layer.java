package settle.sim.fabric;

import settle.sim.units.Range;

/**
 * One plane, homogeneous layer of a building element, reduced to what one-dimensional conduction
 * needs: its resistance and the heat it holds per square metre.
 *
 * @param name what the layer is, as declared
 * @param resistance thermal resistance of the whole layer [m2 K/W], 0 for a lump of heat capacity
 * @param arealCapacity heat capacity per square metre [J/(m2 K)], 0 for an air layer
 * @param thickness of the layer [m], 0 where it is not known or of no matter
 */
public record Layer(String name, double resistance, double arealCapacity, double thickness) {

  /** Checks the ranges. */
  public Layer {
    Range.notNegative("thermal resistance of layer \"" + name + "\"", resistance, "m2 K/W");
    Range.notNegative("areal heat capacity of layer \"" + name + "\"", arealCapacity, "J/(m2 K)");
    Range.notNegative("thickness of layer \"" + name + "\"", thickness, "m");
  }

  /** A layer of which the thickness is not known. */
  public Layer(String name, double resistance, double arealCapacity) {
    this(name, resistance, arealCapacity, 0);
  }

  /** Conductance along the layer, lambda d [W/K]; 0 where its thickness is not known. */
  public double along() {
    return thickness > 0 ? thickness * thickness / resistance : 0;
  }

  /**
   * A solid layer: R = d / lambda (ISO 6946:2017, 6.7.1.1), capacity d rho c.
   *
   * @param name what the layer is
   * @param thickness d [m], above 0
   * @param conductivity lambda [W/(m K)], above 0
   * @param density rho [kg/m3], above 0
   * @param specificHeat c [J/(kg K)], above 0
   * @return the layer
   */
  public static Layer solid(
      String name, double thickness, double conductivity, double density, double specificHeat) {
    Range.positive("thickness of layer \"" + name + "\"", thickness, "m");
    Range.positive("conductivity of layer \"" + name + "\"", conductivity, "W/(m K)");
    Range.positive("density of layer \"" + name + "\"", density, "kg/m3");
    Range.positive("specific heat of layer \"" + name + "\"", specificHeat, "J/(kg K)");
    return new Layer(name, thickness / conductivity, thickness * density * specificHeat, thickness);
  }

  /**
   * An air layer or another layer that holds no heat worth counting.
   *
   * @param name what the layer is
   * @param resistance its thermal resistance [m2 K/W], above 0
   * @return the layer, without heat capacity
   */
  public static Layer cavity(String name, double resistance) {
    Range.positive("thermal resistance of layer \"" + name + "\"", resistance, "m2 K/W");
    return new Layer(name, resistance, 0);
  }

  /**
   * Part of this layer's thickness.
   *
   * @param share part of the thickness, above 0 and at most 1
   * @return a layer with that share of resistance and capacity
   */
  public Layer slice(double share) {
    Range.within("share of layer \"" + name + "\"", share, Double.MIN_NORMAL, 1, "1");
    return new Layer(name, resistance * share, arealCapacity * share, thickness * share);
  }
}
