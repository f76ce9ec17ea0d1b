package settle.scenarios.valve;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.List;
import settle.scenarios.definition.DefinitionKeys;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Variants;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;

/** Valves, each described once and used by name. */
public final class ValveKeys {

  public static final String VALVE = "valve";

  public static final String THERMOSTATIC = "thermostatic";
  public static final String FIXED = "fixed opening";
  public static final String ACTUATOR = "on/off actuator";
  public static final String MOTOR = "motor head";
  private static final Key VALVE_KIND =
      Key.required(
          DefinitionKeys.KIND,
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
          DefinitionKeys.ABOUT,
          DefinitionKeys.SOURCE);
  public static final Table FIXED_TABLE =
      Table.of(
          "a valve that stays where it is set",
          VALVE_KIND,
          KV_OPEN,
          DefinitionKeys.ABOUT,
          DefinitionKeys.SOURCE);
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
          DefinitionKeys.ABOUT,
          DefinitionKeys.SOURCE);
  public static final Table MOTOR_TABLE =
      Table.of(
          "a motor head with a PI controller",
          VALVE_KIND,
          KV_OPEN,
          GAIN,
          INTEGRAL_TIME,
          MOTOR_TRAVEL,
          SENSES,
          DefinitionKeys.ABOUT,
          DefinitionKeys.SOURCE);
  public static final Variants VALVE_FORM =
      new Variants(
          DefinitionKeys.KIND,
          DefinitionKeys.ordered(
              THERMOSTATIC,
              THERMOSTATIC_TABLE,
              FIXED,
              FIXED_TABLE,
              ACTUATOR,
              ACTUATOR_TABLE,
              MOTOR,
              MOTOR_TABLE));

  public static final Key VALVES = DefinitionKeys.section("valves", VALVE, VALVE_FORM);

  private ValveKeys() {}
}
