package settle.sim.commissioning;

import java.util.List;
import java.util.Optional;

/**
 * Whether what was read is what was designed, and what is likely to be wrong if not.
 *
 * @param outcome the answer
 * @param nothing probability that nothing that matters is wrong [-]
 * @param suspects what may be wrong, by place and group, the likeliest first; none is below a
 *     thousandth
 * @param two two faults together that explain the readings far better than any one; empty if none
 *     do
 * @param misfit share of sound readings that would be as far from the best explanation [-]
 * @param readings every reading beside what was expected, the most telling first
 * @param next what reading more would tell most; empty where none tells anything
 */
public record Diagnosis(
    Outcome outcome,
    double nothing,
    List<Suspect> suspects,
    Optional<Two> two,
    double misfit,
    List<Reading> readings,
    Optional<Next> next) {

  public Diagnosis {
    suspects = List.copyOf(suspects);
    readings = List.copyOf(readings);
  }

  /** What can be said. */
  public enum Outcome {
    /** What was read is what was designed, as far as readings tell. */
    AS_DESIGNED,
    /** Something is wrong, and it is among the suspects. */
    WRONG,
    /** Something is wrong, and nothing that is known explains it. */
    UNEXPLAINED
  }

  /**
   * Something that may be wrong at one place.
   *
   * @param group what it is to the readings
   * @param branch where; -1 for the house
   * @param probability that it is so [-]
   * @param causes what it may be in particular, the likeliest first
   * @param heatMove by what share it moves the heat of the room that it moves most [-], at the
   *     level that fits best; below 0 for less
   * @param movedBranch a branch of that room
   * @param speaking positions in {@link Diagnosis#readings} of what speaks for it, loudest first
   * @param against positions of what speaks against it
   */
  public record Suspect(
      FaultKind.Group group,
      int branch,
      double probability,
      List<Cause> causes,
      double heatMove,
      int movedBranch,
      List<Integer> speaking,
      List<Integer> against) {}

  /**
   * One of several things that look alike in the readings.
   *
   * @param fault what
   * @param share of the suspect's probability [-]
   */
  public record Cause(Fault fault, double share) {}

  /**
   * Two faults together.
   *
   * @param one the likelier
   * @param other the other
   * @param probability that both are there [-]
   */
  public record Two(Fault one, Fault other, double probability) {}

  /**
   * One reading.
   *
   * @param point what was read
   * @param value what it was [°C]
   * @param expected what it would be on average if nothing were wrong [°C]
   * @param spread standard deviation of that [K]
   */
  public record Reading(Point point, double value, double expected, double spread) {

    /** How far off it is, in standard deviations [-]. */
    public double off() {
      return (value - expected) / spread;
    }
  }

  /**
   * A reading that was not taken.
   *
   * @param point what
   * @param apart how far the likeliest explanations are apart in it, against its own scatter [-]
   */
  public record Next(Point point, double apart) {}
}
