package settle.scenarios.edit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import settle.scenarios.control.ControlKeys;
import settle.scenarios.definition.DefinitionKeys;
import settle.scenarios.format.Key;
import settle.scenarios.house.ArrangementKeys;
import settle.scenarios.house.ScenarioFormat;
import settle.scenarios.pipes.DistributionKeys;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.QuantityException;
import settle.scenarios.quantity.Unit;
import settle.scenarios.source.SourceKeys;
import settle.scenarios.valve.ValveKeys;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.tuning.Plant;
import settle.sim.tuning.Setting;
import settle.sim.valve.KnobScale;
import settle.sim.valve.MotorHead;
import settle.sim.valve.RoomSensing;

/** Writes settings into the text of the scenario they were found for. */
public final class TunedScenario {

  /** Longest part of a room's name that goes into a name made of it. */
  private static final int LONGEST_ROOM = 40;

  private final ScenarioText text;
  private final Map<Integer, String> anew = new HashMap<>();
  private final Plant tuned;

  private TunedScenario(String text, Plant tuned) {
    this.text = new ScenarioText(text);
    this.tuned = tuned;
  }

  /**
   * The text with settings changed.
   *
   * @param text a scenario without faults
   * @param tuned its house and arrangement as they are to be set
   * @param settings what to write
   */
  public static String write(String text, Plant tuned, List<Setting> settings) {
    TunedScenario scenario = new TunedScenario(text, tuned);
    settings.forEach(scenario::write);
    return scenario.text.text();
  }

  private void write(Setting setting) {
    double value = setting.of(tuned);
    // Every setting says where it stands; a new kind has to be told its place here.
    if (setting instanceof Setting.Head head) {
      heads(head.room());
    } else if (setting instanceof Setting.FlowTemperature) {
      flowTemperature(value);
    } else if (setting instanceof Setting.CurveSlope) {
      curve(ControlKeys.SLOPE.name(), plain(value));
    } else if (setting instanceof Setting.CurveShift) {
      curve(ControlKeys.SHIFT.name(), exact(Dimension.TEMPERATURE_DIFFERENCE, value));
    } else if (setting instanceof Setting.StartLead) {
      lead(exact(Dimension.DURATION, value));
    } else if (setting instanceof Setting.LockshieldTurns turns) {
      List<Object> place = branch(turns.branch());
      place.add(ArrangementKeys.LOCKSHIELD_TURNS.name());
      text.put(place, plain(value), ArrangementKeys.LOCKSHIELD.name());
    } else if (setting instanceof Setting.PumpHead) {
      text.put(
          List.of(ScenarioFormat.DISTRIBUTION.name(), DistributionKeys.PUMP_HEAD.name()),
          exact(Dimension.PRESSURE, value),
          "");
    } else if (setting instanceof Setting.ThermostatDifferential) {
      text.put(
          control(ControlKeys.THERMOSTAT.name(), ControlKeys.THERMOSTAT_DIFFERENTIAL.name()),
          exact(Dimension.TEMPERATURE_DIFFERENCE, value),
          "");
    } else if (setting instanceof Setting.MotorGain gain) {
      motor(gain.branch(), ValveKeys.GAIN.name(), exact(Dimension.SHARE_PER_KELVIN, value));
    } else if (setting instanceof Setting.MotorIntegralTime time) {
      motor(time.branch(), ValveKeys.INTEGRAL_TIME.name(), exact(Dimension.DURATION, value));
    }
  }

  private void heads(String room) {
    List<Branch> branches = tuned.arrangement().branches();
    for (int b = 0; b < branches.size(); b++) {
      Branch branch = branches.get(b);
      if (!branch.room().equals(room) || !branch.valve().hasHead()) {
        continue;
      }
      double set = branch.valve().setPoint();
      List<Object> knob = branch(b);
      knob.add(ArrangementKeys.KNOB.name());
      if (text.has(knob)) {
        text.put(knob, plain(KnobScale.position(set)), "");
      } else {
        List<Object> place = branch(b);
        place.add(ArrangementKeys.SET.name());
        text.put(place, exact(Dimension.TEMPERATURE, set), "");
      }
    }
  }

  /** Keys that lead to a branch: among the emitters of its room, the how manieth it is. */
  private List<Object> branch(int position) {
    return branch(tuned.arrangement(), position);
  }

  /** The same in any arrangement. */
  static List<Object> branch(Arrangement arrangement, int position) {
    List<Branch> branches = arrangement.branches();
    String room = branches.get(position).room();
    int item = 0;
    for (int b = 0; b < position; b++) {
      item += branches.get(b).room().equals(room) ? 1 : 0;
    }
    return new ArrayList<>(
        List.of(
            ScenarioFormat.ARRANGEMENTS.name(),
            arrangement.name(),
            ArrangementKeys.ROOMS.name(),
            room,
            item));
  }

  private void flowTemperature(double value) {
    String source = ScenarioFormat.SOURCE.name();
    String fixed = SourceKeys.FIXED_FLOW.name();
    String key = text.has(List.of(source, fixed)) ? fixed : SourceKeys.FLOW_TEMPERATURE.name();
    text.put(List.of(source, key), exact(Dimension.TEMPERATURE, value), "");
  }

  private static List<Object> control(String... keys) {
    List<Object> path = new ArrayList<>(List.of(ScenarioFormat.CONTROL.name()));
    path.addAll(List.of(keys));
    return path;
  }

  private void curve(String key, String value) {
    text.put(control(ControlKeys.WEATHER_COMPENSATION.name(), key), value, "");
  }

  private void lead(String value) {
    List<Object> start = control(ControlKeys.OPTIMUM_START.name());
    if (text.has(start)) {
      text.put(control(ControlKeys.OPTIMUM_START.name(), ControlKeys.LEAD.name()), value, "");
    } else {
      text.put(
          start,
          "{"
              + DefinitionKeys.KIND
              + ": "
              + ControlKeys.FIXED
              + ", "
              + ControlKeys.LEAD.name()
              + ": "
              + value
              + "}",
          "");
    }
  }

  /**
   * Gains stand where a head is described. One that others use too, or that the catalogue
   * describes, is described anew for this branch.
   */
  private void motor(int position, String key, String value) {
    Branch branch = tuned.arrangement().branches().get(position);
    MotorHead head = (MotorHead) branch.valve();
    String described = anew.getOrDefault(position, head.name());
    List<Object> definition = List.of(ValveKeys.VALVES.name(), described);
    if (text.has(definition) && (anew.containsKey(position) || users(head.name()) == 1)) {
      text.put(List.of(ValveKeys.VALVES.name(), described, key), value, "");
      return;
    }
    String name = nameFor(branch.room());
    text.put(List.of(ValveKeys.VALVES.name(), name), description(head), "");
    List<Object> place = branch(position);
    place.add(ArrangementKeys.VALVE.name());
    text.put(place, name, "");
    anew.put(position, name);
  }

  /** Branches of the whole scenario that have a valve of a name. */
  private long users(String valve) {
    return tuned.house().arrangements().stream()
        .flatMap(a -> a.branches().stream())
        .filter(b -> b.valve().name().equals(valve))
        .count();
  }

  private String nameFor(String room) {
    String name =
        (room.length() > LONGEST_ROOM ? room.substring(0, LONGEST_ROOM) : room)
            + " "
            + ValveKeys.MOTOR;
    int number = 2;
    String free = name;
    while (text.has(List.of(ValveKeys.VALVES.name(), free))) {
      free = name + " " + number++;
    }
    return free;
  }

  private static String description(MotorHead head) {
    return "{"
        + DefinitionKeys.KIND
        + ": "
        + ValveKeys.MOTOR
        + entry(ValveKeys.KV_OPEN, Dimension.FLOW_COEFFICIENT, head.kvMaximum())
        + entry(ValveKeys.GAIN, Dimension.SHARE_PER_KELVIN, head.gain())
        + entry(ValveKeys.INTEGRAL_TIME, Dimension.DURATION, head.integralTime())
        + entry(ValveKeys.MOTOR_TRAVEL, Dimension.DURATION, head.travelTime())
        + ", "
        + ValveKeys.SENSES.name()
        + ": "
        + (head.sensing() == RoomSensing.AIR ? "air" : "operative")
        + "}";
  }

  private static String entry(Key key, Dimension dimension, double value) {
    return ", " + key.name() + ": " + exact(dimension, value);
  }

  /** A number as few digits as say it exactly. */
  static String plain(double value) {
    BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
    return exact.signum() == 0 ? "0" : exact.toPlainString();
  }

  /** A quantity that reads back as the very same number; in the unit that reads best if it can. */
  static String exact(Dimension dimension, double si) {
    String shown = dimension.show(si);
    if (reads(dimension, shown, si)) {
      return shown;
    }
    for (Unit unit : dimension.units()) {
      String text = (plain(si / unit.inSi()) + " " + unit.symbol()).strip();
      if (reads(dimension, text, si)) {
        return text;
      }
    }
    throw new IllegalArgumentException("no unit says " + si + " exactly");
  }

  private static boolean reads(Dimension dimension, String text, double si) {
    try {
      return dimension.parse(text) == si;
    } catch (QuantityException e) {
      return false;
    }
  }
}
