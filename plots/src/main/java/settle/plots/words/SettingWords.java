package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.Timetable;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Bypass;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Pump;
import settle.sim.room.Room;
import settle.sim.source.Source;
import settle.sim.units.Times;
import settle.sim.valve.KnobScale;

/**
 * What there is to set on a plant, as whoever stands before it reads it.
 *
 * @param house the house, its pump as it is to be set
 */
public record SettingWords(House house) {

  /** A pump is set by half metres of water [Pa]; common practice, no source. */
  private static final double PUMP_MARK = 5000;

  /** Least that a circulator can be set to [Pa]; common practice, no source. */
  private static final double LEAST_HEAD = 10_000;

  /** A lockshield is set by eighths of a turn. */
  private static final int EIGHTHS = 8;

  private static final double PASCALS_PER_METRE = 9806.65;

  /**
   * One thing to set.
   *
   * @param what is set
   * @param to how
   */
  public record Setting(String what, String to) {}

  /**
   * All that the house has once.
   *
   * @param outdoor outdoor temperature of the day, for what a weather compensation asks then [°C]
   */
  public List<Setting> all(double outdoor) {
    List<Setting> settings = new ArrayList<>();
    settings.add(new Setting("pump", pump()));
    settings.add(new Setting("source", source(outdoor)));
    house.distribution().bypass().ifPresent(b -> settings.add(new Setting("by-pass", bypass(b))));
    Control control = house.control();
    settings.add(new Setting("programme", programme()));
    if (control.thermostat().isFitted()) {
      settings.add(
          new Setting(
              "room thermostat",
              say(
                  "in {}, {}",
                  control.referenceRoom(),
                  Quantities.setting(house.dayWant(control.referenceRoom())))));
    }
    if (control.optimumStart().isFitted()) {
      settings.add(new Setting("optimum start", "on; off on the day of the readings"));
    }
    return settings;
  }

  private String pump() {
    Pump pump = house.distribution().pump();
    OptionalDouble set = pump.setHead();
    if (set.isEmpty()) {
      return "one speed, nothing to set";
    }
    double head = set.getAsDouble();
    String mode =
        pump.points().isEmpty() ? "constant pressure" : "proportional pressure, at its full flow";
    double mark = Math.max(Math.ceil(head / PUMP_MARK - 1e-6) * PUMP_MARK, LEAST_HEAD);
    String said = say("{}, {}", mode, head(head));
    return mark - head < 1 ? said : say("{}; if it is set by half metres, {}", said, head(mark));
  }

  private static String head(double pascals) {
    return say(
        "{} ({} m)",
        Quantities.pressure(pascals),
        Quantities.number(pascals / PASCALS_PER_METRE, 1));
  }

  private String source(double outdoor) {
    Source source = house.source();
    if (house.control().flowCurve().isEmpty()) {
      return say("flow {}", Quantities.setting(source.flowSetPoint()));
    }
    FlowCurve curve = house.control().flowCurve().get();
    return say(
        "weather compensation on: slope {}, {} at {} outdoors, no colder than {}, no hotter than {}; {} at {} outdoors",
        Quantities.number(curve.slope(), 2),
        Quantities.setting(FlowCurve.FOOT + curve.shift()),
        Quantities.setting(FlowCurve.FOOT),
        Quantities.setting(curve.lowest()),
        Quantities.setting(curve.highest()),
        Quantities.temperature(curve.setPoint(outdoor, 0)),
        Quantities.setting(outdoor));
  }

  private String bypass(Bypass bypass) {
    return say(
        "opens at {}{}",
        Quantities.pressure(bypass.setPressure()),
        bypass.fedFrom() == null ? "" : ", at the end of " + bypass.fedFrom());
  }

  private String programme() {
    List<Room> heated = house.rooms().stream().filter(room -> !room.want().isConstant()).toList();
    if (heated.isEmpty()) {
      return "none, the same all day";
    }
    List<String> times = heated.stream().map(room -> times(room.want())).distinct().toList();
    if (times.size() == 1) {
      String where =
          heated.size() == house.rooms().size()
              ? ""
              : say(" ({})", heated.stream().map(Room::name).collect(Collectors.joining(", ")));
      return say("{}{}, {}", times.get(0), where, by());
    }
    return heated.stream()
            .map(room -> say("{} {}", room.name(), times(room.want())))
            .collect(Collectors.joining("; "))
        + "; "
        + by();
  }

  private String by() {
    return switch (house.control().setback()) {
      case HEADS -> "by programmable heads";
      case SOURCE -> say("set back by the source to {}", Quantities.setting(lowestWant()));
      case OFF -> "source off outside it";
    };
  }

  private double lowestWant() {
    return house.rooms().stream().mapToDouble(r -> r.want().minimum()).min().orElseThrow();
  }

  /** When it is at its day value, Monday's where days differ. */
  private static String times(Timetable want) {
    double day = want.maximum();
    List<String> periods = new ArrayList<>();
    double at = want.valueAt(0) >= day ? 0 : next(want, 0);
    while (at < Times.DAY) {
      double end = Math.min(next(want, at), Times.DAY);
      if (want.valueAt(at) >= day) {
        periods.add(clock(at) + "–" + clock(end));
      }
      at = end;
    }
    return String.join(", ", periods) + (want.repeatsDaily() ? "" : " on weekdays");
  }

  private static double next(Timetable want, double at) {
    return want.nextChange(at);
  }

  private static String clock(double seconds) {
    long minutes = Math.round(seconds / 60);
    return say(
        "{}:{}",
        Long.toString(100 + minutes / 60).substring(1),
        Long.toString(100 + minutes % 60).substring(1));
  }

  /** How far a lockshield is open: "1¼ turns". */
  public static String lockshield(Lockshield lockshield, double open) {
    if (lockshield.kv() == 0) {
      return "shut";
    }
    if (lockshield.turns() >= open) {
      return "open";
    }
    double turns = Math.max(Math.rint(lockshield.turns() * EIGHTHS), 1) / EIGHTHS;
    return Quantities.fraction(turns, EIGHTHS) + (turns > 1 ? " turns" : " turn");
  }

  /** How the head of a branch is set once the readings are taken. */
  public static String head(Branch branch) {
    if (!branch.valve().hasHead()) {
      return "fixed";
    }
    double set = branch.valve().setPoint();
    if (!branch.valve().thermostatic()) {
      return Quantities.setting(set);
    }
    double position = Math.rint(KnobScale.position(set) * 4) / 4;
    return say("{} ({})", Quantities.fraction(position, 4), Quantities.temperature(set));
  }
}
