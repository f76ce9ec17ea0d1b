package settle.sim.engine;

import java.util.stream.DoubleStream;

/**
 * Chooses the length of each step: short after an event, up to twice the last one as things calm
 * down. The choice depends on the model alone.
 *
 * <p>Lengths are the shortest step times powers of two and, from twice the shortest on, halfway
 * between them too, so that what a step needs is prepared once per length; only the step that ends
 * at an event that none of them meets, or where something switches, has another. Below the shortest
 * step are lengths for those steps only that came to no agreement.
 */
final class StepLadder {

  /** Halvings of the shortest step that may be tried for the sake of agreement. */
  private static final int HALVINGS = 7;

  private final double[] lengths;

  /** Position of the longest that the next step may be. */
  private int level;

  StepLadder(double shortest, double longest) {
    DoubleStream halved =
        DoubleStream.iterate(shortest / Math.pow(2, HALVINGS), h -> h < shortest, h -> 2 * h);
    DoubleStream doubled =
        DoubleStream.iterate(shortest, h -> h <= longest * (1 + 1e-12), h -> 2 * h)
            .flatMap(h -> h > shortest ? DoubleStream.of(h, 1.5 * h) : DoubleStream.of(h))
            .filter(h -> h <= longest * (1 + 1e-12));
    lengths = DoubleStream.concat(halved, doubled).toArray();
    reset();
  }

  /** Every length that is used again and again [s], ascending. */
  double[] lengths() {
    return lengths;
  }

  /** The shortest step but for those that came to no agreement [s]. */
  double shortest() {
    return lengths[HALVINGS];
  }

  /** Starts again from the shortest step. */
  void reset() {
    level = HALVINGS;
  }

  /**
   * Chooses the next step.
   *
   * @param steady for how long nothing will change much [s]
   * @param untilEvent time to the next event [s], > 0
   * @return index of its length, or -1 if the step must end at the event with a length of its own
   */
  int next(double steady, double untilEvent) {
    int calm = level;
    while (calm > HALVINGS && lengths[calm] > steady) {
      calm--;
    }
    int fitting = Math.min(calm, longestWithin(untilEvent));
    takes(Math.max(fitting, Math.min(calm, HALVINGS)));
    return fitting < HALVINGS && fitting < calm ? -1 : fitting;
  }

  /**
   * Chooses a shorter step instead of one that may not stay.
   *
   * @param longest it may be [s]
   * @return index of its length, or -1 if there is none as short
   */
  int shorter(double longest) {
    int shorter = longestWithin(longest);
    takes(Math.max(shorter, 0));
    return shorter;
  }

  /** Lets the step after one of a length be up to twice as long. */
  private void takes(int taken) {
    level = longestWithin(2 * lengths[taken]);
  }

  /** Position of the longest step within a time [s]; -1 if there is none. */
  private int longestWithin(double time) {
    int i = lengths.length - 1;
    while (i >= 0 && lengths[i] > time * (1 + 1e-9)) {
      i--;
    }
    return i;
  }
}
