package settle.scenarios.house;

import java.util.ArrayList;
import java.util.List;
import settle.scenarios.format.Form;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.house.RunSettings;

/** Reads the run. */
final class RunReader {

  private static final double DAY = 86_400;

  private RunReader() {}

  /**
   * The run.
   *
   * @param programme whether any room has one: it decides about the lead-in
   */
  static RunSettings run(Section s, boolean programme) {
    double shortest = s.number(RunKeys.SHORTEST_STEP);
    double longest = s.number(RunKeys.LONGEST_STEP, RunSettings.DEFAULT_LONGEST_STEP);
    if (longest < shortest) {
      s.problem(
          "found the longest step, "
              + Dimension.DURATION.show(longest)
              + ", below the shortest, "
              + Dimension.DURATION.show(shortest));
      longest = shortest;
    }
    return new RunSettings(
        s.number(RunKeys.START_TEMPERATURE),
        s.number(RunKeys.LEAD_IN, programme ? DAY : 0),
        s.number(RunKeys.LENGTH),
        shortest,
        longest,
        profileTimes(s));
  }

  private static List<Double> profileTimes(Section s) {
    List<Value> values = s.several(RunKeys.PROFILES_AT);
    if (values.isEmpty()) {
      List<String> shown = new ArrayList<>();
      RunSettings.DEFAULT_PROFILE_TIMES.forEach(t -> shown.add(Dimension.DURATION.show(t)));
      s.note(RunKeys.PROFILES_AT, String.join(", ", shown));
      return RunSettings.DEFAULT_PROFILE_TIMES;
    }
    List<Double> times = new ArrayList<>();
    Form.Quantity form = (Form.Quantity) ((Form.Several) RunKeys.PROFILES_AT.form()).each();
    values.forEach(v -> times.add(v.number(form)));
    return times;
  }
}
