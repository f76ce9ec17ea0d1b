package settle.sim.engine;

import java.util.Arrays;

/**
 * Chooses the length of each step: short after an event, doubling as things calm down. The choice
 * depends on the model alone.
 *
 * <p>Lengths are the shortest step times powers of two, so that what a step needs is prepared once
 * per length; only the step that ends at an event which is no multiple of the shortest step has
 * another length, and so has one that ends where something switches, in whole parts of the
 * shortest. Below the shortest step are lengths for those steps only that came to no agreement.
 */
final class StepLadder {

  /** Halvings of the shortest step that may be tried for the sake of agreement. */
  private static final int HALVINGS = 7;

  /** Parts of the shortest step that a step may last that ends where something switches [-]. */
  private static final int PARTS = 64;

  private final double[] lengths;
  private final double part;
  private int level;

  StepLadder(double shortest, double longest) {
    int levels = 1;
    while (shortest * Math.pow(2, levels) <= longest * (1 + 1e-12)) {
      levels++;
    }
    lengths = new double[HALVINGS + levels];
    for (int i = 0; i < lengths.length; i++) {
      lengths[i] = shortest * Math.pow(2, i - HALVINGS);
    }
    part = shortest / PARTS;
    reset();
  }

  /** Every length that is used again and again [s]: those of {@link #lengths}, then the parts. */
  double[] prepared() {
    double[] all = Arrays.copyOf(lengths, lengths.length + PARTS);
    for (int k = 0; k < PARTS; k++) {
      all[lengths.length + k] = part * (k + 1);
    }
    return all;
  }

  /** A length that is parts of the shortest step, up to as long as that and not shorter [s]. */
  double inParts(double length) {
    return part * Math.min(Math.ceil(length / part - 1e-6), PARTS);
  }

  /** Position in {@link #prepared} of a length that came from {@link #inParts}; -1 of others. */
  int positionOf(double length) {
    int k = (int) Math.round(length / part);
    return k >= 1 && k <= PARTS && length == part * k ? lengths.length + k - 1 : -1;
  }

  double[] lengths() {
    return lengths;
  }

  /** The shortest step but for those that came to no agreement [s]. */
  double shortest() {
    return lengths[HALVINGS];
  }

  /** Starts again from the shortest step. */
  void reset() {
    level = HALVINGS - 1;
  }

  /**
   * Chooses the next step.
   *
   * @param steady for how long nothing will change much [s]
   * @param untilEvent time to the next event [s], > 0
   * @return index of its length, or -1 if the step must end at the event with a length of its own
   */
  int next(double steady, double untilEvent) {
    int highest = Math.min(level + 1, lengths.length - 1);
    while (highest > HALVINGS && lengths[highest] > steady) {
      highest--;
    }
    int fitting = highest;
    while (fitting >= 0 && lengths[fitting] > untilEvent * (1 + 1e-9)) {
      fitting--;
    }
    level = Math.max(fitting, Math.min(highest, HALVINGS));
    return fitting < HALVINGS && fitting < highest ? -1 : fitting;
  }

  /**
   * Chooses a shorter step instead of one that may not stay.
   *
   * @param longest it may be [s]
   * @return index of its length, or -1 if there is none as short
   */
  int shorter(double longest) {
    int shorter = lengths.length - 1;
    while (shorter >= 0 && lengths[shorter] > longest * (1 + 1e-9)) {
      shorter--;
    }
    level = Math.max(shorter, 0);
    return shorter;
  }
}
