package settle.scenarios.edit;

import static settle.scenarios.edit.Editor.at;
import static settle.scenarios.edit.Editor.further;

import java.util.List;
import settle.scenarios.control.ControlSection;
import settle.scenarios.definition.Kind;
import settle.scenarios.emitter.EmitterKinds;
import settle.scenarios.fabric.Glazing;
import settle.scenarios.format.Typed;
import settle.scenarios.house.ArrangementKeys;
import settle.scenarios.house.ScenarioFormat;
import settle.scenarios.pipes.DistributionKeys;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.room.RoomKeys;
import settle.scenarios.source.SourceKind;
import settle.scenarios.source.SourceSection;
import settle.scenarios.valve.ValveKeys;
import settle.sim.control.FlowCurve;
import settle.sim.emitter.Emitter;
import settle.sim.fabric.Window;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Bypass;
import settle.sim.hydraulics.Lockshield;
import settle.sim.measure.Measure;
import settle.sim.room.Room;
import settle.sim.source.Buffer;

/**
 * Writes measures into the text of the scenario they were found for. What is not in the catalogue,
 * a richer profile or a larger source, is described in the scenario's own definitions.
 */
public final class RemediedScenario {

  private final Editor editor;
  private final String arrangement;

  /** The house with what has been written so far. */
  private House house;

  private RemediedScenario(Editor editor, House house, String arrangement) {
    this.editor = editor;
    this.house = house;
    this.arrangement = arrangement;
  }

  /**
   * The text with measures carried out, every other character as it was.
   *
   * @param text a scenario without faults
   * @param house its house
   * @param arrangement name of the arrangement that they were found for
   * @param measures what to write
   * @param format what the scenario may say
   */
  public static String write(
      String text, House house, String arrangement, List<Measure> measures, ScenarioFormat format) {
    RemediedScenario scenario = new RemediedScenario(new Editor(text, format), house, arrangement);
    measures.forEach(scenario::write);
    return scenario.editor.text.text();
  }

  /** What a measure changes is read off the house with it, whatever measure it is. */
  private void write(Measure measure) {
    House before = house;
    house = measure.on(house, arrangement);
    switch (measure.kind()) {
      case HEADS -> heads(before);
      case LOCKSHIELD, THROTTLE -> lockshields(before);
      case BALANCE ->
          editor.put(
              further(at(ScenarioFormat.ARRANGEMENTS), arrangement),
              ArrangementKeys.BALANCED,
              "yes");
      case REFERENCE_ROOM ->
          editor.put(
              at(ScenarioFormat.CONTROL),
              ControlSection.REFERENCE_ROOM,
              Typed.word(house.control().referenceRoom()));
      case PREHEAT -> editor.lead(measure.to());
      case CURVE -> curve(before);
      case FLOW_TEMPERATURE -> editor.flowTemperature(measure.to());
      case PUMP ->
          editor.put(at(ScenarioFormat.DISTRIBUTION), DistributionKeys.PUMP_HEAD, measure.to());
      case AIR_CHANGE -> airChange(measure.room(), measure.to());
      case BYPASS -> house.distribution().bypass().ifPresent(this::bypass);
      case BUFFER -> house.buffer().ifPresent(this::buffer);
      case PROFILE, LENGTH, RADIATOR -> emitters(before);
      case WINDOW -> glazing(measure.room(), before);
      case SOURCE -> source();
    }
  }

  private List<Branch> branches(House of) {
    return of.arrangement(arrangement).branches();
  }

  private List<Object> branch(int position) {
    return Editor.branch(house.arrangement(arrangement), position);
  }

  // Settings

  private void heads(House before) {
    List<Branch> is = branches(house);
    for (int b = 0; b < is.size(); b++) {
      double set = is.get(b).valve().setPoint();
      if (set != branches(before).get(b).valve().setPoint() && !Double.isNaN(set)) {
        editor.put(branch(b), ValveKeys.SET, set, ValveKeys.KNOB);
      }
    }
  }

  private void lockshields(House before) {
    List<Branch> is = branches(house);
    for (int b = 0; b < is.size(); b++) {
      Lockshield set = is.get(b).lockshield();
      if (!set.equals(branches(before).get(b).lockshield())) {
        editor.put(
            branch(b), ArrangementKeys.LOCKSHIELD_TURNS, set.turns(), ArrangementKeys.LOCKSHIELD);
      }
    }
  }

  private void curve(House before) {
    FlowCurve was = before.control().flowCurve().orElseThrow();
    FlowCurve after = house.control().flowCurve().orElseThrow();
    if (after.slope() != was.slope()) {
      editor.slope(after.slope());
    }
    if (after.shift() != was.shift()) {
      editor.curve(ControlSection.SHIFT, after.shift());
    }
    if (after.highest() != was.highest()) {
      editor.curve(ControlSection.HIGHEST, after.highest());
    }
  }

  // Plant

  private void bypass(Bypass bypass) {
    editor.put(
        at(ScenarioFormat.DISTRIBUTION),
        DistributionKeys.BYPASS,
        new Typed()
            .put(DistributionKeys.SET_PRESSURE, bypass.setPressure())
            .put(DistributionKeys.BAND, bypass.band())
            .put(DistributionKeys.BYPASS_KV, bypass.kv())
            .toString());
  }

  private void buffer(Buffer buffer) {
    Typed keys =
        new Typed()
            .put(SourceSection.VOLUME, buffer.volume())
            .put(
                SourceSection.PLACEMENT,
                switch (buffer.placement()) {
                  case FLOW -> SourceSection.FLOW;
                  case RETURN -> SourceSection.RETURN;
                  case PARALLEL -> SourceSection.PARALLEL;
                });
    if (buffer.placement() == Buffer.Placement.PARALLEL) {
      double flow = house.water().litresPerHour(buffer.sourceFlow());
      keys.put(SourceSection.SOURCE_FLOW, Typed.number(Typed.rounded(flow)) + " l/h");
    }
    editor.put(at(editor.format.source()), SourceSection.BUFFER, keys.toString());
  }

  private void source() {
    List<Object> place = at(editor.format.source());
    for (SourceKind kind : editor.format.sources()) {
      if (editor.has(place, kind.key())) {
        kind.called(house.source())
            .ifPresentOrElse(
                name ->
                    editor.put(
                        place,
                        kind.key(),
                        Typed.word(
                            editor.define(
                                kind.section().orElseThrow(), name, kind.typed(house.source())))),
                () ->
                    editor.put(
                        place,
                        SourceSection.LARGEST_OUTPUT,
                        house.source().maximumPower(house.designOutdoor(), 0)));
      }
    }
  }

  // Rooms

  /** A heat loss that is known as one figure contains the air change, so it falls with it. */
  private void airChange(String name, double to) {
    List<Object> place = further(at(ScenarioFormat.ROOMS), name);
    editor.put(place, RoomKeys.AIR_CHANGE, to);
    Room room = house.rooms().get(house.roomIndex(name));
    if (room.directLoss().whole()) {
      double loss = room.directLoss().conductance() + room.ventilationConductance();
      editor.put(place, RoomKeys.HEAT_LOSS, Typed.text(Dimension.CONDUCTANCE, loss));
    }
  }

  /** One cut to another length stays what it is; any other is described anew. */
  private void emitters(House before) {
    List<Branch> is = branches(house);
    for (int b = 0; b < is.size(); b++) {
      Emitter was = branches(before).get(b).emitter();
      Emitter emitter = is.get(b).emitter();
      if (emitter.equals(was)) {
        continue;
      }
      if (!emitter.length().equals(was.length())) {
        editor.put(branch(b), ArrangementKeys.LENGTH, emitter.length().getAsDouble());
      } else {
        emitter(
            b,
            emitter,
            emitter
                .run()
                .map(run -> Dimension.POWER_PER_LENGTH.show(run.outputPerMetre()))
                .orElseGet(() -> Dimension.POWER.show(Typed.rounded(emitter.ratedOutput()))));
      }
    }
  }

  /** Describes an emitter anew, called by its output, and fits it. */
  private void emitter(int branch, Emitter emitter, String output) {
    Typed keys = Kind.typed(editor.format.emitters(), emitter);
    String name = editor.define(EmitterKinds.SECTION, emitter.name() + " of " + output, keys);
    editor.put(branch(branch), ArrangementKeys.EMITTER, Typed.word(name));
  }

  /** Openings stand in the text in the order in which a room has them. */
  private void glazing(String name, House before) {
    int room = house.roomIndex(name);
    List<Window> was = before.rooms().get(room).windows();
    List<Window> is = house.rooms().get(room).windows();
    List<Object> surfaces = further(at(ScenarioFormat.ROOMS), name, RoomKeys.SURFACES.name());
    int next = 0;
    for (int i = 0; i < editor.text.count(surfaces); i++) {
      List<Object> openings = further(surfaces, i, RoomKeys.OPENINGS.name());
      int count = editor.text.count(openings);
      for (int j = 0; j < count; j++) {
        Window opening = is.get(next);
        if (!opening.equals(was.get(next++))) {
          List<Object> place = further(openings, j);
          editor.put(place, RoomKeys.OPENING_U, opening.uValue(), RoomKeys.OPENING_TYPE);
          editor.put(place, Glazing.G_VALUE, opening.gValue());
        }
      }
    }
  }
}
