package settle.sim.fabric;

import java.util.List;
import settle.sim.units.Range;

/**
 * Steady thermal transmittance of a building element, ISO 6946:2017: U = 1/R_T with surface
 * resistances by direction of heat flow, and the combined method for elements with inhomogeneous
 * layers (clause 6.7.2).
 */
public final class UValue {

  private UValue() {}

  /**
   * Total resistance of homogeneous layers, surfaces included (equation 4).
   *
   * @param layers from inside to outside
   * @param insideResistance R_si [m2 K/W]
   * @param outsideResistance R_se [m2 K/W]
   * @return R_T [m2 K/W]
   */
  public static double totalResistance(
      List<Layer> layers, double insideResistance, double outsideResistance) {
    double total = insideResistance + outsideResistance;
    for (Layer layer : layers) {
      total += layer.resistance();
    }
    return total;
  }

  /**
   * One way through an inhomogeneous element: a share of the area and the layers crossed there.
   *
   * @param areaShare share of the area, above 0 and at most 1
   * @param layers from inside to outside; every path of an element has as many
   */
  public record Path(double areaShare, List<Layer> layers) {

    /** Checks the range and keeps its own copy. */
    public Path {
      Range.within("area share of path", areaShare, Double.MIN_NORMAL, 1, "1");
      layers = List.copyOf(layers);
    }
  }

  /**
   * The two limits of the combined method.
   *
   * @param upper R'_T, no heat flow across the paths [m2 K/W]
   * @param lower R''_T, every layer's plane at one temperature [m2 K/W]
   */
  public record Limits(double upper, double lower) {

    /**
     * Total resistance, the mean of both limits (equation 5).
     *
     * @return R_T [m2 K/W]
     */
    public double totalResistance() {
      return (upper + lower) / 2;
    }

    /**
     * U-value.
     *
     * @return [W/(m2 K)]
     */
    public double uValue() {
      return 1 / totalResistance();
    }

    /**
     * Largest possible relative error of the mean. The method applies while upper/lower is at most
     * 1.5.
     *
     * @return e, a ratio
     */
    public double relativeError() {
      return (upper - lower) / (2 * totalResistance());
    }
  }

  /**
   * Combined method for an element of parallel paths.
   *
   * @param paths ways through the element; area shares add up to 1, all with the same number of
   *     layers
   * @param insideResistance R_si [m2 K/W]
   * @param outsideResistance R_se [m2 K/W]
   * @return upper and lower limit of the total resistance
   */
  public static Limits combined(
      List<Path> paths, double insideResistance, double outsideResistance) {
    int layerCount = paths.get(0).layers().size();
    double shares = 0;
    double upperConductance = 0;
    for (Path path : paths) {
      if (path.layers().size() != layerCount) {
        throw new IllegalArgumentException(
            "a path has "
                + path.layers().size()
                + " layers, must have "
                + layerCount
                + " as the first path");
      }
      shares += path.areaShare();
      upperConductance +=
          path.areaShare() / totalResistance(path.layers(), insideResistance, outsideResistance);
    }
    Range.within("sum of the area shares", shares, 1 - 1e-6, 1 + 1e-6, "1");
    double lower = insideResistance + outsideResistance;
    for (int layer = 0; layer < layerCount; layer++) {
      double conductance = 0;
      for (Path path : paths) {
        conductance += path.areaShare() / path.layers().get(layer).resistance();
      }
      lower += 1 / conductance;
    }
    return new Limits(1 / upperConductance, lower);
  }
}
