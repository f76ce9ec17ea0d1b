package settle.sim.bench;

/**
 * A valve driven shut and open again: two sweeps that differ by its play. Terms of EN 215, from
 * memory.
 *
 * @param closing while the temperature rises
 * @param opening while it falls again
 */
public record HysteresisLoop(Sweep closing, Sweep opening) {

  /** Below the temperature point by which the nominal flow is read [K]. */
  private static final double NOMINAL = 2;

  /** Whether flow follows temperature over a range, so that there is a temperature point. */
  public boolean throttles() {
    return !Double.isNaN(temperaturePoint());
  }

  /** Whether temperature moves it at all. */
  public boolean moves() {
    return !Double.isNaN(closingTemperature());
  }

  /**
   * S: where the straight part of the opening curve, extended, meets zero flow [°C]; not a number
   * for a valve that only opens and shuts.
   */
  public double temperaturePoint() {
    return opening.extendedToZero();
  }

  /** Flow at S - 2 K on the opening curve [kg/s]. */
  public double nominalFlow() {
    return opening.flowAt(temperaturePoint() - NOMINAL);
  }

  /** Flow at S - 1 K on the opening curve [kg/s]. */
  public double flowOneKelvinBelow() {
    return opening.flowAt(temperaturePoint() - 1);
  }

  /** Flow at which the curves are compared: nominal, or half of all where there is none [kg/s]. */
  private double compared() {
    return throttles() ? nominalFlow() : opening.most() / 2;
  }

  /** How far apart closing and opening curve are at nominal flow [K]. */
  public double hysteresis() {
    return closing.temperatureAt(compared()) - opening.temperatureAt(compared());
  }

  /** Temperature at which it is shut when warming [°C]. */
  public double closingTemperature() {
    return closing.shutFrom();
  }

  /** Temperature at which it leaves its seat when cooling [°C]. */
  public double openingTemperature() {
    return opening.shutFrom();
  }

  /** From nominal flow to shut, warming [K]. */
  public double proportionalBand() {
    return closingTemperature() - closing.temperatureAt(nominalFlow());
  }

  /** From fully open to shut, warming [K]. */
  public double throttlingRange() {
    return closingTemperature() - closing.openUpTo();
  }

  /**
   * How much lower another loop of the same valve lies [K]: its temperature point, or, without one,
   * the temperature at which it opens half way.
   */
  double above(HysteresisLoop other) {
    return throttles()
        ? temperaturePoint() - other.temperaturePoint()
        : opening.temperatureAt(opening.most() / 2)
            - other.opening.temperatureAt(other.opening.most() / 2);
  }
}
