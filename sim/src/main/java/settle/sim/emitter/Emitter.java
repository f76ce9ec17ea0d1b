package settle.sim.emitter;

import java.util.List;

/**
 * A heat emitter on the water side. All are rated as EN 442 rates a radiator: output at a mean
 * excess of 50 K (75/65/20) and an exponent.
 */
public sealed interface Emitter permits PerimeterEmitter, PanelEmitter {

  /** What it is called. */
  String name();

  /** Output at 75/65/20 [W]. */
  double ratedOutput();

  /** Exponent n of the characteristic equation [-]. */
  double exponent();

  /** Share of the output given by radiation [-]. */
  double radiantFraction();

  /** Share of the output that passes into an outside wall where one is behind [-]. */
  double backFraction();

  /** Walls it is fixed to, in the order of its run; empty if that is not known. */
  List<Fixing> fixedTo();

  /** Share of the whole output that passes into outside walls [-]. */
  default double backLoss() {
    double outside = 0;
    for (Fixing fixing : fixedTo()) {
      outside += fixing.outside() ? fixing.share() : 0;
    }
    return backFraction() * outside;
  }

  /** Water held [m³]. */
  double waterVolume();

  /** Heat capacity of the metal [J/K]. */
  double metalCapacity();

  /**
   * The same kind of emitter of another size.
   *
   * @param factor by which length, or a radiator's whole size, is multiplied [-], > 0
   */
  Emitter scaled(double factor);

  /**
   * The same emitter, size and water, that gives more or less than it is rated.
   *
   * @param factor by which its output is multiplied [-], > 0
   */
  Emitter withOutputTimes(double factor);
}
