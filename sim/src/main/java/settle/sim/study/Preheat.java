package settle.sim.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.control.OptimumStart;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.study.WarmUps.WarmUp;

/**
 * How much earlier than the programme heating has to begin so that rooms which are set back are
 * warm as soon as the aims allow: found by runs, each with as much more lead as the one before was
 * late.
 */
final class Preheat {

  /** Leads are whole multiples of this [s]. */
  private static final double SPACING = 300;

  /** Longest lead looked for [s]; with more, the room is as good as not set back. */
  static final double LONGEST = 8 * 3600;

  private static final int MOST_RUNS = 8;

  private Preheat() {}

  /**
   * The lead as a remedy for the room that is slowest; empty if every room is in time.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param now its warm-ups from setback
   */
  static Optional<Remedies.Remedy> of(House house, Arrangement arrangement, List<WarmUp> now) {
    if (house.aims().warmUp().isEmpty()) {
      return Optional.empty();
    }
    double allowed = house.aims().warmUp().getAsDouble();
    double from =
        house.control().optimumStart() instanceof OptimumStart.Fixed fixed ? fixed.lead() : 0;
    String slowest =
        now.stream().max(Comparator.comparingDouble(Preheat::time)).orElseThrow().room();
    double late = late(now, allowed);
    if (late <= 0) {
      return Optional.empty();
    }
    double lead = from;
    for (int k = 0; k < MOST_RUNS && late > 0 && lead < LONGEST; k++) {
      lead = Math.min(LONGEST, SPACING * Math.ceil((lead + late) / SPACING));
      late =
          late(
              WarmUps.fromSetback(
                  house.withOptimumStart(new OptimumStart.Fixed(lead)), arrangement),
              allowed);
    }
    OptionalDouble to = late <= 0 ? OptionalDouble.of(lead) : OptionalDouble.empty();
    return Optional.of(new Remedies.Remedy(slowest, Remedies.Kind.PREHEAT, from, to, LONGEST));
  }

  private static double late(List<WarmUp> rooms, double allowed) {
    return rooms.stream().mapToDouble(Preheat::time).max().orElse(0) - allowed;
  }

  private static double time(WarmUp room) {
    return room.time().orElse(Double.POSITIVE_INFINITY);
  }
}
