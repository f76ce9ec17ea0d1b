package settle.sim.engine;

/**
 * Chooses the length of each step: short after an event, doubling as things calm down. The choice
 * depends on the model alone.
 *
 * <p>Lengths are the shortest step times powers of two, so that what a step needs is prepared once
 * per length; only the step that ends at an event which is no multiple of the shortest step has
 * another length.
 */
final class StepLadder {

  private final double[] lengths;
  private int level;

  StepLadder(double shortest, double longest) {
    int levels = 1;
    while (shortest * Math.pow(2, levels) <= longest * (1 + 1e-12)) {
      levels++;
    }
    lengths = new double[levels];
    for (int i = 0; i < levels; i++) {
      lengths[i] = shortest * Math.pow(2, i);
    }
  }

  double[] lengths() {
    return lengths;
  }

  /** Starts again from the shortest step. */
  void reset() {
    level = -1;
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
    while (highest > 0 && lengths[highest] > steady) {
      highest--;
    }
    while (highest >= 0 && lengths[highest] > untilEvent * (1 + 1e-9)) {
      highest--;
    }
    level = Math.max(highest, 0);
    return highest;
  }
}
