package settle.sim.emitter;

import java.util.List;

/**
 * Heated skirting: water runs along the foot of the walls in one path, as a plug.
 *
 * @param name what it is called
 * @param length heated length of the path [m]
 * @param ratedOutputPerMetre output at 75/65/20 [W/m]
 * @param exponent n [-], 1 to 1.8
 * @param waterPerMetre water held [m³/m]
 * @param metalCapacityPerMetre heat capacity of metal in good contact with the water [J/(m K)]
 * @param radiantFraction share of output given by radiation [-]
 * @param backFraction share of output passing into an outside wall where one is behind [-]
 * @param fixedTo walls it is fixed to, in the order of its run
 * @param faceHeight height of the face [m]
 * @param faceDepth depth from the wall [m]
 * @param lowerConnectionCentre height of the lower connection's centre above finished floor [m]
 * @param upperConnectionCentre height of the upper connection's centre above finished floor [m]
 */
public record PerimeterEmitter(
    String name,
    double length,
    double ratedOutputPerMetre,
    double exponent,
    double waterPerMetre,
    double metalCapacityPerMetre,
    double radiantFraction,
    double backFraction,
    List<Fixing> fixedTo,
    double faceHeight,
    double faceDepth,
    double lowerConnectionCentre,
    double upperConnectionCentre)
    implements Emitter {

  public PerimeterEmitter {
    fixedTo = List.copyOf(fixedTo);
    EmitterChecks.positive(name, "length [m]", length);
    EmitterChecks.positive(name, "rated output [W/m]", ratedOutputPerMetre);
    EmitterChecks.positive(name, "water content [m³/m]", waterPerMetre);
    EmitterChecks.law(name, exponent, radiantFraction, backFraction);
  }

  @Override
  public double ratedOutput() {
    return ratedOutputPerMetre * length;
  }

  @Override
  public double waterVolume() {
    return waterPerMetre * length;
  }

  @Override
  public double metalCapacity() {
    return metalCapacityPerMetre * length;
  }

  @Override
  public PerimeterEmitter scaled(double factor) {
    return ofLength(length * factor);
  }

  /** Another length of the same profile [m]. */
  public PerimeterEmitter ofLength(double other) {
    return new PerimeterEmitter(
        name,
        other,
        ratedOutputPerMetre,
        exponent,
        waterPerMetre,
        metalCapacityPerMetre,
        radiantFraction,
        backFraction,
        fixedTo,
        faceHeight,
        faceDepth,
        lowerConnectionCentre,
        upperConnectionCentre);
  }

  /** The same length of a profile of another output [W/m]. */
  public PerimeterEmitter withOutput(double perMetre) {
    return new PerimeterEmitter(
        name,
        length,
        perMetre,
        exponent,
        waterPerMetre,
        metalCapacityPerMetre,
        radiantFraction,
        backFraction,
        fixedTo,
        faceHeight,
        faceDepth,
        lowerConnectionCentre,
        upperConnectionCentre);
  }

  @Override
  public PerimeterEmitter withOutputTimes(double factor) {
    return withOutput(ratedOutputPerMetre * factor);
  }
}
