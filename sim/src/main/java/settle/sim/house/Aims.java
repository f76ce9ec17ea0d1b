package settle.sim.house;

import java.util.OptionalDouble;
import settle.sim.units.Range;

/**
 * What is asked of the heating.
 *
 * @param tolerance how far below want still counts as warm [K]
 * @param warmUp longest warm-up allowed [s]; empty if none is asked for
 * @param overshoot largest overshoot allowed [K]; empty if none is asked for
 * @param tariffs what energy costs
 * @param spreads how sure the house's figures are
 */
public record Aims(
    double tolerance,
    OptionalDouble warmUp,
    OptionalDouble overshoot,
    Tariffs tariffs,
    Spreads spreads) {

  public Aims {
    Range.notNegative("want tolerance", tolerance, "K");
    warmUp.ifPresent(t -> Range.positive("longest warm-up", t, "s"));
    overshoot.ifPresent(k -> Range.notNegative("largest overshoot", k, "K"));
  }

  /** Nothing but warmth, to within a tolerance [K]. */
  public static Aims within(double tolerance) {
    return new Aims(
        tolerance, OptionalDouble.empty(), OptionalDouble.empty(), Tariffs.USUAL, Spreads.USUAL);
  }
}
