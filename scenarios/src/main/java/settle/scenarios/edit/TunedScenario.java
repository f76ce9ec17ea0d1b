package settle.scenarios.edit;

import static settle.scenarios.edit.Editor.at;
import static settle.scenarios.edit.Editor.further;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import settle.scenarios.control.ControlSection;
import settle.scenarios.definition.Kind;
import settle.scenarios.format.Key;
import settle.scenarios.house.ArrangementKeys;
import settle.scenarios.house.ScenarioFormat;
import settle.scenarios.pipes.DistributionKeys;
import settle.scenarios.valve.ValveKeys;
import settle.scenarios.valve.ValveKinds;
import settle.sim.house.Branch;
import settle.sim.tuning.Plant;
import settle.sim.tuning.Setting;
import settle.sim.valve.KnobScale;
import settle.sim.valve.Valve;

/** Writes settings into the text of the scenario they were found for. */
public final class TunedScenario {

  /** Longest part of a room's name that goes into a name made of it. */
  private static final int LONGEST_ROOM = 40;

  private final Editor editor;
  private final Map<Integer, String> anew = new HashMap<>();
  private final Plant tuned;

  private TunedScenario(Editor editor, Plant tuned) {
    this.editor = editor;
    this.tuned = tuned;
  }

  /**
   * The text with settings changed.
   *
   * @param text a scenario without faults
   * @param tuned its house and arrangement as they are to be set
   * @param settings what to write
   * @param format what the scenario may say
   */
  public static String write(
      String text, Plant tuned, List<Setting> settings, ScenarioFormat format) {
    TunedScenario scenario = new TunedScenario(new Editor(text, format), tuned);
    settings.forEach(scenario::write);
    return scenario.editor.text.text();
  }

  private void write(Setting setting) {
    double value = setting.of(tuned);
    switch (setting.kind()) {
      case HEAD -> heads(setting.where());
      case FLOW_TEMPERATURE -> editor.flowTemperature(value);
      case CURVE_SLOPE -> editor.slope(value);
      case CURVE_SHIFT -> editor.curve(ControlSection.SHIFT, value);
      case START_LEAD -> editor.lead(value);
      case LOCKSHIELD_TURNS ->
          editor.put(
              branch(setting.branch()),
              ArrangementKeys.LOCKSHIELD_TURNS,
              value,
              ArrangementKeys.LOCKSHIELD);
      case PUMP_HEAD ->
          editor.put(at(ScenarioFormat.DISTRIBUTION), DistributionKeys.PUMP_HEAD, value);
      case THERMOSTAT_DIFFERENTIAL ->
          editor.put(
              at(ScenarioFormat.CONTROL, ControlSection.THERMOSTAT),
              ControlSection.THERMOSTAT_DIFFERENTIAL,
              value);
      case MOTOR_GAIN -> motor(setting.branch(), ValveKeys.GAIN, value);
      case MOTOR_INTEGRAL_TIME -> motor(setting.branch(), ValveKeys.INTEGRAL_TIME, value);
    }
  }

  private void heads(String room) {
    List<Branch> branches = tuned.arrangement().branches();
    for (int b = 0; b < branches.size(); b++) {
      Valve valve = branches.get(b).valve();
      if (!branches.get(b).room().equals(room) || !valve.hasHead()) {
        continue;
      }
      if (editor.has(branch(b), ValveKeys.KNOB)) {
        editor.put(branch(b), ValveKeys.KNOB, KnobScale.position(valve.setPoint()));
      } else {
        editor.put(branch(b), ValveKeys.SET, valve.setPoint());
      }
    }
  }

  private List<Object> branch(int position) {
    return Editor.branch(tuned.arrangement(), position);
  }

  /**
   * Gains stand where a head is described. One that others use too, or that the catalogue
   * describes, is described anew for this branch.
   */
  private void motor(int position, Key key, double value) {
    Branch branch = tuned.arrangement().branches().get(position);
    Valve head = branch.valve();
    List<Object> valves = at(ValveKinds.SECTION.key());
    List<Object> definition = further(valves, anew.getOrDefault(position, head.name()));
    if (editor.text.has(definition) && (anew.containsKey(position) || users(head.name()) == 1)) {
      editor.put(definition, key, value);
      return;
    }
    String name = nameFor(branch.room(), valves);
    editor.text.put(further(valves, name), Kind.typed(editor.format.valves(), head).toString(), "");
    editor.put(branch(position), ArrangementKeys.VALVE, name);
    anew.put(position, name);
  }

  /** Branches of the whole scenario that have a valve of a name. */
  private long users(String valve) {
    return tuned.house().arrangements().stream()
        .flatMap(a -> a.branches().stream())
        .filter(b -> b.valve().name().equals(valve))
        .count();
  }

  private String nameFor(String room, List<Object> valves) {
    String name =
        (room.length() > LONGEST_ROOM ? room.substring(0, LONGEST_ROOM) : room) + " motor head";
    String free = name;
    for (int number = 2; editor.text.has(further(valves, free)); number++) {
      free = name + " " + number;
    }
    return free;
  }
}
