package settle.scenarios.house;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.ArrayList;
import java.util.List;
import settle.scenarios.format.Form;
import settle.scenarios.format.Form.Several;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.house.RunSettings;
import settle.sim.units.Times;

/** How long the house is run, and from what state. */
public final class RunSection {

  /** A time step, wherever it is asked for. */
  public static final Form.Quantity STEP =
      Forms.of(Dimension.DURATION, 0.1, 3600, "a tenth of a second to an hour");

  private static final Key LENGTH =
      Key.optional(
              "length",
              Forms.of(Dimension.DURATION, 60, 400 * Times.DAY, "a minute to a year and a month"),
              "time recorded")
          .orElse("48 h", "a day to settle and a day to see it repeat, " + PRACTICE);
  private static final Key LEAD_IN =
      Key.optional(
              "lead in",
              Forms.of(Dimension.DURATION, 0, 60 * Times.DAY, "none to two months"),
              "time run before recording, so that walls reach their daily cycle")
          .orElse(
              "24 h where there is a programme, otherwise none: a warm-up from the start temperature");
  private static final Key START_TEMPERATURE =
      Key.optional(
              "start temperature",
              Forms.TEMPERATURE.usually(-5, 25),
              "temperature of air, walls and water at the start")
          .orElse("16 °C", "a house left unheated for some hours, " + PRACTICE);
  private static final Key SHORTEST_STEP =
      Key.optional("shortest step", STEP, "time step after an event")
          .orElse("10 s", "chosen by the engine");
  private static final Key LONGEST_STEP =
      Key.optional("longest step", STEP, "time step in quiet stretches")
          .orElse("chosen by the engine");
  private static final Key PROFILES_AT =
      Key.optional(
              "profiles at",
              new Several(
                  Forms.of(Dimension.DURATION, 1, 400 * Times.DAY, "a second to the longest run")),
              "times after the first call for heat at which the temperature along each emitter is kept")
          .orElse("half a minute to half an hour");
  public static final Table RUN_TABLE =
      Table.of(
          "how long and from what state",
          LENGTH,
          LEAD_IN,
          START_TEMPERATURE,
          SHORTEST_STEP,
          LONGEST_STEP,
          PROFILES_AT);

  private RunSection() {}

  /**
   * The run.
   *
   * @param programme whether any room has one: it decides about the lead-in
   */
  static RunSettings run(Section s, boolean programme) {
    double shortest = s.number(SHORTEST_STEP);
    double longest = s.number(LONGEST_STEP, RunSettings.DEFAULT_LONGEST_STEP);
    if (longest < shortest) {
      s.problem(
          "found the longest step, "
              + Dimension.DURATION.show(longest)
              + ", below the shortest, "
              + Dimension.DURATION.show(shortest));
      longest = shortest;
    }
    return new RunSettings(
        s.number(START_TEMPERATURE),
        s.number(LEAD_IN, programme ? Times.DAY : 0),
        s.number(LENGTH),
        shortest,
        longest,
        profileTimes(s));
  }

  private static List<Double> profileTimes(Section s) {
    List<Value> values = s.several(PROFILES_AT);
    if (values.isEmpty()) {
      List<String> shown = new ArrayList<>();
      RunSettings.DEFAULT_PROFILE_TIMES.forEach(t -> shown.add(Dimension.DURATION.show(t)));
      s.note(PROFILES_AT, String.join(", ", shown));
      return RunSettings.DEFAULT_PROFILE_TIMES;
    }
    List<Double> times = new ArrayList<>();
    Form.Quantity form = (Form.Quantity) ((Form.Several) PROFILES_AT.form()).each();
    values.forEach(v -> times.add(v.number(form)));
    return times;
  }
}
