package settle.scenarios.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import settle.scenarios.format.DefinitionKeys;
import settle.scenarios.format.Form;
import settle.scenarios.format.HeatPumpKeys;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.emitter.PlainPlate;
import settle.sim.fabric.Layer;
import settle.sim.source.Boiler;
import settle.sim.source.BoilerEfficiency;
import settle.sim.valve.FixedOpening;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.WaxValve;

/** Reads definitions: those of the catalogue's files and those a scenario adds. */
public final class DefinitionsReader {

  /**
   * Declared output per metre over a plain plate's that deserves a question: twice the plate is
   * common with air behind it.
   */
  private static final double MOST_PLATES = 2.5;

  /** Emissivity of common paints. */
  private static final double PAINT = 0.9;

  /** Any flow temperature: the pattern of a boiler has none of its own. */
  private static final double UNSET = 20;

  private final Definitions known;

  private DefinitionsReader(Definitions known) {
    this.known = known;
  }

  /**
   * Reads the definitions of a section and adds them to others.
   *
   * @param section a scenario, or a whole file of the catalogue
   * @param others what there is already; not modified
   * @return both
   */
  public static Definitions read(Section section, Definitions others) {
    Definitions all = new Definitions(others);
    DefinitionsReader reader = new DefinitionsReader(all);
    reader.add(section, DefinitionKeys.MATERIALS, all.materials, reader::material);
    reader.add(section, DefinitionKeys.CONSTRUCTIONS, all.constructions, reader::construction);
    reader.add(section, DefinitionKeys.GLAZINGS, all.glazing, reader::glazing);
    reader.add(section, DefinitionKeys.EMITTERS, all.emitters, reader::emitter);
    reader.add(section, DefinitionKeys.PIPES, all.pipes, reader::pipe);
    reader.add(section, DefinitionKeys.VALVES, all.valves, reader::valve);
    reader.add(section, DefinitionKeys.BOILERS, all.boilers, reader::boiler);
    reader.add(section, DefinitionKeys.HEAT_PUMPS, all.heatPumps, reader::heatPump);
    return all;
  }

  /**
   * Adds one definition that is read when it is first asked for.
   *
   * @param section key of the section it stands in
   * @param name its name
   * @param value gives what stands under the name
   * @param all what it is added to
   */
  static void addUnread(String section, String name, Supplier<Value> value, Definitions all) {
    DefinitionsReader reader = new DefinitionsReader(all);
    Supplier<Entry> entry = () -> new Entry(name, value.get());
    if (section.equals(DefinitionKeys.MATERIALS.name())) {
      all.materials.putUnread(name, () -> reader.material(entry.get()));
    } else if (section.equals(DefinitionKeys.CONSTRUCTIONS.name())) {
      all.constructions.putUnread(name, () -> reader.construction(entry.get()));
    } else if (section.equals(DefinitionKeys.GLAZINGS.name())) {
      all.glazing.putUnread(name, () -> reader.glazing(entry.get()));
    } else if (section.equals(DefinitionKeys.EMITTERS.name())) {
      all.emitters.putUnread(name, () -> reader.emitter(entry.get()));
    } else if (section.equals(DefinitionKeys.PIPES.name())) {
      all.pipes.putUnread(name, () -> reader.pipe(entry.get()));
    } else if (section.equals(DefinitionKeys.VALVES.name())) {
      all.valves.putUnread(name, () -> reader.valve(entry.get()));
    } else if (section.equals(DefinitionKeys.BOILERS.name())) {
      all.boilers.putUnread(name, () -> reader.boiler(entry.get()));
    } else if (section.equals(DefinitionKeys.HEAT_PUMPS.name())) {
      all.heatPumps.putUnread(name, () -> reader.heatPump(entry.get()));
    } else {
      throw new IllegalArgumentException("no section '" + section + "' in a catalogue");
    }
  }

  /** A defined thing under its name. */
  private record Entry(String name, Value value) {}

  private <T> void add(Section section, Key key, Map<String, T> to, Function<Entry, T> read) {
    for (Map.Entry<String, Value> named : section.named(key).entrySet()) {
      if (to.containsKey(named.getKey())) {
        named.getValue().problem("the catalogue has this name already; choose another");
        continue;
      }
      to.put(named.getKey(), read.apply(new Entry(named.getKey(), named.getValue())));
    }
  }

  private static Described described(String name, Section section) {
    return new Described(
        name, section.words(DefinitionKeys.ABOUT, ""), section.words(DefinitionKeys.SOURCE, ""));
  }

  private Material material(Entry entry) {
    Section s = entry.value().section(DefinitionKeys.MATERIAL_TABLE);
    return new Material(
        described(entry.name(), s),
        s.number(DefinitionKeys.CONDUCTIVITY),
        s.number(DefinitionKeys.DENSITY),
        s.number(DefinitionKeys.SPECIFIC_HEAT));
  }

  private MakeUp construction(Entry entry) {
    Section s = entry.value().section(DefinitionKeys.CONSTRUCTION_TABLE);
    Described described = described(entry.name(), s);
    Optional<Value> layers = s.value(DefinitionKeys.LAYERS);
    if (layers.isPresent()) {
      boolean fromBelow =
          s.value(DefinitionKeys.LAYERS_FROM)
              .map(v -> v.choice((Form.Choice) DefinitionKeys.LAYERS_FROM.form()).equals("below"))
              .orElse(false);
      return new MakeUp.Layered(described, layers(layers.get(), known), fromBelow);
    }
    return lumped(described, s);
  }

  /**
   * An element known by U-value and mass class, read from the section that has both keys.
   *
   * @param described its name
   * @param section the section
   * @return the element
   */
  public static MakeUp.Lumped lumped(Described described, Section section) {
    return new MakeUp.Lumped(
        described,
        section.number(DefinitionKeys.U_VALUE),
        MassClass.of(section.choice(DefinitionKeys.MASS)));
  }

  /**
   * A list of layers.
   *
   * @param value the list
   * @param known materials by name
   * @return the layers, from the room outwards
   */
  public static List<Layer> layers(Value value, Definitions known) {
    List<Layer> layers = new ArrayList<>();
    for (Value item : value.several()) {
      layers.add(layer(item.section(DefinitionKeys.LAYER_TABLE), known));
    }
    return layers;
  }

  private static Layer layer(Section s, Definitions known) {
    Optional<Value> material = s.value(DefinitionKeys.LAYER_MATERIAL);
    if (s.has(DefinitionKeys.LAYER_RESISTANCE)) {
      refuse(
          s,
          "resistance",
          DefinitionKeys.LAYER_THICKNESS,
          DefinitionKeys.LAYER_DENSITY,
          DefinitionKeys.LAYER_SPECIFIC_HEAT);
      return Layer.cavity(
          s.words(DefinitionKeys.LAYER_NAME, "air layer"),
          s.number(DefinitionKeys.LAYER_RESISTANCE));
    }
    if (material.isPresent()) {
      refuse(s, "material", DefinitionKeys.LAYER_DENSITY, DefinitionKeys.LAYER_SPECIFIC_HEAT);
      String name =
          material
              .get()
              .reference(
                  (Form.Reference) DefinitionKeys.LAYER_MATERIAL.form(),
                  known.materials().keySet(),
                  Catalogue.ANY_MATERIAL);
      return known.materials().get(name).layer(needed(s, DefinitionKeys.LAYER_THICKNESS));
    }
    return Layer.solid(
        s.words(DefinitionKeys.LAYER_NAME, "layer"),
        needed(s, DefinitionKeys.LAYER_THICKNESS),
        s.number(DefinitionKeys.LAYER_CONDUCTIVITY),
        needed(s, DefinitionKeys.LAYER_DENSITY),
        needed(s, DefinitionKeys.LAYER_SPECIFIC_HEAT));
  }

  private static double needed(Section s, Key key) {
    if (!s.has(key) && s.isSound()) {
      s.lacks(key);
    }
    return s.number(key);
  }

  private static void refuse(Section s, String given, Key... keys) {
    for (Key key : keys) {
      s.value(key)
          .ifPresent(v -> v.problem("does not go with '" + given + "'; leave one of them out"));
    }
  }

  private Glazing glazing(Entry entry) {
    Section s = entry.value().section(DefinitionKeys.GLAZING_TABLE);
    return new Glazing(
        described(entry.name(), s),
        s.number(DefinitionKeys.OPENING_U),
        s.number(DefinitionKeys.OPENING_G));
  }

  private EmitterType emitter(Entry entry) {
    Section s = entry.value().section(DefinitionKeys.EMITTER_FORM);
    String kind = s.variant(DefinitionKeys.KIND);
    Described described = described(entry.name(), s);
    EmitterType.Law law =
        new EmitterType.Law(
            s.number(DefinitionKeys.EXPONENT),
            s.number(DefinitionKeys.METAL_HEAT),
            s.number(DefinitionKeys.RADIANT_SHARE));
    if (kind.equals(DefinitionKeys.PERIMETER)) {
      EmitterType.Perimeter skirting =
          new EmitterType.Perimeter(
              described,
              s.number(DefinitionKeys.OUTPUT_PER_METRE),
              law,
              s.number(DefinitionKeys.WATER_PER_METRE),
              s.number(DefinitionKeys.METAL_PER_METRE),
              s.number(DefinitionKeys.FACE_HEIGHT),
              s.number(DefinitionKeys.FACE_DEPTH),
              s.number(DefinitionKeys.LOWER_CONNECTION),
              s.number(DefinitionKeys.UPPER_CONNECTION));
      warnOfImplausibleOutput(s, skirting);
      return skirting;
    }
    s.numberIfWritten(DefinitionKeys.HEIGHT);
    if (kind.equals(DefinitionKeys.PANEL)) {
      return new EmitterType.Panel(
          described,
          s.number(DefinitionKeys.OUTPUT_PER_METRE),
          law,
          s.number(DefinitionKeys.WATER_PER_METRE),
          s.number(DefinitionKeys.METAL_PER_METRE));
    }
    return new EmitterType.OneSize(
        described,
        s.number(DefinitionKeys.OUTPUT),
        law,
        s.number(DefinitionKeys.WATER),
        s.number(DefinitionKeys.METAL));
  }

  private static void warnOfImplausibleOutput(Section s, EmitterType.Perimeter skirting) {
    Optional<Value> output = s.value(DefinitionKeys.OUTPUT_PER_METRE);
    if (output.isEmpty() || !s.has(DefinitionKeys.FACE_HEIGHT)) {
      return;
    }
    double plate = PlainPlate.outputPerMetre(skirting.faceHeight(), PAINT, 70, 20);
    if (skirting.outputPerMetre() > MOST_PLATES * plate) {
      output
          .get()
          .warn(
              Dimension.POWER_PER_LENGTH.show(skirting.outputPerMetre())
                  + " at 50 K is more than "
                  + MOST_PLATES
                  + " times the "
                  + Dimension.POWER_PER_LENGTH.show(Math.rint(plate))
                  + " that a plain plate "
                  + Dimension.LENGTH.show(skirting.faceHeight())
                  + " high gives by natural convection (Churchill and Chu) and radiation; ask for a"
                  + " test report to EN 442");
    }
  }

  private PipeType pipe(Entry entry) {
    Section s = entry.value().section(DefinitionKeys.PIPE_TABLE);
    return new PipeType(
        described(entry.name(), s),
        s.number(DefinitionKeys.BORE),
        s.number(DefinitionKeys.WALL),
        PipeMaterial.of(s.choice(DefinitionKeys.MADE_OF)),
        s.number(DefinitionKeys.ROUGHNESS));
  }

  private ValveType valve(Entry entry) {
    Section s = entry.value().section(DefinitionKeys.VALVE_FORM);
    Described described = described(entry.name(), s);
    double kvOpen = s.number(DefinitionKeys.KV_OPEN);
    return switch (s.variant(DefinitionKeys.KIND)) {
      case DefinitionKeys.FIXED ->
          new ValveType.Fixed(described, new FixedOpening(entry.name(), kvOpen));
      case DefinitionKeys.ACTUATOR ->
          new ValveType.Actuator(
              described,
              new OnOffActuator(
                  entry.name(),
                  UNSET,
                  s.number(DefinitionKeys.ACTUATOR_DIFFERENTIAL),
                  s.number(DefinitionKeys.ACTUATOR_TRAVEL),
                  kvOpen,
                  sensing(s)));
      case DefinitionKeys.MOTOR -> {
        double integralTime = s.number(DefinitionKeys.INTEGRAL_TIME);
        yield new ValveType.Motor(
            described,
            new MotorHead(
                entry.name(),
                UNSET,
                s.number(DefinitionKeys.GAIN),
                integralTime > 0 ? integralTime : Double.POSITIVE_INFINITY,
                s.number(DefinitionKeys.MOTOR_TRAVEL),
                kvOpen,
                sensing(s)));
      }
      default -> thermostatic(described, s, kvOpen);
    };
  }

  private static RoomSensing sensing(Section s) {
    return s.choice(DefinitionKeys.SENSES).equals("air") ? RoomSensing.AIR : RoomSensing.OPERATIVE;
  }

  private static ValveType thermostatic(Described described, Section s, double kvOpen) {
    double kvNominal = s.number(DefinitionKeys.KV_NOMINAL);
    if (kvNominal > kvOpen) {
      s.problem(
          "found Kv "
              + Dimension.FLOW_COEFFICIENT.show(kvNominal)
              + " at the set temperature above Kvs "
              + Dimension.FLOW_COEFFICIENT.show(kvOpen)
              + " fully open, expected at most that");
      kvNominal = kvOpen;
    }
    return new ValveType.Thermostatic(
        described,
        new WaxValve(
            described.name(),
            UNSET,
            s.number(DefinitionKeys.PROPORTIONAL_BAND),
            s.number(DefinitionKeys.HYSTERESIS),
            s.number(DefinitionKeys.LAG),
            s.number(DefinitionKeys.SECOND_LAG),
            s.number(DefinitionKeys.DEAD_TIME),
            s.number(DefinitionKeys.WATER_INFLUENCE),
            s.number(DefinitionKeys.HEAD_BIAS),
            s.number(DefinitionKeys.PRESSURE_INFLUENCE),
            kvNominal,
            kvOpen,
            sensing(s)));
  }

  private BoilerType boiler(Entry entry) {
    Section s = entry.value().section(DefinitionKeys.BOILER_TABLE);
    double largest = s.number(DefinitionKeys.LARGEST_OUTPUT);
    double least = s.number(DefinitionKeys.LEAST_OUTPUT);
    if (least > largest) {
      s.problem(
          "found least output "
              + Dimension.POWER.show(least)
              + " above the largest, "
              + Dimension.POWER.show(largest));
      least = largest;
    }
    return new BoilerType(
        described(entry.name(), s),
        new Boiler(
            entry.name(),
            largest,
            least,
            UNSET,
            s.number(DefinitionKeys.SWITCHING_BAND),
            s.number(DefinitionKeys.BOILER_CAPACITY),
            s.number(DefinitionKeys.CONTROL_TIME),
            s.number(DefinitionKeys.ANTI_CYCLE),
            s.number(DefinitionKeys.OVER_RUN),
            s.number(DefinitionKeys.STANDING_LOSS),
            efficiency(s)));
  }

  private HeatPumpType heatPump(Entry entry) {
    Section s = entry.value().section(HeatPumpKeys.TABLE);
    return new HeatPumpType(described(entry.name(), s), HeatPumpReader.read(entry.name(), s));
  }

  private static BoilerEfficiency efficiency(Section boiler) {
    double dewPoint = boiler.number(DefinitionKeys.DEW_POINT);
    BoilerEfficiency standIn =
        new BoilerEfficiency(new double[] {50}, new double[] {1}, new double[][] {{0.9}}, dewPoint);
    if (!boiler.has(DefinitionKeys.EFFICIENCY)) {
      return standIn;
    }
    Section s = boiler.section(DefinitionKeys.EFFICIENCY);
    List<Value> loadValues = s.several(DefinitionKeys.EFFICIENCY_LOADS);
    List<Value> rowValues = s.several(DefinitionKeys.EFFICIENCY_ROWS);
    double[] loads =
        numbers(loadValues, Form.Quantity.of(Dimension.SHARE, 0, 1, "none of it to all of it"));
    double[] returns = new double[rowValues.size()];
    double[][] efficiencies = new double[rowValues.size()][];
    boolean sound = loads.length > 0 && returns.length > 0 && ascends(loads, loadValues);
    for (int i = 0; i < returns.length; i++) {
      Form.Keys rowForm = (Form.Keys) ((Form.Several) DefinitionKeys.EFFICIENCY_ROWS.form()).each();
      Section row = rowValues.get(i).section(rowForm.table());
      returns[i] = row.number(DefinitionKeys.EFFICIENCY_RETURN);
      efficiencies[i] =
          numbers(
              row.several(DefinitionKeys.EFFICIENCY_VALUES),
              Form.Quantity.of(Dimension.SHARE, 0.1, 1, "an open fire to no loss at all")
                  .usually(0.6, 0.99));
      if (efficiencies[i].length != loads.length) {
        row.problem(
            "found "
                + efficiencies[i].length
                + " values, expected one for each of "
                + loads.length
                + " loads");
        sound = false;
      }
    }
    sound &= ascends(returns, rowValues);
    return sound ? new BoilerEfficiency(returns, loads, efficiencies, dewPoint) : standIn;
  }

  private static boolean ascends(double[] grid, List<Value> places) {
    for (int i = 1; i < grid.length; i++) {
      if (!(grid[i] > grid[i - 1])) {
        places.get(i).problem("expected values that ascend from one to the next");
        return false;
      }
    }
    return true;
  }

  private static double[] numbers(List<Value> values, Form.Quantity form) {
    double[] numbers = new double[values.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = values.get(i).number(form);
    }
    return numbers;
  }
}
