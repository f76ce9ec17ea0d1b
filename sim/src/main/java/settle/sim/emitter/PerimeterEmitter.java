package settle.sim.emitter;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.hydraulics.Pipe;

/**
 * Heated skirting: water runs along the foot of the walls, one way or out and back.
 *
 * @param name what it is called
 * @param runLength heated length of the path [m]
 * @param ratedOutputPerMetre output at 75/65/20 [W/m]
 * @param exponent n [-], 1 to 1.8
 * @param waterPerMetre water held [m³/m]
 * @param metalCapacityPerMetre heat capacity of metal in good contact with the water [J/(m K)]
 * @param radiantFraction share of output given by radiation [-]
 * @param backFraction share of output passing into an outside wall where one is behind [-]
 * @param fixedTo walls it is fixed to, in the order of its run
 * @param tubes what leads the water
 * @param face what one sees of it
 */
public record PerimeterEmitter(
    String name,
    double runLength,
    double ratedOutputPerMetre,
    double exponent,
    double waterPerMetre,
    double metalCapacityPerMetre,
    double radiantFraction,
    double backFraction,
    List<Fixing> fixedTo,
    Tubes tubes,
    Face face)
    implements Emitter {

  /**
   * What one sees of heated skirting.
   *
   * @param height of the face [m]
   * @param depth from the wall [m]
   * @param lowerConnection height of the lower connection's centre above finished floor [m]
   * @param upperConnection height of the upper connection's centre above finished floor [m]
   */
  public record Face(double height, double depth, double lowerConnection, double upperConnection) {}

  public PerimeterEmitter {
    fixedTo = List.copyOf(fixedTo);
    EmitterChecks.positive(name, "length [m]", runLength);
    EmitterChecks.positive(name, "rated output [W/m]", ratedOutputPerMetre);
    EmitterChecks.positive(name, "water content [m³/m]", waterPerMetre);
    EmitterChecks.law(name, exponent, radiantFraction, backFraction);
  }

  /** One way, water and metal of one temperature. */
  public PerimeterEmitter(
      String name,
      double runLength,
      double ratedOutputPerMetre,
      double exponent,
      double waterPerMetre,
      double metalCapacityPerMetre,
      double radiantFraction,
      double backFraction,
      List<Fixing> fixedTo,
      Face face) {
    this(
        name,
        runLength,
        ratedOutputPerMetre,
        exponent,
        waterPerMetre,
        metalCapacityPerMetre,
        radiantFraction,
        backFraction,
        fixedTo,
        Tubes.PLAIN,
        face);
  }

  @Override
  public double ratedOutput() {
    return ratedOutputPerMetre * runLength;
  }

  @Override
  public double waterVolume() {
    return waterPerMetre * runLength;
  }

  @Override
  public double metalCapacity() {
    return metalCapacityPerMetre * runLength;
  }

  @Override
  public PerimeterEmitter scaled(double factor) {
    return ofLength(runLength * factor);
  }

  @Override
  public String noun() {
    return "skirting";
  }

  @Override
  public String kind() {
    return "perimeter";
  }

  @Override
  public Optional<Run> run() {
    return Optional.of(new Run(runLength, ratedOutputPerMetre, face.height, tubes.way().legs()));
  }

  @Override
  public Optional<Pipe> way() {
    return tubes.pipe(runLength);
  }

  @Override
  public OptionalDouble length() {
    return OptionalDouble.of(runLength);
  }

  @Override
  public EmitterStepper stepper(double heatCapacity, double startTemperature, double parcels) {
    if (!tubes.plain()) {
      return tubes.stepper(
          runLength,
          heatCapacity / runLength - metalCapacityPerMetre,
          metalCapacityPerMetre,
          exponent,
          ratedOutput(),
          startTemperature,
          parcels);
    }
    return new PlugFlow(
        runLength,
        heatCapacity / runLength,
        EmissionLaw.distributedCoefficient(ratedOutput(), exponent),
        exponent,
        startTemperature,
        parcels);
  }

  @Override
  public int states() {
    return 1;
  }

  @Override
  public PerimeterEmitter ofLength(double other) {
    return with(other, ratedOutputPerMetre);
  }

  @Override
  public PerimeterEmitter withOutputPerMetre(double perMetre) {
    return with(runLength, perMetre);
  }

  @Override
  public PerimeterEmitter withOutputTimes(double factor) {
    return withOutputPerMetre(ratedOutputPerMetre * factor);
  }

  private PerimeterEmitter with(double length, double perMetre) {
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
        tubes,
        face);
  }
}
