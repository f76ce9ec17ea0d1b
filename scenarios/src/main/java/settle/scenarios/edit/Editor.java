package settle.scenarios.edit;

import java.util.ArrayList;
import java.util.List;
import settle.scenarios.control.ControlSection;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.format.Key;
import settle.scenarios.format.Typed;
import settle.scenarios.house.ArrangementKeys;
import settle.scenarios.house.ScenarioFormat;
import settle.scenarios.source.SourceKinds;
import settle.scenarios.source.SourceSection;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;

/** The text of a scenario, changed key by key: the places where more than one change is written. */
final class Editor {

  final ScenarioText text;
  final ScenarioFormat format;

  Editor(String text, ScenarioFormat format) {
    this.text = new ScenarioText(text);
    this.format = format;
  }

  /** The path of keys from the top. */
  static List<Object> at(Key... keys) {
    List<Object> path = new ArrayList<>();
    for (Key key : keys) {
      path.add(key.name());
    }
    return path;
  }

  /** A path that goes further. */
  static List<Object> further(List<Object> path, Object... steps) {
    List<Object> longer = new ArrayList<>(path);
    longer.addAll(List.of(steps));
    return longer;
  }

  /** The path to a branch: among the emitters of its room, the how manieth it is. */
  static List<Object> branch(Arrangement arrangement, int position) {
    List<Branch> branches = arrangement.branches();
    String room = branches.get(position).room();
    int item = 0;
    for (int b = 0; b < position; b++) {
      item += branches.get(b).room().equals(room) ? 1 : 0;
    }
    return further(
        at(ScenarioFormat.ARRANGEMENTS),
        arrangement.name(),
        ArrangementKeys.ROOMS.name(),
        room,
        item);
  }

  boolean has(List<Object> place, Key key) {
    return text.has(further(place, key.name()));
  }

  void put(List<Object> place, Key key, String value) {
    text.put(further(place, key.name()), value, "");
  }

  void put(List<Object> place, Key key, double si) {
    put(place, key, Typed.text(key, si));
  }

  /** Writes a quantity in place of a key that it excludes. */
  void put(List<Object> place, Key key, double si, Key rival) {
    text.put(further(place, key.name()), Typed.text(key, si), rival.name());
  }

  void flowTemperature(double value) {
    List<Object> source = at(format.source());
    Key fixed = SourceKinds.IDEAL.key();
    put(source, has(source, fixed) ? fixed : SourceSection.FLOW_TEMPERATURE, value);
  }

  /** How long before every period heating begins [s]. */
  void lead(double value) {
    List<Object> start = at(ScenarioFormat.CONTROL, ControlSection.OPTIMUM_START);
    if (has(start, ControlSection.LEAD)) {
      put(start, ControlSection.LEAD, value);
    } else {
      Typed keys = new Typed().put(Key.KIND, ControlSection.FIXED).put(ControlSection.LEAD, value);
      text.put(start, keys.toString(), "");
    }
  }

  void curve(Key key, double value) {
    put(at(ScenarioFormat.CONTROL, ControlSection.WEATHER_COMPENSATION), key, value);
  }

  void slope(double value) {
    put(
        at(ScenarioFormat.CONTROL, ControlSection.WEATHER_COMPENSATION),
        ControlSection.SLOPE,
        Typed.number(value));
  }

  /** Describes something under a name that is free; answers the name. */
  String define(DefinitionSection<?> section, String wanted, Typed description) {
    String name = wanted;
    for (int n = 2; text.has(further(at(section.key()), name)); n++) {
      name = wanted + " (" + n + ")";
    }
    text.put(further(at(section.key()), name), description.toString(), "");
    return name;
  }
}
