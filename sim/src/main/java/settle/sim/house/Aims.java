package settle.sim.house;

import java.util.OptionalDouble;
import settle.sim.units.Range;

/**
 * What is asked of the heating.
 *
 * @param tolerance how far below want still counts as warm [K]
 * @param warmUp longest warm-up allowed [s]; empty if none is asked for
 * @param overshoot largest overshoot allowed [K]; empty if none is asked for
 * @param sure share of the houses like this, what is not quite known of it drawn at random, that
 *     are to be held [-]
 * @param tariffs what energy costs
 * @param spreads how sure the house's figures are
 */
public record Aims(
    double tolerance,
    OptionalDouble warmUp,
    OptionalDouble overshoot,
    double sure,
    Tariffs tariffs,
    Spreads spreads) {

  /**
   * Share of such houses that are to be held where none is said [-]; common practice, no source.
   */
  public static final double USUALLY_SURE = 0.8;

  public Aims {
    Range.notNegative("want tolerance", tolerance, "K");
    warmUp.ifPresent(t -> Range.positive("longest warm-up", t, "s"));
    overshoot.ifPresent(k -> Range.notNegative("largest overshoot", k, "K"));
    Range.within("share of houses to be held", sure, 0, 1, "1");
  }

  /** As sure as is usual. */
  public Aims(
      double tolerance,
      OptionalDouble warmUp,
      OptionalDouble overshoot,
      Tariffs tariffs,
      Spreads spreads) {
    this(tolerance, warmUp, overshoot, USUALLY_SURE, tariffs, spreads);
  }

  /** Nothing but warmth, to within a tolerance [K]. */
  public static Aims within(double tolerance) {
    return new Aims(
        tolerance, OptionalDouble.empty(), OptionalDouble.empty(), Tariffs.USUAL, Spreads.USUAL);
  }
}
