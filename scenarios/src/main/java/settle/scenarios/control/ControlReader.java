package settle.scenarios.control;

import java.util.List;
import java.util.Optional;
import settle.scenarios.format.Form;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.house.Arrangement;
import settle.sim.source.Source;

/** Reads how programme, thermostat and weather act on the plant. */
public final class ControlReader {

  private final Section section;
  private final List<String> rooms;

  /** Whether any room has a programme. */
  private final boolean programme;

  public ControlReader(Section section, List<String> rooms, boolean programme) {
    this.section = section;
    this.rooms = rooms;
    this.programme = programme;
  }

  /**
   * The control.
   *
   * @param source what it acts on
   * @param it what messages call that
   * @param arrangements whose actuators an interlock goes by
   */
  public Control read(Source source, String it, List<Arrangement> arrangements) {
    String first = rooms.isEmpty() ? "" : rooms.get(0);
    boolean named = section.has(ControlKeys.REFERENCE_ROOM);
    Control control =
        new Control(
            setback(),
            section.name(ControlKeys.REFERENCE_ROOM, rooms, first),
            differential(),
            thermostat(),
            flowCurve(source, it),
            optimumStart(),
            interlock(arrangements));
    if (control.usesReferenceRoom() && !named) {
      section.note(ControlKeys.REFERENCE_ROOM, control.referenceRoom());
    }
    return control;
  }

  private Control.Setback setback() {
    if (!programme) {
      // Want never changes, so nothing carries out a setback; heads is the mode that needs nothing
      // else.
      section
          .value(ControlKeys.SET_BACK_BY)
          .ifPresent(v -> v.choice((Form.Choice) ControlKeys.SET_BACK_BY.form()));
      section
          .value(ControlKeys.SETBACK)
          .ifPresent(v -> v.warn("has no effect without a programme"));
      section.numberIfWritten(ControlKeys.SETBACK);
      return Control.Setback.HEADS;
    }
    return switch (section.choice(ControlKeys.SET_BACK_BY)) {
      case ControlKeys.BY_HEADS -> Control.Setback.HEADS;
      case ControlKeys.OFF -> Control.Setback.OFF;
      default -> Control.Setback.SOURCE;
    };
  }

  /** Without a programme it means nothing and is not listed as a default. */
  private double differential() {
    return programme
        ? section.number(ControlKeys.DIFFERENTIAL)
        : section.numberIfWritten(ControlKeys.DIFFERENTIAL).orElse(0.5);
  }

  private Thermostat thermostat() {
    Optional<Value> value = section.value(ControlKeys.THERMOSTAT);
    if (value.isEmpty()) {
      section.note(ControlKeys.THERMOSTAT, ControlKeys.NONE);
      return new Thermostat.None();
    }
    Section s = value.get().section((Form.Variants) ControlKeys.THERMOSTAT.form());
    return switch (s.variant(Key.KIND)) {
      case ControlKeys.ON_OFF ->
          new Thermostat.OnOff(
              s.number(ControlKeys.THERMOSTAT_DIFFERENTIAL), s.number(ControlKeys.TIME_CONSTANT));
      case ControlKeys.TIME_PROPORTIONAL ->
          new Thermostat.TimeProportional(
              s.number(ControlKeys.CYCLE),
              s.number(ControlKeys.THERMOSTAT_BAND),
              s.number(ControlKeys.TIME_CONSTANT));
      default -> new Thermostat.None();
    };
  }

  private Optional<FlowCurve> flowCurve(Source source, String it) {
    if (!section.has(ControlKeys.WEATHER_COMPENSATION)) {
      section.note(ControlKeys.WEATHER_COMPENSATION, "none");
      return Optional.empty();
    }
    Section s = section.section(ControlKeys.WEATHER_COMPENSATION);
    double highest = s.number(ControlKeys.HIGHEST, source.flowSetPoint());
    double lowest = s.number(ControlKeys.LOWEST);
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
        new FlowCurve(
            s.number(ControlKeys.SLOPE),
            s.number(ControlKeys.SHIFT),
            lowest,
            highest,
            s.number(ControlKeys.ROOM_INFLUENCE)));
  }

  private OptimumStart optimumStart() {
    Optional<Value> value = section.value(ControlKeys.OPTIMUM_START);
    if (value.isEmpty()) {
      if (programme) {
        section.note(ControlKeys.OPTIMUM_START, "none");
      }
      return new OptimumStart.None();
    }
    if (!programme) {
      value.get().warn("has no effect without a programme");
    }
    Section s = value.get().section((Form.Variants) ControlKeys.OPTIMUM_START.form());
    return switch (s.variant(Key.KIND)) {
      case ControlKeys.FIXED -> new OptimumStart.Fixed(s.number(ControlKeys.LEAD));
      case ControlKeys.LEARNED ->
          new OptimumStart.Learned(
              s.number(ControlKeys.FIRST_GUESS), s.number(ControlKeys.LONGEST));
      default -> new OptimumStart.None();
    };
  }

  private boolean interlock(List<Arrangement> arrangements) {
    boolean wanted = section.yesNo(ControlKeys.INTERLOCK);
    for (Arrangement arrangement : arrangements) {
      boolean actuated = arrangement.branches().stream().anyMatch(b -> b.valve().electric());
      if (wanted && !actuated) {
        section
            .value(ControlKeys.INTERLOCK)
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
