package settle.scenarios.format;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Named;
import settle.scenarios.format.Form.Quantity;
import settle.scenarios.format.Form.Reference;
import settle.scenarios.format.Form.Several;
import settle.scenarios.format.Form.Variants;
import settle.scenarios.format.Form.Words;
import settle.scenarios.quantity.Dimension;

/**
 * Things that are described once and used by name: in a scenario, and in the built-in catalogue,
 * which is written in the same keys.
 */
public final class DefinitionKeys {

  private static final String PRACTICE = "common practice, no source";

  /** Kinds of named things, as messages call them. */
  public static final String MATERIAL = "material";

  public static final String CONSTRUCTION = "construction";
  public static final String GLAZING = "glazing or door";
  public static final String EMITTER = "emitter";
  public static final String PIPE = "pipe";
  public static final String VALVE = "valve";
  public static final String BOILER = "boiler";
  public static final String HEAT_PUMP = "heat pump";

  public static final Key ABOUT = Key.optional("about", new Words(), "what it is, in a line");
  public static final Key SOURCE =
      Key.optional("source", new Words(), "where the figures come from");

  // Materials and layers.

  private static final Quantity CONDUCTIVITY_FORM =
      Forms.of(Dimension.CONDUCTIVITY, 0.001, 500, "from an evacuated panel to silver")
          .usually(0.015, 400);
  private static final Quantity DENSITY_FORM =
      Forms.of(Dimension.DENSITY, 0.5, 23_000, "from warm air to the heaviest metals")
          .usually(5, 9000);
  private static final Quantity SPECIFIC_HEAT_FORM =
      Forms.of(Dimension.SPECIFIC_HEAT, 100, 10_000, "from lead to more than water")
          .usually(300, 4300);

  public static final Key CONDUCTIVITY =
      Key.required("conductivity", CONDUCTIVITY_FORM, "design thermal conductivity");
  public static final Key DENSITY = Key.required("density", DENSITY_FORM, "density");
  public static final Key SPECIFIC_HEAT =
      Key.required("specific heat", SPECIFIC_HEAT_FORM, "specific heat capacity");
  public static final Table MATERIAL_TABLE =
      Table.of("a building material", CONDUCTIVITY, DENSITY, SPECIFIC_HEAT, ABOUT, SOURCE);

  public static final Key LAYER_MATERIAL =
      Key.optional("material", new Reference(MATERIAL), "a material by name");
  public static final Key LAYER_CONDUCTIVITY =
      Key.optional("conductivity", CONDUCTIVITY_FORM, "design thermal conductivity");
  public static final Key LAYER_RESISTANCE =
      Key.optional(
          "resistance",
          Forms.of(
                  Dimension.RESISTANCE,
                  0.0001,
                  50,
                  "from a skim of plaster to metres of insulation")
              .usually(0.005, 12),
          "resistance of an air layer, or of a layer that holds no heat worth counting");
  public static final Key LAYER_THICKNESS =
      Key.optional(
          "thickness",
          Forms.of(Dimension.LENGTH, 0.00001, 5, "from a foil to the wall of a castle")
              .usually(0.0005, 1),
          "thickness of the layer");
  public static final Key LAYER_DENSITY = Key.optional("density", DENSITY_FORM, "density");
  public static final Key LAYER_SPECIFIC_HEAT =
      Key.optional("specific heat", SPECIFIC_HEAT_FORM, "specific heat capacity");
  public static final Key LAYER_NAME = Key.optional("name", new Words(), "what the layer is");
  public static final Table LAYER_TABLE =
      Table.of(
              "a layer: a material and a thickness, or the properties themselves, or a resistance",
              LAYER_NAME,
              LAYER_THICKNESS,
              LAYER_DENSITY,
              LAYER_SPECIFIC_HEAT)
          .oneOf(LAYER_MATERIAL, LAYER_CONDUCTIVITY, LAYER_RESISTANCE);

  // Constructions.

  public static final Key LAYERS =
      Key.optional("layers", new Several(new Keys(LAYER_TABLE)), "layers from the room outwards");
  public static final Key U_VALUE =
      Key.optional(
          "U-value",
          Forms.TRANSMITTANCE.usually(0.05, 4),
          "U-value between room and outdoor air, surface resistances included");
  public static final Key MASS =
      Key.optional(
              "mass",
              new Choice(List.of("very light", "light", "medium", "heavy", "very heavy")),
              "mass class of an element known by its U-value, ISO 13790:2008 Table 12")
          .orElse("medium", PRACTICE);
  public static final Key LAYERS_FROM =
      Key.optional(
              "layers from",
              new Choice(List.of("the room", "below")),
              "for floors between rooms: 'below' when the first layer is the ceiling of the room below")
          .orElse("the room", "the usual order");
  public static final Table CONSTRUCTION_TABLE =
      Table.of("the make-up of a wall, floor, ceiling or roof", MASS, LAYERS_FROM, ABOUT, SOURCE)
          .oneOf(LAYERS, U_VALUE);

  // Glazing and doors.

  public static final Key OPENING_U =
      Key.required(
          "U-value",
          Forms.of(Dimension.TRANSMITTANCE, 0.01, 7.5, "from the best wall to a single pane")
              .usually(0.5, 6),
          "U-value with its frame");
  public static final Key OPENING_G =
      Key.optional(
              "g-value", Forms.SHARE, "share of the sun's radiation that becomes heat in the room")
          .orElse("0.6", "common double glazing, frame included, " + PRACTICE);
  public static final Table GLAZING_TABLE =
      Table.of("a window or door to outdoors", OPENING_U, OPENING_G, ABOUT, SOURCE);

  // Emitters.

  public static final String KIND = "kind";
  public static final String PERIMETER = "perimeter";
  public static final String PANEL = "panel";
  public static final String TOWEL_RAIL = "towel rail";
  private static final Key EMITTER_KIND =
      Key.required(
          KIND,
          new Choice(List.of(PERIMETER, PANEL, TOWEL_RAIL)),
          "perimeter (heated skirting), panel or towel rail");

  public static final Key OUTPUT_PER_METRE =
      Key.required(
          "output per metre",
          Forms.of(
                  Dimension.POWER_PER_LENGTH, 1, 20_000, "from a bare pipe to the largest radiator")
              .usually(10, 4500),
          "output per metre at 75/65/20 (mean excess 50 K), EN 442");
  public static final Key OUTPUT =
      Key.required(
          "output",
          Forms.of(Dimension.POWER, 1, 50_000, "from a bare pipe to the largest radiator")
              .usually(30, 3000),
          "output at 75/65/20 (mean excess 50 K), EN 442");
  public static final Key EXPONENT =
      Key.optional(
              "exponent",
              Forms.of(Dimension.NUMBER, 1, 1.8, "from radiation alone to a fast draught")
                  .usually(1.1, 1.5),
              "exponent n of the characteristic equation")
          .orElse("1.3", "common value, " + PRACTICE);
  public static final Key WATER_PER_METRE =
      Key.required(
          "water per metre",
          Forms.of(Dimension.VOLUME_PER_LENGTH, 1e-6, 0.2, "from a capillary to a drum")
              .usually(3e-5, 2e-2),
          "water content per metre");
  public static final Key WATER =
      Key.required(
          "water",
          Forms.of(Dimension.VOLUME, 1e-5, 1, "from a capillary to a drum").usually(2e-4, 0.05),
          "water content");
  public static final Key METAL_PER_METRE =
      Key.required(
          "metal per metre",
          Forms.of(Dimension.MASS_PER_LENGTH, 0.01, 1000, "from a foil to solid iron")
              .usually(0.1, 120),
          "metal in good contact with the water, per metre");
  public static final Key METAL =
      Key.required(
          "metal",
          Forms.of(Dimension.MASS, 0.01, 2000, "from a foil to solid iron").usually(0.5, 100),
          "metal in good contact with the water");
  public static final Key METAL_HEAT =
      Key.optional("metal specific heat", SPECIFIC_HEAT_FORM, "specific heat of the metal")
          .orElse("450 J/kgK", "steel, EN ISO 10456");
  public static final Key RADIANT_SHARE =
      Key.optional(
              "radiant share",
              Forms.SHARE.usually(0.05, 0.6),
              "share of the output given by radiation")
          .orElse("30 %", PRACTICE);
  public static final Key FACE_HEIGHT =
      Key.required(
          "face height",
          Forms.of(Dimension.LENGTH, 0.005, 2, "what runs along the foot of a wall")
              .usually(0.05, 0.4),
          "height of the face");
  public static final Key FACE_DEPTH =
      Key.required(
          "face depth",
          Forms.of(Dimension.LENGTH, 0.001, 1, "what runs along the foot of a wall")
              .usually(0.01, 0.12),
          "how far it stands out from the wall");
  public static final Key LOWER_CONNECTION =
      Key.required(
          "lower connection",
          Forms.of(Dimension.LENGTH, 0, 5, "the wall of a room"),
          "height of the lower connection's centre above the finished floor");
  public static final Key UPPER_CONNECTION =
      Key.required(
          "upper connection",
          Forms.of(Dimension.LENGTH, 0, 5, "the wall of a room"),
          "height of the upper connection's centre above the finished floor");
  public static final Key HEIGHT =
      Key.optional(
          "height",
          Forms.of(Dimension.LENGTH, 0.01, 5, "the wall of a room").usually(0.15, 2.2),
          "overall height");

  public static final Table PERIMETER_TABLE =
      Table.of(
          "heated skirting, described per metre",
          EMITTER_KIND,
          OUTPUT_PER_METRE,
          EXPONENT,
          WATER_PER_METRE,
          METAL_PER_METRE,
          METAL_HEAT,
          RADIANT_SHARE,
          FACE_HEIGHT,
          FACE_DEPTH,
          LOWER_CONNECTION,
          UPPER_CONNECTION,
          ABOUT,
          SOURCE);
  public static final Table PANEL_TABLE =
      Table.of(
          "a panel radiator, described per metre of its length",
          EMITTER_KIND,
          OUTPUT_PER_METRE,
          EXPONENT,
          WATER_PER_METRE,
          METAL_PER_METRE,
          METAL_HEAT,
          RADIANT_SHARE,
          HEIGHT,
          ABOUT,
          SOURCE);
  public static final Table TOWEL_RAIL_TABLE =
      Table.of(
          "a towel rail or another emitter of one size",
          EMITTER_KIND,
          OUTPUT,
          EXPONENT,
          WATER,
          METAL,
          METAL_HEAT,
          RADIANT_SHARE,
          HEIGHT,
          ABOUT,
          SOURCE);
  public static final Variants EMITTER_FORM =
      new Variants(
          KIND,
          ordered(PERIMETER, PERIMETER_TABLE, PANEL, PANEL_TABLE, TOWEL_RAIL, TOWEL_RAIL_TABLE));

  // Pipes.

  public static final Key BORE =
      Key.required(
          "bore",
          Forms.of(Dimension.LENGTH, 0.001, 0.3, "from a capillary to a street main")
              .usually(0.004, 0.06),
          "inside diameter");
  public static final Key ROUGHNESS =
      Key.optional(
              "roughness",
              Forms.of(Dimension.LENGTH, 0, 0.01, "smooth to a heavily furred pipe")
                  .usually(0, 0.0005),
              "absolute roughness of the bore")
          .orElse("0.0015 mm", "drawn tubing, Moody 1944, from memory");
  public static final Key WALL =
      Key.optional(
              "wall",
              Forms.of(Dimension.LENGTH, 0.00005, 0.02, "from a foil to a street main")
                  .usually(0.0004, 0.005),
              "wall thickness")
          .orElse("0.7 mm", "15 mm copper, EN 1057");
  public static final Key MADE_OF =
      Key.optional("made of", new Choice(List.of("copper", "steel", "plastic")), "its material")
          .orElse("copper", PRACTICE);
  public static final Table PIPE_TABLE =
      Table.of("a pipe", BORE, WALL, MADE_OF, ROUGHNESS, ABOUT, SOURCE);

  // Valves.

  public static final String THERMOSTATIC = "thermostatic";
  public static final String FIXED = "fixed opening";
  public static final String ACTUATOR = "on/off actuator";
  public static final String MOTOR = "motor head";
  private static final Key VALVE_KIND =
      Key.required(
          KIND,
          new Choice(List.of(THERMOSTATIC, FIXED, ACTUATOR, MOTOR)),
          "thermostatic, fixed opening, on/off actuator or motor head");
  public static final Key KV_NOMINAL =
      Key.optional("Kv", Forms.FLOW_COEFFICIENT, "flow coefficient at the set temperature")
          .orElse("0.5 m³/h", "typical straight 15 mm body, " + PRACTICE);
  public static final Key KV_OPEN =
      Key.optional("Kvs", Forms.FLOW_COEFFICIENT, "flow coefficient fully open")
          .orElse("0.8 m³/h", "typical straight 15 mm body, " + PRACTICE);
  public static final Key PROPORTIONAL_BAND =
      Key.optional(
              "proportional band", Forms.DIFFERENCE.usually(0.5, 5), "from nominal flow to shut")
          .orElse("2 K", "EN 215 rates at S - 2 K, from memory");
  public static final Key HYSTERESIS =
      Key.optional(
              "hysteresis",
              Forms.of(Dimension.TEMPERATURE_DIFFERENCE, 0, 20, "none to a head that hardly moves")
                  .usually(0, 1),
              "full width of the play between opening and closing")
          .orElse("0.4 K", "inside the limit of EN 215 (1 K, from memory)");
  public static final Key LAG =
      Key.optional(
              "lag",
              Forms.of(Dimension.DURATION, 1, Forms.DAY, "a second to a day").usually(60, 2400),
              "time constant of the head")
          .orElse("20 min", "inside the limit of EN 215 (40 min, from memory)");
  public static final Key SECOND_LAG =
      Key.optional("second lag", Forms.PAUSE, "time constant of a second lag in series")
          .orElse("0 min", "one lag is enough for a wax head, " + PRACTICE);
  public static final Key DEAD_TIME =
      Key.optional("dead time", Forms.PAUSE, "delay before the head feels a change")
          .orElse("0 min", PRACTICE);
  public static final Key WATER_INFLUENCE =
      Key.optional(
              "water influence",
              Forms.of(Dimension.SLOPE, 0, 0.5, "none to half the water's").usually(0, 0.06),
              "shift of the sensed temperature per kelvin of water temperature")
          .orElse("0.0233 K/K", "0.7 K for 30 K, inside the limit of EN 215 (1.5 K, from memory)");
  public static final Key HEAD_BIAS =
      Key.optional(
              "head bias",
              Forms.of(
                      Dimension.TEMPERATURE_DIFFERENCE,
                      -10,
                      20,
                      "from a draught to a curtain over a hot emitter")
                  .usually(-3, 6),
              "how much warmer than the room it is where the head sits")
          .orElse("0 K", "a head in free air, " + PRACTICE);
  public static final Key PRESSURE_INFLUENCE =
      Key.optional(
              "pressure influence",
              Forms.of(
                      Dimension.SHIFT_PER_PRESSURE,
                      0,
                      20,
                      "none to several times the limit of EN 215")
                  .usually(0, 2),
              "fall of the set temperature per bar above 0.1 bar across the valve")
          .orElse("0.5 K/bar", "inside the limit of EN 215 (from memory)");
  public static final Key SENSES =
      Key.optional(
              "senses",
              new Choice(List.of("operative", "air")),
              "which temperature of the room it feels")
          .orElse("operative", "a head in the room feels air and radiation, " + PRACTICE);
  public static final Table THERMOSTATIC_TABLE =
      Table.of(
          "a thermostatic radiator valve",
          VALVE_KIND,
          KV_NOMINAL,
          KV_OPEN,
          PROPORTIONAL_BAND,
          HYSTERESIS,
          LAG,
          SECOND_LAG,
          DEAD_TIME,
          WATER_INFLUENCE,
          HEAD_BIAS,
          PRESSURE_INFLUENCE,
          SENSES,
          ABOUT,
          SOURCE);
  public static final Table FIXED_TABLE =
      Table.of("a valve that stays where it is set", VALVE_KIND, KV_OPEN, ABOUT, SOURCE);
  public static final Key ACTUATOR_DIFFERENTIAL =
      Key.optional(
              "differential",
              Forms.DIFFERENCE.usually(0.1, 2),
              "switching differential of its room's thermostat")
          .orElse("0.5 K", PRACTICE);
  public static final Key ACTUATOR_TRAVEL =
      Key.optional(
              "travel time",
              Forms.of(Dimension.DURATION, 1, 3600, "a second to an hour").usually(10, 600),
              "from shut to open, and back")
          .orElse("3 min", "an electrothermal actuator, " + PRACTICE);
  public static final Key GAIN =
      Key.optional(
              "gain",
              Forms.of(Dimension.SHARE_PER_KELVIN, 0.001, 20, "hardly at all to open and shut")
                  .usually(0.05, 5),
              "share of its lift per kelvin that the room lacks")
          .orElse("0.5 /K", PRACTICE);
  public static final Key INTEGRAL_TIME =
      Key.optional(
              "integral time",
              Forms.of(Dimension.DURATION, 0, 7 * Forms.DAY, "none to a week")
                  .usually(0, 6 * 3600.0),
              "time in which the integral part adds as much again; 0 for none")
          .orElse("60 min", PRACTICE);
  public static final Key MOTOR_TRAVEL =
      Key.optional(
              "travel time",
              Forms.of(Dimension.DURATION, 1, 3600, "a second to an hour").usually(5, 600),
              "from shut to open")
          .orElse("1 min", PRACTICE);
  public static final Table ACTUATOR_TABLE =
      Table.of(
          "an on/off actuator, switched by a thermostat of its room",
          VALVE_KIND,
          KV_OPEN,
          ACTUATOR_DIFFERENTIAL,
          ACTUATOR_TRAVEL,
          SENSES,
          ABOUT,
          SOURCE);
  public static final Table MOTOR_TABLE =
      Table.of(
          "a motor head with a PI controller",
          VALVE_KIND,
          KV_OPEN,
          GAIN,
          INTEGRAL_TIME,
          MOTOR_TRAVEL,
          SENSES,
          ABOUT,
          SOURCE);
  public static final Variants VALVE_FORM =
      new Variants(
          KIND,
          ordered(
              THERMOSTATIC,
              THERMOSTATIC_TABLE,
              FIXED,
              FIXED_TABLE,
              ACTUATOR,
              ACTUATOR_TABLE,
              MOTOR,
              MOTOR_TABLE));

  // Boilers.

  public static final Key LARGEST_OUTPUT =
      Key.required("largest output", Forms.OUTPUT.usually(2000, 100_000), "largest heat output");
  public static final Key LEAST_OUTPUT =
      Key.required(
          "least output", Forms.OUTPUT.usually(500, 50_000), "least heat output while firing");
  public static final Key SWITCHING_BAND =
      Key.optional(
              "switching band",
              Forms.DIFFERENCE.usually(1, 15),
              "off at set flow temperature plus this, on at minus this")
          .orElse("5 K", PRACTICE);
  public static final Key BOILER_CAPACITY =
      Key.optional(
              "heat capacity",
              Forms.of(Dimension.HEAT_CAPACITY, 100, 1e7, "from a cup of water to two cubic metres")
                  .usually(2000, 500_000),
              "its water and metal together")
          .orElse("15 kJ/K", "2 l of water and 10 kg of metal, " + PRACTICE);
  public static final Key CONTROL_TIME =
      Key.optional(
              "control time",
              Forms.of(Dimension.DURATION, 1, 3600, "a second to an hour").usually(5, 600),
              "time constant with which its controller brings the flow to the set temperature")
          .orElse("40 s", PRACTICE);
  public static final Key ANTI_CYCLE =
      Key.optional("anti-cycle time", Forms.PAUSE, "least time from burner off to its next start")
          .orElse("3 min", PRACTICE);
  public static final Key OVER_RUN =
      Key.optional(
              "pump over-run",
              Forms.PAUSE,
              "how long the pump runs on after the call for heat ends")
          .orElse("3 min", PRACTICE);
  public static final Key STANDING_LOSS =
      Key.optional(
              "standing loss",
              Forms.of(Dimension.CONDUCTANCE, 0, 1000, "none to a bare vessel of the largest size")
                  .usually(0, 10),
              "loss of its casing to a space at 20 °C")
          .orElse("1.5 W/K", PRACTICE);
  public static final Key DEW_POINT =
      Key.optional(
              "dew point",
              Forms.TEMPERATURE.usually(40, 60),
              "return temperature below which the flue gas condenses")
          .orElse("55 °C", "methane with 25 % excess air, from its combustion equation");
  public static final Key EFFICIENCY_RETURN =
      Key.required("return", Forms.TEMPERATURE, "return temperature");
  public static final Key EFFICIENCY_VALUES =
      Key.required("efficiency", new Several(Forms.SHARE), "gross efficiency, one for each load");
  public static final Key EFFICIENCY_LOADS =
      Key.required("loads", new Several(Forms.SHARE), "ascending shares of the largest output");
  public static final Key EFFICIENCY_ROWS =
      Key.required(
          "rows",
          new Several(
              new Keys(
                  Table.of(
                      "efficiency at one return temperature",
                      EFFICIENCY_RETURN,
                      EFFICIENCY_VALUES))),
          "ascending return temperatures");
  public static final Key EFFICIENCY =
      Key.required(
          "efficiency",
          new Keys(
              Table.of(
                  "gross efficiency over return temperature and load",
                  EFFICIENCY_LOADS,
                  EFFICIENCY_ROWS)),
          "gross efficiency over return temperature and load");
  public static final Table BOILER_TABLE =
      Table.of(
          "a modulating gas boiler",
          LARGEST_OUTPUT,
          LEAST_OUTPUT,
          SWITCHING_BAND,
          BOILER_CAPACITY,
          CONTROL_TIME,
          ANTI_CYCLE,
          OVER_RUN,
          STANDING_LOSS,
          DEW_POINT,
          EFFICIENCY,
          ABOUT,
          SOURCE);

  // The sections that hold them.

  public static final Key MATERIALS = section("materials", MATERIAL, new Keys(MATERIAL_TABLE));
  public static final Key CONSTRUCTIONS =
      section("constructions", CONSTRUCTION, new Keys(CONSTRUCTION_TABLE));
  public static final Key GLAZINGS = section("glazing", GLAZING, new Keys(GLAZING_TABLE));
  public static final Key EMITTERS = section("emitters", EMITTER, EMITTER_FORM);
  public static final Key PIPES = section("pipes", PIPE, new Keys(PIPE_TABLE));
  public static final Key VALVES = section("valves", VALVE, VALVE_FORM);
  public static final Key BOILERS = section("boilers", BOILER, new Keys(BOILER_TABLE));

  public static final Key HEAT_PUMPS =
      section("heat pumps", HEAT_PUMP, new Keys(HeatPumpKeys.TABLE));

  /** A file of definitions and nothing else: the built-in catalogue. */
  public static final Table CATALOGUE_TABLE =
      Table.of(
          "definitions",
          MATERIALS,
          CONSTRUCTIONS,
          GLAZINGS,
          EMITTERS,
          PIPES,
          VALVES,
          BOILERS,
          HEAT_PUMPS);

  private DefinitionKeys() {}

  private static Key section(String name, String kind, Form each) {
    return Key.optional(name, new Named(kind, each), "your own, besides those of the catalogue");
  }

  static Map<String, Table> ordered(Object... namesAndTables) {
    Map<String, Table> tables = new LinkedHashMap<>();
    for (int i = 0; i < namesAndTables.length; i += 2) {
      tables.put((String) namesAndTables[i], (Table) namesAndTables[i + 1]);
    }
    return tables;
  }
}
