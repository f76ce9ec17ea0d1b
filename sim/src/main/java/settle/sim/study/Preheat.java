package settle.sim.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.measure.EarlierStart;
import settle.sim.model.HouseModel;
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
   * The lead as a remedy for the room that is slowest; empty if every room is in time, or none is
   * set back, so that a start has no programme to be earlier than.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param warmUps its warm-ups
   * @param like a model prepared, of the same fabric if that can be
   */
  static Optional<Remedy> of(
      House house, Arrangement arrangement, WarmUps warmUps, HouseModel like) {
    if (!isLate(house, warmUps) || warmUps.fromSetback().isEmpty()) {
      return Optional.empty();
    }
    List<WarmUp> now = warmUps.fromSetback().get();
    double allowed = house.aims().warmUp().orElseThrow();
    double from = house.control().optimumStart().lead();
    String slowest =
        now.stream().max(Comparator.comparingDouble(Preheat::time)).orElseThrow().room();
    double before = late(now, allowed);
    double late = before;
    double lead = from;
    for (int k = 0; k < MOST_RUNS && late > 0 && lead < LONGEST; k++) {
      lead = Math.min(LONGEST, SPACING * Math.ceil((lead + late) / SPACING));
      House earlier = new EarlierStart(from, lead).on(house, arrangement.name());
      late = late(WarmUps.fromSetback(earlier, arrangement, like), allowed);
    }
    Remedy.Status status =
        late <= 0
            ? Remedy.Status.SUFFICES
            : late < before ? Remedy.Status.HELPS_NOT_ENOUGH : Remedy.Status.NO_HELP;
    return Optional.of(
        new Remedy(
            slowest,
            new EarlierStart(from, lead),
            status,
            LONGEST,
            List.of(),
            List.of(),
            late <= 0));
  }

  /** Whether some room's usual warm-up takes longer than the aims allow. */
  static boolean isLate(House house, WarmUps warmUps) {
    return house.aims().warmUp().isPresent()
        && late(warmUps.usual(), house.aims().warmUp().getAsDouble()) > 0;
  }

  private static double late(List<WarmUp> rooms, double allowed) {
    return rooms.stream().mapToDouble(Preheat::time).max().orElse(0) - allowed;
  }

  private static double time(WarmUp room) {
    return room.time().orElse(Double.POSITIVE_INFINITY);
  }
}
