package settle.sim.control;

import java.util.function.Function;
import java.util.function.Supplier;
import settle.sim.units.Range;

/** How early heating begins before a day period, so that the room is warm when it begins. */
public sealed interface OptimumStart {

  /** What follows from each kind. */
  <R> R fold(Supplier<R> none, Function<Fixed, R> fixed, Function<Learned, R> learned);

  /** Whether there is one. */
  default boolean isFitted() {
    return true;
  }

  /** Whether it learns from warm-ups. */
  default boolean learns() {
    return false;
  }

  /** How early it always begins [s]; 0 where that is not fixed. */
  default double lead() {
    return 0;
  }

  /** How early it begins at most [s]. */
  default double longest() {
    return lead();
  }

  /** One that always begins so early [s], if it begins early at all. */
  default OptimumStart withLead(double other) {
    return other > 0 ? new Fixed(other) : new None();
  }

  /** With the period. */
  record None() implements OptimumStart {
    @Override
    public <R> R fold(Supplier<R> none, Function<Fixed, R> fixed, Function<Learned, R> learned) {
      return none.get();
    }

    @Override
    public boolean isFitted() {
      return false;
    }
  }

  /**
   * Always as early.
   *
   * @param lead before the period [s]
   */
  record Fixed(double lead) implements OptimumStart {
    public Fixed {
      Range.notNegative("lead", lead, "s");
    }

    @Override
    public <R> R fold(Supplier<R> none, Function<Fixed, R> fixed, Function<Learned, R> learned) {
      return fixed.apply(this);
    }

    /** One that has a lead keeps one, even one of no length. */
    @Override
    public OptimumStart withLead(double other) {
      return new Fixed(other);
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

    @Override
    public <R> R fold(Supplier<R> none, Function<Fixed, R> fixed, Function<Learned, R> learned) {
      return learned.apply(this);
    }

    @Override
    public boolean learns() {
      return true;
    }
  }
}
