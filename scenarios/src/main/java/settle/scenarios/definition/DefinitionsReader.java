package settle.scenarios.definition;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import settle.scenarios.catalogue.Catalogue;
import settle.scenarios.emitter.EmitterKeys;
import settle.scenarios.emitter.EmitterType;
import settle.scenarios.fabric.FabricKeys;
import settle.scenarios.fabric.Glazing;
import settle.scenarios.fabric.MakeUp;
import settle.scenarios.fabric.MassClass;
import settle.scenarios.fabric.Material;
import settle.scenarios.format.Form;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.pipes.PipeKeys;
import settle.scenarios.pipes.PipeMaterial;
import settle.scenarios.pipes.PipeType;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.source.BoilerKeys;
import settle.scenarios.source.BoilerType;
import settle.scenarios.source.HeatPumpKeys;
import settle.scenarios.source.HeatPumpReader;
import settle.scenarios.source.HeatPumpType;
import settle.scenarios.valve.ValveKeys;
import settle.scenarios.valve.ValveType;
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
    reader.add(section, FabricKeys.MATERIALS, all.materials, reader::material);
    reader.add(section, FabricKeys.CONSTRUCTIONS, all.constructions, reader::construction);
    reader.add(section, FabricKeys.GLAZINGS, all.glazing, reader::glazing);
    reader.add(section, EmitterKeys.EMITTERS, all.emitters, reader::emitter);
    reader.add(section, PipeKeys.PIPES, all.pipes, reader::pipe);
    reader.add(section, ValveKeys.VALVES, all.valves, reader::valve);
    reader.add(section, BoilerKeys.BOILERS, all.boilers, reader::boiler);
    reader.add(section, HeatPumpKeys.HEAT_PUMPS, all.heatPumps, reader::heatPump);
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
  public static void addUnread(
      String section, String name, Supplier<Value> value, Definitions all) {
    DefinitionsReader reader = new DefinitionsReader(all);
    Supplier<Entry> entry = () -> new Entry(name, value.get());
    if (section.equals(FabricKeys.MATERIALS.name())) {
      all.materials.putUnread(name, () -> reader.material(entry.get()));
    } else if (section.equals(FabricKeys.CONSTRUCTIONS.name())) {
      all.constructions.putUnread(name, () -> reader.construction(entry.get()));
    } else if (section.equals(FabricKeys.GLAZINGS.name())) {
      all.glazing.putUnread(name, () -> reader.glazing(entry.get()));
    } else if (section.equals(EmitterKeys.EMITTERS.name())) {
      all.emitters.putUnread(name, () -> reader.emitter(entry.get()));
    } else if (section.equals(PipeKeys.PIPES.name())) {
      all.pipes.putUnread(name, () -> reader.pipe(entry.get()));
    } else if (section.equals(ValveKeys.VALVES.name())) {
      all.valves.putUnread(name, () -> reader.valve(entry.get()));
    } else if (section.equals(BoilerKeys.BOILERS.name())) {
      all.boilers.putUnread(name, () -> reader.boiler(entry.get()));
    } else if (section.equals(HeatPumpKeys.HEAT_PUMPS.name())) {
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
    Section s = entry.value().section(FabricKeys.MATERIAL_TABLE);
    return new Material(
        described(entry.name(), s),
        s.number(FabricKeys.CONDUCTIVITY),
        s.number(FabricKeys.DENSITY),
        s.number(FabricKeys.SPECIFIC_HEAT));
  }

  private MakeUp construction(Entry entry) {
    Section s = entry.value().section(FabricKeys.CONSTRUCTION_TABLE);
    Described described = described(entry.name(), s);
    Optional<Value> layers = s.value(FabricKeys.LAYERS);
    if (layers.isPresent()) {
      boolean fromBelow =
          s.value(FabricKeys.LAYERS_FROM)
              .map(v -> v.choice((Form.Choice) FabricKeys.LAYERS_FROM.form()).equals("below"))
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
        section.number(FabricKeys.U_VALUE),
        MassClass.of(section.choice(FabricKeys.MASS)));
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
      layers.add(layer(item.section(FabricKeys.LAYER_TABLE), known));
    }
    return layers;
  }

  private static Layer layer(Section s, Definitions known) {
    Optional<Value> material = s.value(FabricKeys.LAYER_MATERIAL);
    if (s.has(FabricKeys.LAYER_RESISTANCE)) {
      refuse(
          s,
          "resistance",
          FabricKeys.LAYER_THICKNESS,
          FabricKeys.LAYER_DENSITY,
          FabricKeys.LAYER_SPECIFIC_HEAT);
      return Layer.cavity(
          s.words(FabricKeys.LAYER_NAME, "air layer"), s.number(FabricKeys.LAYER_RESISTANCE));
    }
    if (material.isPresent()) {
      refuse(s, "material", FabricKeys.LAYER_DENSITY, FabricKeys.LAYER_SPECIFIC_HEAT);
      String name =
          material
              .get()
              .reference(
                  (Form.Reference) FabricKeys.LAYER_MATERIAL.form(),
                  known.materials().keySet(),
                  Catalogue.ANY_MATERIAL);
      return known.materials().get(name).layer(needed(s, FabricKeys.LAYER_THICKNESS));
    }
    return Layer.solid(
        s.words(FabricKeys.LAYER_NAME, "layer"),
        needed(s, FabricKeys.LAYER_THICKNESS),
        s.number(FabricKeys.LAYER_CONDUCTIVITY),
        needed(s, FabricKeys.LAYER_DENSITY),
        needed(s, FabricKeys.LAYER_SPECIFIC_HEAT));
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
    Section s = entry.value().section(FabricKeys.GLAZING_TABLE);
    return new Glazing(
        described(entry.name(), s), s.number(FabricKeys.OPENING_U), s.number(FabricKeys.OPENING_G));
  }

  private EmitterType emitter(Entry entry) {
    Section s = entry.value().section(EmitterKeys.EMITTER_FORM);
    String kind = s.variant(DefinitionKeys.KIND);
    Described described = described(entry.name(), s);
    EmitterType.Law law =
        new EmitterType.Law(
            s.number(EmitterKeys.EXPONENT),
            s.number(EmitterKeys.METAL_HEAT),
            s.number(EmitterKeys.RADIANT_SHARE));
    if (kind.equals(EmitterKeys.PERIMETER)) {
      EmitterType.Perimeter skirting =
          new EmitterType.Perimeter(
              described,
              s.number(EmitterKeys.OUTPUT_PER_METRE),
              law,
              s.number(EmitterKeys.WATER_PER_METRE),
              s.number(EmitterKeys.METAL_PER_METRE),
              s.number(EmitterKeys.FACE_HEIGHT),
              s.number(EmitterKeys.FACE_DEPTH),
              s.number(EmitterKeys.LOWER_CONNECTION),
              s.number(EmitterKeys.UPPER_CONNECTION));
      warnOfImplausibleOutput(s, skirting);
      return skirting;
    }
    s.numberIfWritten(EmitterKeys.HEIGHT);
    if (kind.equals(EmitterKeys.PANEL)) {
      return new EmitterType.Panel(
          described,
          s.number(EmitterKeys.OUTPUT_PER_METRE),
          law,
          s.number(EmitterKeys.WATER_PER_METRE),
          s.number(EmitterKeys.METAL_PER_METRE));
    }
    return new EmitterType.OneSize(
        described,
        s.number(EmitterKeys.OUTPUT),
        law,
        s.number(EmitterKeys.WATER),
        s.number(EmitterKeys.METAL));
  }

  private static void warnOfImplausibleOutput(Section s, EmitterType.Perimeter skirting) {
    Optional<Value> output = s.value(EmitterKeys.OUTPUT_PER_METRE);
    if (output.isEmpty() || !s.has(EmitterKeys.FACE_HEIGHT)) {
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
    Section s = entry.value().section(PipeKeys.PIPE_TABLE);
    return new PipeType(
        described(entry.name(), s),
        s.number(PipeKeys.BORE),
        s.number(PipeKeys.WALL),
        PipeMaterial.of(s.choice(PipeKeys.MADE_OF)),
        s.number(PipeKeys.ROUGHNESS));
  }

  private ValveType valve(Entry entry) {
    Section s = entry.value().section(ValveKeys.VALVE_FORM);
    Described described = described(entry.name(), s);
    double kvOpen = s.number(ValveKeys.KV_OPEN);
    return switch (s.variant(DefinitionKeys.KIND)) {
      case ValveKeys.FIXED ->
          new ValveType.Fixed(described, new FixedOpening(entry.name(), kvOpen));
      case ValveKeys.ACTUATOR ->
          new ValveType.Actuator(
              described,
              new OnOffActuator(
                  entry.name(),
                  UNSET,
                  s.number(ValveKeys.ACTUATOR_DIFFERENTIAL),
                  s.number(ValveKeys.ACTUATOR_TRAVEL),
                  kvOpen,
                  sensing(s)));
      case ValveKeys.MOTOR -> {
        double integralTime = s.number(ValveKeys.INTEGRAL_TIME);
        yield new ValveType.Motor(
            described,
            new MotorHead(
                entry.name(),
                UNSET,
                s.number(ValveKeys.GAIN),
                integralTime > 0 ? integralTime : Double.POSITIVE_INFINITY,
                s.number(ValveKeys.MOTOR_TRAVEL),
                kvOpen,
                sensing(s)));
      }
      default -> thermostatic(described, s, kvOpen);
    };
  }

  private static RoomSensing sensing(Section s) {
    return s.choice(ValveKeys.SENSES).equals("air") ? RoomSensing.AIR : RoomSensing.OPERATIVE;
  }

  private static ValveType thermostatic(Described described, Section s, double kvOpen) {
    double kvNominal = s.number(ValveKeys.KV_NOMINAL);
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
            s.number(ValveKeys.PROPORTIONAL_BAND),
            s.number(ValveKeys.HYSTERESIS),
            s.number(ValveKeys.LAG),
            s.number(ValveKeys.SECOND_LAG),
            s.number(ValveKeys.DEAD_TIME),
            s.number(ValveKeys.WATER_INFLUENCE),
            s.number(ValveKeys.HEAD_BIAS),
            s.number(ValveKeys.PRESSURE_INFLUENCE),
            kvNominal,
            kvOpen,
            sensing(s)));
  }

  private BoilerType boiler(Entry entry) {
    Section s = entry.value().section(BoilerKeys.BOILER_TABLE);
    double largest = s.number(BoilerKeys.LARGEST_OUTPUT);
    double least = s.number(BoilerKeys.LEAST_OUTPUT);
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
            s.number(BoilerKeys.SWITCHING_BAND),
            s.number(BoilerKeys.BOILER_CAPACITY),
            s.number(BoilerKeys.CONTROL_TIME),
            s.number(BoilerKeys.ANTI_CYCLE),
            s.number(BoilerKeys.OVER_RUN),
            s.number(BoilerKeys.STANDING_LOSS),
            efficiency(s)));
  }

  private HeatPumpType heatPump(Entry entry) {
    Section s = entry.value().section(HeatPumpKeys.TABLE);
    return new HeatPumpType(described(entry.name(), s), HeatPumpReader.read(entry.name(), s));
  }

  private static BoilerEfficiency efficiency(Section boiler) {
    double dewPoint = boiler.number(BoilerKeys.DEW_POINT);
    BoilerEfficiency standIn =
        new BoilerEfficiency(new double[] {50}, new double[] {1}, new double[][] {{0.9}}, dewPoint);
    if (!boiler.has(BoilerKeys.EFFICIENCY)) {
      return standIn;
    }
    Section s = boiler.section(BoilerKeys.EFFICIENCY);
    List<Value> loadValues = s.several(BoilerKeys.EFFICIENCY_LOADS);
    List<Value> rowValues = s.several(BoilerKeys.EFFICIENCY_ROWS);
    double[] loads =
        numbers(loadValues, Form.Quantity.of(Dimension.SHARE, 0, 1, "none of it to all of it"));
    double[] returns = new double[rowValues.size()];
    double[][] efficiencies = new double[rowValues.size()][];
    boolean sound = loads.length > 0 && returns.length > 0 && ascends(loads, loadValues);
    for (int i = 0; i < returns.length; i++) {
      Form.Keys rowForm = (Form.Keys) ((Form.Several) BoilerKeys.EFFICIENCY_ROWS.form()).each();
      Section row = rowValues.get(i).section(rowForm.table());
      returns[i] = row.number(BoilerKeys.EFFICIENCY_RETURN);
      efficiencies[i] =
          numbers(
              row.several(BoilerKeys.EFFICIENCY_VALUES),
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
