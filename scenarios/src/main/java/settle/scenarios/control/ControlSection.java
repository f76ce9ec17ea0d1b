package settle.scenarios.control;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.List;
import java.util.Optional;
import settle.scenarios.format.Form;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Reference;
import settle.scenarios.format.Form.Several;
import settle.scenarios.format.Form.Span;
import settle.scenarios.format.Form.Variants;
import settle.scenarios.format.Form.YesNo;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.room.RoomKeys;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.house.Arrangement;
import settle.sim.source.Source;
import settle.sim.units.Times;

/** How programme, thermostat and weather act on the plant. */
public final class ControlSection {

  private static final String KIND = Key.KIND;

  // Programme and set-back.

  private static final String BY_SOURCE = "source";
  private static final String BY_HEADS = "heads";
  private static final String OFF = "off";
  public static final Key PROGRAMME =
      Key.optional(
              "programme",
              RoomKeys.PROGRAMME.form(),
              "periods at want, for every room without its own")
          .orElse("want all day");
  public static final Key SETBACK =
      Key.optional("setback", Forms.WANT, "want-temperature outside the periods")
          .orElse("16 °C", "4 to 5 K below a living room's want, " + PRACTICE);
  private static final Key SET_BACK_BY =
      Key.optional(
              "set back by",
              new Choice(List.of(BY_SOURCE, BY_HEADS, OFF)),
              "who carries out the set-back: source and pump rest until the reference room falls to it, or programmable heads turn down, or source and pump are off but for frost protection")
          .orElse(BY_SOURCE, "one programmer for the house, " + PRACTICE);
  public static final Key REFERENCE_ROOM =
      Key.optional(
              "reference room",
              new Reference(RoomKeys.ROOM),
              "room whose temperature controls thermostat, set-back and room influence")
          .orElse("the first room");
  private static final Key DIFFERENTIAL =
      Key.optional(
              "differential",
              Forms.DIFFERENCE.usually(0.1, 3),
              "switching differential with which the source holds the set-back in that room")
          .orElse("0.5 K", PRACTICE);

  // Room thermostat.

  private static final String NONE = "none";
  private static final String ON_OFF = "on/off";
  private static final String TIME_PROPORTIONAL = "time-proportional";
  private static final Key THERMOSTAT_KIND =
      Key.required(
          KIND,
          new Choice(List.of(NONE, ON_OFF, TIME_PROPORTIONAL)),
          "none, on/off or time-proportional");
  public static final Key THERMOSTAT_DIFFERENTIAL =
      Key.optional(
              "differential",
              Forms.DIFFERENCE.usually(0.1, 3),
              "on at half of it below want, off at half of it above")
          .orElse("0.5 K", PRACTICE);
  private static final Key THERMOSTAT_BAND =
      Key.optional(
              "band",
              Forms.DIFFERENCE.usually(0.5, 4),
              "always on at half of it below want, never at half of it above")
          .orElse("1.5 K", PRACTICE);
  private static final Key CYCLE =
      Key.optional(
              "cycle",
              Forms.of(Dimension.DURATION, 60, Times.DAY, "from what a burner can follow to a day")
                  .usually(180, 3600),
              "length of a cycle")
          .orElse("10 min", "six cycles an hour, " + PRACTICE);
  private static final Key TIME_CONSTANT =
      Key.optional("time constant", Forms.PAUSE.usually(0, 2400), "lag of its sensor")
          .orElse("10 min", "a sensor in its case on a wall, " + PRACTICE);
  public static final Key THERMOSTAT =
      Key.optional(
              "thermostat",
              Variants.of(
                  KIND,
                  NONE,
                  Table.of("no room thermostat: the valves decide", THERMOSTAT_KIND),
                  ON_OFF,
                  Table.of(
                      "a room thermostat that switches the source on and off",
                      THERMOSTAT_KIND,
                      THERMOSTAT_DIFFERENTIAL,
                      TIME_CONSTANT),
                  TIME_PROPORTIONAL,
                  Table.of(
                      "a room thermostat that runs the source for a share of each cycle",
                      THERMOSTAT_KIND,
                      CYCLE,
                      THERMOSTAT_BAND,
                      TIME_CONSTANT)),
              "room thermostat in the reference room, which stops the source by day")
          .orElse("none: the valves decide");

  // Weather compensation.

  public static final Key SLOPE =
      Key.required(
          "slope",
          Forms.of(Dimension.SLOPE, 0, 5, "level to steeper than any plant needs").usually(0.2, 3),
          "rise of the flow temperature per kelvin that it is colder outdoors, starting from 20 °C at 20 °C");
  public static final Key SHIFT =
      Key.optional(
              "shift",
              Forms.of(Dimension.TEMPERATURE_DIFFERENCE, -20, 40, "curves that still heat")
                  .usually(-10, 20),
              "parallel shift of the curve")
          .orElse("0 K", PRACTICE);
  private static final Key LOWEST =
      Key.optional(
              "lowest",
              Forms.FLOW_TEMPERATURE.usually(20, 60),
              "lowest flow temperature of the curve")
          .orElse("25 °C", PRACTICE);
  public static final Key HIGHEST =
      Key.optional("highest", Forms.FLOW_TEMPERATURE, "highest flow temperature of the curve")
          .orElse("the flow temperature of the source");
  private static final Key ROOM_INFLUENCE =
      Key.optional(
              "room influence",
              Forms.of(Dimension.SLOPE, 0, 20, "none to on and off").usually(0, 6),
              "rise of the flow temperature per kelvin that the reference room lacks")
          .orElse("0 K/K", "none, " + PRACTICE);
  public static final Key WEATHER_COMPENSATION =
      Key.optional(
              "weather compensation",
              new Keys(
                  Table.of(
                      "flow temperature by outdoor temperature",
                      SLOPE,
                      SHIFT,
                      LOWEST,
                      HIGHEST,
                      ROOM_INFLUENCE)),
              "flow temperature by outdoor temperature")
          .orElse("none: the flow temperature of the source");

  // Optimum start.

  public static final String FIXED = "fixed";
  private static final String LEARNED = "learned";
  private static final Key START_KIND =
      Key.required(KIND, new Choice(List.of(FIXED, LEARNED)), "fixed or learned");
  public static final Key LEAD =
      Key.required(
          "lead", Forms.PAUSE.usually(0, 6 * 3600.0), "how long before each period heating starts");
  private static final Key LONGEST =
      Key.optional(
              "longest",
              Forms.of(Dimension.DURATION, 60, Times.DAY, "a minute to a day")
                  .usually(1800, 8 * 3600.0),
              "longest lead")
          .orElse("4 h", PRACTICE);
  private static final Key FIRST_GUESS =
      Key.optional(
              "first guess",
              Forms.of(Dimension.DURATION_PER_KELVIN, 1, Times.DAY, "a second to a day")
                  .usually(120, 4 * 3600.0),
              "lead per kelvin that the reference room lacks, before the first warm-up")
          .orElse("30 min/K", PRACTICE);
  public static final Key OPTIMUM_START =
      Key.optional(
              "optimum start",
              Variants.of(
                  KIND,
                  FIXED,
                  Table.of("the same lead every day", START_KIND, LEAD),
                  LEARNED,
                  Table.of("a lead learned from past warm-ups", START_KIND, LONGEST, FIRST_GUESS)),
              "how early heating starts, so that the room is warm when its period begins")
          .orElse("none: with the period");

  private static final Key INTERLOCK =
      Key.optional(
              "interlock",
              new YesNo(),
              "whether heat is called for only while an on/off actuator or motor head is open")
          .orElse("no", PRACTICE);

  public static final Key HOT_WATER =
      Key.optional(
              "hot water",
              new Several(new Span()),
              "periods of the day in which hot water takes the source away: draw-offs of a combination boiler, reheats of a cylinder")
          .orElse("none: the source is there for the rooms all day");

  public static final Table TABLE =
      Table.of(
          "how programme, thermostat and weather act",
          PROGRAMME,
          SETBACK,
          SET_BACK_BY,
          REFERENCE_ROOM,
          DIFFERENTIAL,
          THERMOSTAT,
          WEATHER_COMPENSATION,
          OPTIMUM_START,
          INTERLOCK,
          HOT_WATER);

  private final Section section;
  private final List<String> rooms;

  /** Whether any room has a programme. */
  private final boolean programme;

  public ControlSection(Section section, List<String> rooms, boolean programme) {
    this.section = section;
    this.rooms = rooms;
    this.programme = programme;
  }

  /**
   * The control.
   *
   * @param source what it acts on
   * @param it what messages call that
   * @param arrangements whose actuators operate an interlock
   */
  public Control read(Source source, String it, List<Arrangement> arrangements) {
    String first = rooms.isEmpty() ? "" : rooms.get(0);
    boolean named = section.has(REFERENCE_ROOM);
    Control control =
        new Control(
            setback(),
            section.name(REFERENCE_ROOM, rooms, first),
            differential(),
            thermostat(),
            flowCurve(source, it),
            optimumStart(),
            interlock(arrangements));
    if (control.usesReferenceRoom() && !named) {
      section.note(REFERENCE_ROOM, control.referenceRoom());
    }
    return control;
  }

  private Control.Setback setback() {
    if (!programme) {
      // Want never changes, so nothing carries out a setback; heads is the mode that needs nothing
      // else.
      section.value(SET_BACK_BY).ifPresent(v -> v.choice((Form.Choice) SET_BACK_BY.form()));
      section.value(SETBACK).ifPresent(v -> v.warn("has no effect without a programme"));
      section.numberIfWritten(SETBACK);
      return Control.Setback.HEADS;
    }
    return switch (section.choice(SET_BACK_BY)) {
      case BY_HEADS -> Control.Setback.HEADS;
      case OFF -> Control.Setback.OFF;
      default -> Control.Setback.SOURCE;
    };
  }

  /** Without a programme it means nothing and is not listed as a default. */
  private double differential() {
    return programme
        ? section.number(DIFFERENTIAL)
        : section.numberIfWritten(DIFFERENTIAL).orElse(0.5);
  }

  private Thermostat thermostat() {
    Optional<Value> value = section.value(THERMOSTAT);
    if (value.isEmpty()) {
      section.note(THERMOSTAT, NONE);
      return new Thermostat.None();
    }
    Section s = value.get().section((Form.Variants) THERMOSTAT.form());
    return switch (s.variant(Key.KIND)) {
      case ON_OFF ->
          new Thermostat.OnOff(s.number(THERMOSTAT_DIFFERENTIAL), s.number(TIME_CONSTANT));
      case TIME_PROPORTIONAL ->
          new Thermostat.TimeProportional(
              s.number(CYCLE), s.number(THERMOSTAT_BAND), s.number(TIME_CONSTANT));
      default -> new Thermostat.None();
    };
  }

  private Optional<FlowCurve> flowCurve(Source source, String it) {
    if (!section.has(WEATHER_COMPENSATION)) {
      section.note(WEATHER_COMPENSATION, "none");
      return Optional.empty();
    }
    Section s = section.section(WEATHER_COMPENSATION);
    double highest = s.number(HIGHEST, source.flowSetPoint());
    double lowest = s.number(LOWEST);
    if (lowest > highest) {
      s.problem(
          "found the lowest flow temperature, "
              + Dimension.TEMPERATURE.show(lowest)
              + ", above the highest, "
              + Dimension.TEMPERATURE.show(highest));
      lowest = highest;
    }
    if (highest > source.highestFlow()) {
      s.warn(
          "goes up to "
              + Dimension.TEMPERATURE.show(highest)
              + ", but "
              + it
              + " only to "
              + Dimension.TEMPERATURE.show(source.highestFlow()));
    }
    return Optional.of(
        new FlowCurve(s.number(SLOPE), s.number(SHIFT), lowest, highest, s.number(ROOM_INFLUENCE)));
  }

  private OptimumStart optimumStart() {
    Optional<Value> value = section.value(OPTIMUM_START);
    if (value.isEmpty()) {
      if (programme) {
        section.note(OPTIMUM_START, "none");
      }
      return new OptimumStart.None();
    }
    if (!programme) {
      value.get().warn("has no effect without a programme");
    }
    Section s = value.get().section((Form.Variants) OPTIMUM_START.form());
    return switch (s.variant(Key.KIND)) {
      case FIXED -> new OptimumStart.Fixed(s.number(LEAD));
      case LEARNED -> new OptimumStart.Learned(s.number(FIRST_GUESS), s.number(LONGEST));
      default -> new OptimumStart.None();
    };
  }

  private boolean interlock(List<Arrangement> arrangements) {
    boolean wanted = section.yesNo(INTERLOCK);
    for (Arrangement arrangement : arrangements) {
      boolean actuated = arrangement.branches().stream().anyMatch(b -> b.valve().electric());
      if (wanted && !actuated) {
        section
            .value(INTERLOCK)
            .ifPresent(
                v ->
                    v.warn(
                        "'"
                            + arrangement.name()
                            + "' has no actuator or motor head that could call for heat"));
      }
    }
    return wanted;
  }
}
