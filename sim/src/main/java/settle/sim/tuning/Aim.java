package settle.sim.tuning;

import java.util.ArrayList;
import java.util.List;
import settle.sim.house.Aims;
import settle.sim.result.RoomFigures;

/**
 * Something asked of the heating, with what comes of it.
 *
 * @param kind what
 * @param room of which room; empty for the house
 * @param value what comes of it, in the kind's unit; infinite for "never"
 * @param limit what it may be at most
 */
public record Aim(Kind kind, String room, double value, double limit) {

  /** Source starts in an hour that are not passed; common practice, no source. */
  public static final double MOST_STARTS = 6;

  /** What is asked. */
  public enum Kind {
    /** How far below want the room settles in design weather [K]. */
    HELD,
    /** How long it takes to be warm in design weather, from the call for heat on [s]. */
    WARM_UP,
    /** How far it rises above want [K]. */
    OVERSHOOT,
    /** Starts of the source on a usual day [1/h]. */
    STARTS
  }

  /** Rounding of a root at rest is no miss. */
  private static final double SLACK = 1e-3;

  /** Whether it is met. */
  public boolean met() {
    return value <= limit + SLACK;
  }

  /** By how much it is missed; 0 where it is met. */
  public double miss() {
    return met() ? 0 : value - limit;
  }

  /** What the coldest day is asked for. */
  static List<Aim> ofColdest(Day day, Aims aims) {
    List<Aim> all = new ArrayList<>();
    for (RoomFigures room : day.rooms()) {
      all.add(new Aim(Kind.HELD, room.name(), -room.droop(), aims.tolerance()));
      aims.warmUp()
          .ifPresent(
              limit ->
                  all.add(
                      new Aim(
                          Kind.WARM_UP,
                          room.name(),
                          room.warmUp().orElse(Double.POSITIVE_INFINITY),
                          limit)));
    }
    return all;
  }

  /** What a usual day is asked for. */
  static List<Aim> ofUsual(Day day, Aims aims) {
    List<Aim> all = new ArrayList<>();
    for (RoomFigures room : day.rooms()) {
      aims.overshoot()
          .ifPresent(
              limit -> all.add(new Aim(Kind.OVERSHOOT, room.name(), room.overshoot(), limit)));
    }
    all.add(new Aim(Kind.STARTS, "", day.run().plant().cycling().startsPerHour(), MOST_STARTS));
    return all;
  }
}
