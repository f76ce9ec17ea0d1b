package settle.sim.tuning;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import settle.sim.engine.HeldRun;
import settle.sim.house.Aims;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.result.RoomFigures;
import settle.sim.study.Holding;
import settle.sim.units.Times;

/**
 * Something asked of the heating, with what comes of it.
 *
 * @param kind what
 * @param when in which weather
 * @param room of which room; empty for the house
 * @param value what comes of it, in the kind's unit; infinite for "never"
 * @param limit what it may be at most
 */
public record Aim(Kind kind, When when, String room, double value, double limit) {

  /** Source starts in an hour that are not passed; common practice, no source. */
  public static final double MOST_STARTS = 6;

  /**
   * How late a room may be warm on a usual or a mild day where no longest warm-up is asked for [s]:
   * what people put up with; common practice, no source.
   */
  public static final double LATEST = 1800;

  /** What is asked. */
  public enum Kind {
    /** How far below want the room settles without gains and without set-back, at rest [K]. */
    SETTLED(1),
    /** How far below want a run shows the room [K]. */
    HELD(1),
    /** How long after the beginning of a period it is warm [s]. */
    LATE(Times.HOUR),
    /** How long it takes to be warm from the call for heat on [s]. */
    WARM_UP(Times.HOUR),
    /** How far it rises above want [K]. */
    OVERSHOOT(1),
    /** Starts of the source [1/h]: five too many wear like a kelvin too few is felt. */
    STARTS(5);

    private final double unit;

    Kind(double unit) {
      this.unit = unit;
    }
  }

  /** In which weather. */
  public enum When {
    /** Weather in which a season's heat is made on average. */
    USUAL,
    /** Weather above which only a tenth of a season's heat is made. */
    MILD,
    /** Design weather. */
    COLDEST
  }

  /** Rounding of a root at rest is no miss. */
  private static final double ROUNDING = 1e-3;

  /** A room that a run shows as little below still keeps up, as everywhere else [K]. */
  private static final double SWING = 0.05;

  /** The most that something which never comes counts as late [h]. */
  private static final double NEVER = 12;

  /** Whether it is met. */
  public boolean met() {
    return value <= limit + (kind == Kind.HELD ? SWING : ROUNDING);
  }

  /** By how much it is missed; 0 where it is met. */
  public double miss() {
    return met() ? 0 : value - limit;
  }

  /** How far it is beyond its limit, in kelvins, hours or five starts an hour; below 0 if not. */
  double beyond() {
    return Math.min((value - limit) / kind.unit, NEVER);
  }

  /** This aim, made a little stricter: a search, whose steps are coarser, asks it so. */
  Aim strictly(double share) {
    return kind == Kind.LATE || kind == Kind.STARTS
        ? new Aim(kind, when, room, value, limit * share)
        : this;
  }

  /**
   * What is asked of a house in its coldest weather, at rest; a run only where a warm-up is asked
   * for.
   *
   * @param model house and heating as they are run
   * @param outdoor how cold it is [°C]
   */
  static List<Aim> atRest(HouseModel model, double outdoor) {
    House house = model.house();
    Aims aims = house.aims();
    Holding holding = new Holding(model);
    double[] shortfalls = holding.shortfallsOfHeated(outdoor);
    int[] heated = model.heatedRooms();
    List<Aim> all = new ArrayList<>();
    for (int i = 0; i < heated.length; i++) {
      String room = house.rooms().get(heated[i]).name();
      double below = shortfalls[i] + aims.tolerance();
      all.add(new Aim(Kind.SETTLED, When.COLDEST, room, below, aims.tolerance()));
    }
    if (aims.warmUp().isPresent()) {
      all.addAll(
          warmUps(Spell.searched(Plant.of(model), outdoor, model), aims.warmUp().getAsDouble()));
    }
    return all;
  }

  private static List<Aim> warmUps(Spell spell, double limit) {
    List<Aim> all = new ArrayList<>();
    for (RoomFigures room : spell.rooms()) {
      double warmUp = room.warmUp().orElse(Double.POSITIVE_INFINITY);
      all.add(new Aim(Kind.WARM_UP, When.COLDEST, room.name(), warmUp, limit));
    }
    return all;
  }

  /**
   * What is asked of a usual or a mild day, as lived.
   *
   * @param when which of them
   * @param spell the day
   * @param aims what the house asks for
   */
  static List<Aim> ofDay(When when, Spell spell, Aims aims) {
    List<Aim> all = new ArrayList<>();
    for (RoomFigures room : spell.rooms()) {
      Spell.Warmth warmth = spell.warmth().get(room.name());
      all.add(new Aim(Kind.HELD, when, room.name(), warmth.below(), aims.tolerance()));
      if (warmth.periods()) {
        double limit = aims.warmUp().orElse(LATEST);
        all.add(new Aim(Kind.LATE, when, room.name(), warmth.lateness(), limit));
      }
    }
    all.addAll(lively(when, spell, aims));
    return all;
  }

  /** Overshoot and starts, which are asked of every day. */
  private static List<Aim> lively(When when, Spell spell, Aims aims) {
    List<Aim> all = new ArrayList<>();
    OptionalDouble most = aims.overshoot();
    if (most.isPresent()) {
      for (RoomFigures room : spell.rooms()) {
        all.add(new Aim(Kind.OVERSHOOT, when, room.name(), room.overshoot(), most.getAsDouble()));
      }
    }
    double starts = spell.run().plant().cycling().startsPerHour();
    all.add(new Aim(Kind.STARTS, when, "", starts, MOST_STARTS));
    return all;
  }

  /**
   * What is asked of the coldest day, as lived.
   *
   * @param spell the day
   * @param aims what the house asks for
   */
  static List<Aim> ofColdest(Spell spell, Aims aims) {
    List<Aim> all = new ArrayList<>();
    aims.warmUp().ifPresent(limit -> all.addAll(warmUps(spell, limit)));
    all.addAll(lively(When.COLDEST, spell, aims));
    return all;
  }

  /**
   * Whether rooms are held in the coldest weather: without set-back, as heating goes on then.
   *
   * @param plant house and heating
   * @param held the house kept at its day values
   */
  static List<Aim> held(Plant plant, HeldRun.Day held) {
    House house = plant.house();
    List<Aim> all = new ArrayList<>();
    for (int r = 0; r < house.rooms().size(); r++) {
      String room = house.rooms().get(r).name();
      if (plant.heats(room)) {
        double below = house.dayWant(r) - held.operative()[r];
        all.add(new Aim(Kind.HELD, When.COLDEST, room, below, house.wantTolerance()));
      }
    }
    return all;
  }
}
