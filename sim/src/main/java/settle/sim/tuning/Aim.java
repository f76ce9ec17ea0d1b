package settle.sim.tuning;

import java.util.ArrayList;
import java.util.List;
import settle.sim.house.Aims;
import settle.sim.result.RoomFigures;
import settle.sim.study.Holding;

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
    /** How far below want the room settles in the coldest weather, without gains [K]. */
    HELD,
    /** How long it takes to be warm on the coldest day, from the call for heat on [s]. */
    WARM_UP,
    /** How far it rises above want on a usual day [K]. */
    OVERSHOOT,
    /** Starts of the source on a usual day [1/h]. */
    STARTS
  }

  /** Rounding of a root at rest is no miss. */
  private static final double SLACK = 1e-3;

  /** The most that something which never comes counts as late [h]. */
  private static final double NEVER = 12;

  private static final double HOUR = 3600;

  /** Whether it is met. */
  public boolean met() {
    return value <= limit + SLACK;
  }

  /** By how much it is missed; 0 where it is met. */
  public double miss() {
    return met() ? 0 : value - limit;
  }

  /** How far it is beyond its limit, in kelvins, hours or starts an hour alike; below 0 if not. */
  double beyond() {
    return Math.min((value - limit) / (kind == Kind.WARM_UP ? HOUR : 1), NEVER);
  }

  /**
   * What is asked of a house in its coldest weather: at rest, and lived through only where a
   * warm-up is asked for.
   *
   * @param plant house and heating
   * @param outdoor how cold it is [°C]
   */
  static List<Aim> ofColdest(Plant plant, double outdoor) {
    Aims aims = plant.house().aims();
    Holding holding = new Holding(plant.house(), plant.arrangement());
    double[] shortfalls = holding.shortfallsOfHeated(outdoor);
    int[] heated = holding.model().heatedRooms();
    List<Aim> all = new ArrayList<>();
    for (int i = 0; i < heated.length; i++) {
      String room = plant.house().rooms().get(heated[i]).name();
      all.add(new Aim(Kind.HELD, room, shortfalls[i] + aims.tolerance(), aims.tolerance()));
    }
    if (aims.warmUp().isPresent()) {
      double limit = aims.warmUp().getAsDouble();
      for (RoomFigures room : Day.searched(plant, outdoor).rooms()) {
        double warmUp = room.warmUp().orElse(Double.POSITIVE_INFINITY);
        all.add(new Aim(Kind.WARM_UP, room.name(), warmUp, limit));
      }
    }
    return all;
  }

  /** What is asked of a usual day. */
  static List<Aim> ofUsual(Day day, Aims aims) {
    List<Aim> all = new ArrayList<>();
    if (aims.overshoot().isPresent()) {
      double limit = aims.overshoot().getAsDouble();
      for (RoomFigures room : day.rooms()) {
        all.add(new Aim(Kind.OVERSHOOT, room.name(), room.overshoot(), limit));
      }
    }
    all.add(new Aim(Kind.STARTS, "", day.run().plant().cycling().startsPerHour(), MOST_STARTS));
    return all;
  }
}
