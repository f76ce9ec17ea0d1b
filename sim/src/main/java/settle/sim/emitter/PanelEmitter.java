package settle.sim.emitter;

import java.util.List;

/**
 * A panel radiator, column radiator or towel rail: a chain of well-mixed cells.
 *
 * @param name what it is called
 * @param length its length [m]; not a number for one that is not sold by length
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
    double length,
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
    if (!Double.isNaN(length)) {
      EmitterChecks.positive(name, "length [m]", length);
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

  /** The same kind of radiator in another length [m]; only for one that is sold by length. */
  public PanelEmitter ofLength(double other) {
    return sized(other, other / length);
  }

  @Override
  public PanelEmitter scaled(double factor) {
    return sized(length * factor, factor);
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
        length,
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
