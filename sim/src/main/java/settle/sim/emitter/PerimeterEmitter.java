package settle.sim.emitter;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.hydraulics.Pipe;
import settle.sim.units.Range;
import settle.sim.water.Water;

/**
 * Heated skirting: water runs along the foot of the walls, one way or out and back.
 *
 * @param name what it is called
 * @param runLength heated length along the walls, of both runs where there are two [m]
 * @param ratedOutputPerMetre output at 75/65/20 [W/m]
 * @param exponent n [-], 1 to 1.8
 * @param waterPerMetre water held [m³/m]
 * @param metalCapacityPerMetre heat capacity of metal in good contact with the water [J/(m K)]
 * @param radiantFraction share of output given by radiation [-]
 * @param backFraction share of output passing into an outside wall where one is behind [-]
 * @param fixedTo walls it is fixed to, in the order of its run
 * @param tubes what leads the water
 * @param second the shorter of two runs, the other way from one connection
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
    Second second,
    Face face)
    implements Emitter {

  /**
   * What one sees of heated skirting.
   *
   * @param height of the face [m]
   * @param depth from the wall [m]
   * @param lowerConnection height of the lower connection's centre above finished floor [m]
   * @param upperConnection height of the upper connection's centre above finished floor [m]
   * @param stockLength by which it is delivered [m]
   */
  public record Face(
      double height,
      double depth,
      double lowerConnection,
      double upperConnection,
      double stockLength) {

    /** Length by which profiles are delivered [m]; common practice, no source. */
    public static final double USUAL_STOCK = 3;

    public Face {
      Range.positive("stock length", stockLength, "m");
    }

    /** One that is delivered in usual lengths. */
    public Face(double height, double depth, double lowerConnection, double upperConnection) {
      this(height, depth, lowerConnection, upperConnection, USUAL_STOCK);
    }
  }

  /**
   * The shorter of two runs side by side, left and right of one connection behind one valve.
   *
   * @param length [m]; 0 for none
   * @param fittings sum of the loss coefficients (zeta) of what joins each of both runs, its far
   *     end counted [-]
   */
  public record Second(double length, double fittings) {

    /** All is one run. */
    public static final Second NONE = new Second(0, 0);

    private boolean exists() {
      return length > 0;
    }
  }

  public PerimeterEmitter {
    fixedTo = List.copyOf(fixedTo);
    EmitterChecks.positive(name, "length [m]", runLength);
    EmitterChecks.positive(name, "rated output [W/m]", ratedOutputPerMetre);
    EmitterChecks.positive(name, "water content [m³/m]", waterPerMetre);
    EmitterChecks.law(name, exponent, radiantFraction, backFraction);
    if (second.exists() && !(tubes.bore() > 0 && second.length <= runLength / 2)) {
      throw new IllegalArgumentException(
          "emitter '" + name + "': two runs need a bore, and the second must be the shorter");
    }
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

  /** All one run. */
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
      Tubes tubes,
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
        tubes,
        Second.NONE,
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
    return Optional.of(
        new Run(
            runLength,
            ratedOutputPerMetre,
            face.height,
            tubes.way().legs(),
            runLength - second.length));
  }

  @Override
  public Optional<Joints> joints() {
    return Optional.of(
        new Joints(
            face.depth,
            face.lowerConnection,
            face.upperConnection,
            face.stockLength,
            second.length));
  }

  @Override
  public Optional<Pipe> way() {
    return second.exists()
        ? Optional.of(tubes.bothWays(runLength - second.length, second.length, second.fittings))
        : tubes.pipe(runLength);
  }

  @Override
  public OptionalDouble length() {
    return OptionalDouble.of(runLength);
  }

  @Override
  public double shareOfShorter(double massFlow) {
    return second.exists() ? 1 - split().first(massFlow) : 0;
  }

  private FlowSplit split() {
    return new FlowSplit(
        tubes.joined(runLength - second.length, second.fittings),
        tubes.joined(second.length, second.fittings));
  }

  @Override
  public EmitterStepper stepper(double heatCapacity, double startTemperature, double parcels) {
    if (second.exists()) {
      PerimeterEmitter one = run(runLength - second.length);
      PerimeterEmitter other = run(second.length);
      double perMetre = heatCapacity / runLength;
      return new TwoRuns(
          one.stepper(perMetre * one.runLength, startTemperature, parcels),
          other.stepper(perMetre * other.runLength, startTemperature, parcels),
          split(),
          Water.SPECIFIC_HEAT);
    }
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
    return with(other, ratedOutputPerMetre, other / runLength * second.length);
  }

  @Override
  public PerimeterEmitter withOutputPerMetre(double perMetre) {
    return with(runLength, perMetre, second.length);
  }

  @Override
  public PerimeterEmitter withOutputTimes(double factor) {
    return withOutputPerMetre(ratedOutputPerMetre * factor);
  }

  /** Air gathers from the far end on; there the water hardly warms the metal any more. */
  @Override
  public PerimeterEmitter withAir(double share) {
    return with(runLength, ratedOutputPerMetre, second.length, tubes.withAir(share));
  }

  /** One of two runs by itself. */
  private PerimeterEmitter run(double length) {
    return with(length, ratedOutputPerMetre, 0);
  }

  private PerimeterEmitter with(double length, double perMetre, double shorter) {
    return with(length, perMetre, shorter, tubes);
  }

  private PerimeterEmitter with(double length, double perMetre, double shorter, Tubes leading) {
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
        leading,
        new Second(shorter, second.fittings),
        face);
  }
}
