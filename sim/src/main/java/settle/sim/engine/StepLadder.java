package settle.sim.engine;

/**
 * Chooses the length of each step: short after an event, doubling as things calm down. The choice
 * depends on the model alone.
 *
 * <p>Lengths are the shortest step times powers of two, so that what a step needs is prepared once
 * per length; only the step that ends at an event which is no multiple of the shortest step has
 * another length. Below the shortest step are lengths for those steps only that came to no
 * agreement.
 */
final class StepLadder {

  /** Halvings of the shortest step that may be tried for the sake of agreement. */
  private static final int HALVINGS = 7;

  private final double[] lengths;
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
    reset();
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
