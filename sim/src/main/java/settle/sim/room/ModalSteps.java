package settle.sim.room;

import java.util.Arrays;

/** What steps need, prepared once per length for those lengths that are used again and again. */
final class ModalSteps {

  private HouseFabric fabric;
  private double[] conductance;
  private double[] lengths = {};
  private ModalStep[] prepared = {};
  private ModalStep anyLength;

  ModalSteps(HouseFabric fabric) {
    goOnThrough(fabric);
    linkAs(fabric.conductance);
  }

  /** Prepares for another fabric of the same house. */
  void goOnThrough(HouseFabric other) {
    fabric = other;
    anyLength = new ModalStep(other);
    Arrays.fill(prepared, null);
  }

  /** Prepares for other conductances of the links [W/K]. */
  void linkAs(double[] other) {
    conductance = other;
    Arrays.fill(prepared, null);
  }

  /** Says which lengths will be used again and again [s]; each is prepared when first used. */
  void prepare(double[] again) {
    lengths = again.clone();
    prepared = new ModalStep[again.length];
  }

  /** A step of one of these lengths. */
  ModalStep prepared(int index) {
    if (prepared[index] == null) {
      prepared[index] = new ModalStep(fabric).over(conductance, lengths[index]);
    }
    return prepared[index];
  }

  /** A step of any length [s]. */
  ModalStep of(double length) {
    return anyLength.over(conductance, length);
  }
}
