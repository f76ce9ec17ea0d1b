package settle.sim.hydraulics;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A circulator. Its head falls, stays or, less than in proportion, rises with the flow; switched
 * off it passes nothing, a check valve being part of it.
 */
public interface Pump {

  /**
   * Differential pressure it makes [Pa], >= 0.
   *
   * @param massFlow m [kg/s], >= 0
   * @param density of the water [kg/m³]
   */
  double head(double massFlow, double density);

  /**
   * Slope of its head, d head/d m [Pa s/kg].
   *
   * @param massFlow m [kg/s], >= 0
   * @param density of the water [kg/m³]
   */
  double slope(double massFlow, double density);

  /** Differential pressure that it is set to [Pa]; empty for one of fixed speed. */
  OptionalDouble setHead();

  /**
   * This pump set to another differential pressure.
   *
   * @param head [Pa], > 0
   * @throws IllegalStateException for one of fixed speed
   */
  Pump setTo(double head);

  /**
   * A pump that makes more or less at every flow.
   *
   * @param factor by which its head is multiplied [-], > 0
   */
  default Pump times(double factor) {
    return setTo(factor * setHead().orElseThrow());
  }

  /** This pump meant for another flow [m³/s]; one that is not set for a flow stays as it is. */
  default Pump setFor(double flow) {
    return this;
  }

  /** Most that it makes [Pa]. */
  default double mostHead() {
    return setHead().orElseThrow();
  }

  /**
   * Flow [m³/s] and head [Pa] of the points that it is described by: none where its head is the
   * same at every flow, one where it falls in proportion from there, several along a curve.
   */
  default List<double[]> points() {
    return List.of();
  }

  /** Hydraulic over electrical power [-], above 0, at most 1. */
  double efficiency();
}
