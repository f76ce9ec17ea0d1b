package settle.sim.emitter;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A panel radiator, column radiator or towel rail: a chain of well-mixed cells.
 *
 * @param name what it is called
 * @param ownLength its length [m]; not a number for one that is not sold by length
 * @param ratedOutput output at 75/65/20 [W]
 * @param exponent n [-], 1 to 1.8
 * @param waterVolume water held [m³]
 * @param metalCapacity heat capacity of the metal [J/K]
 * @param radiantFraction share of output given by radiation [-]
 * @param backFraction share of output passing into an outside wall where one is behind [-]
 * @param fixedTo walls it is fixed to, in the order of its run
 * @param cells number of mixed cells along the water's way, >= 1; 5 for a panel
 */
public record PanelEmitter(
    String name,
    double ownLength,
    double ratedOutput,
    double exponent,
    double waterVolume,
    double metalCapacity,
    double radiantFraction,
    double backFraction,
    List<Fixing> fixedTo,
    int cells)
    implements Emitter {

  public PanelEmitter {
    if (!Double.isNaN(ownLength)) {
      EmitterChecks.positive(name, "length [m]", ownLength);
    }
    fixedTo = List.copyOf(fixedTo);
    EmitterChecks.positive(name, "rated output [W]", ratedOutput);
    EmitterChecks.positive(name, "water content [m³]", waterVolume);
    EmitterChecks.law(name, exponent, radiantFraction, backFraction);
    if (cells < 1) {
      throw new IllegalArgumentException(
          "emitter '" + name + "': cells " + cells + " must be >= 1");
    }
  }

  /** One of a single size. */
  public PanelEmitter(
      String name,
      double ratedOutput,
      double exponent,
      double waterVolume,
      double metalCapacity,
      double radiantFraction,
      double backFraction,
      List<Fixing> fixedTo,
      int cells) {
    this(
        name,
        Double.NaN,
        ratedOutput,
        exponent,
        waterVolume,
        metalCapacity,
        radiantFraction,
        backFraction,
        fixedTo,
        cells);
  }

  @Override
  public String noun() {
    return Double.isNaN(ownLength) ? "towel rail" : "radiator";
  }

  @Override
  public String kind() {
    return "radiator";
  }

  @Override
  public Optional<Run> run() {
    return Optional.empty();
  }

  @Override
  public OptionalDouble length() {
    return Double.isNaN(ownLength) ? OptionalDouble.empty() : OptionalDouble.of(ownLength);
  }

  @Override
  public PanelEmitter ofLength(double other) {
    if (Double.isNaN(ownLength)) {
      throw new IllegalStateException("emitter '" + name + "' is not sold by length");
    }
    return sized(other, other / ownLength);
  }

  @Override
  public EmitterStepper stepper(double heatCapacity, double startTemperature, double parcels) {
    return new MixedChain(
        cells,
        heatCapacity,
        EmissionLaw.chainCoefficient(ratedOutput, exponent, cells),
        exponent,
        startTemperature);
  }

  @Override
  public int states() {
    return cells;
  }

  @Override
  public PanelEmitter scaled(double factor) {
    return sized(ownLength * factor, factor);
  }

  private PanelEmitter sized(double other, double factor) {
    return new PanelEmitter(
        name,
        other,
        ratedOutput * factor,
        exponent,
        waterVolume * factor,
        metalCapacity * factor,
        radiantFraction,
        backFraction,
        fixedTo,
        cells);
  }

  @Override
  public PanelEmitter withOutputTimes(double factor) {
    return new PanelEmitter(
        name,
        ownLength,
        ratedOutput * factor,
        exponent,
        waterVolume,
        metalCapacity,
        radiantFraction,
        backFraction,
        fixedTo,
        cells);
  }
}
