package settle.sim.control;

import settle.sim.units.Range;

/** How early heating begins before a day period, so that the room is warm when it begins. */
public sealed interface OptimumStart {

  /** How early it always begins [s]; 0 where that is not fixed. */
  default double lead() {
    return 0;
  }

  /** How early it begins at most [s]. */
  default double longest() {
    return lead();
  }

  /** With the period. */
  record None() implements OptimumStart {}

  /**
   * Always as early.
   *
   * @param lead before the period [s]
   */
  record Fixed(double lead) implements OptimumStart {
    public Fixed {
      Range.notNegative("lead", lead, "s");
    }
  }

  /**
   * As early as past warm-ups say: lead = k (want - room temperature), with k learned from each
   * warm-up.
   *
   * @param firstGuess k before the first warm-up [s/K]
   * @param longest lead that is never passed [s]
   */
  record Learned(double firstGuess, double longest) implements OptimumStart {
    public Learned {
      Range.positive("first guess of the lead", firstGuess, "s/K");
      Range.positive("longest lead", longest, "s");
    }
  }
}
