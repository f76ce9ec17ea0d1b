package settle.scenarios.format;

import java.util.List;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Reference;
import settle.scenarios.format.Form.Several;
import settle.scenarios.quantity.Dimension;

/** Pump, source and control, which all arrangements share, and the run. */
public final class PlantKeys {

  private static final String PRACTICE = "common practice, no source";

  // Distribution.

  public static final Key PUMP_HEAD =
      Key.optional(
              "pump head",
              Forms.of(Dimension.PRESSURE).positive().atMost(2e5).usually(2000, 70_000),
              "pressure difference that the pump holds across the branches")
          .orElse("15 kPa", "a small domestic circulator at constant pressure, " + PRACTICE);
  public static final Key PUMP_EFFICIENCY =
      Key.optional(
              "pump efficiency",
              Forms.of(Dimension.SHARE).positive().atMost(1),
              "hydraulic over electrical power")
          .orElse("30 %", "a small electronically driven circulator, " + PRACTICE);
  public static final Table DISTRIBUTION_TABLE =
      Table.of("what moves the water", PUMP_HEAD, PUMP_EFFICIENCY);

  // Source.

  public static final Key BOILER =
      Key.optional("boiler", new Reference(DefinitionKeys.BOILER), "boiler by name");
  public static final Key FIXED_FLOW =
      Key.optional(
          "fixed flow", Forms.FLOW_TEMPERATURE, "an ideal source that holds this flow temperature");
  public static final Key FLOW_TEMPERATURE =
      Key.optional(
              "flow temperature", Forms.FLOW_TEMPERATURE, "flow temperature the boiler is set to")
          .orElse("65 °C", PRACTICE);
  public static final Key LARGEST_OUTPUT =
      Key.optional(
              "largest output",
              Forms.POWER.usually(500, 100_000),
              "largest heat output of an ideal source")
          .orElse("without limit");
  public static final Table SOURCE_TABLE =
      Table.of("what heats the water", FLOW_TEMPERATURE, LARGEST_OUTPUT).oneOf(BOILER, FIXED_FLOW);

  // Control.

  public static final String BY_SOURCE = "source";
  public static final String BY_HEADS = "heads";
  public static final Key PROGRAMME =
      Key.optional(
              "programme",
              RoomKeys.PROGRAMME.form(),
              "periods at want, for every room without its own")
          .orElse("want all day");
  public static final Key SETBACK =
      Key.optional("setback", Forms.WANT, "want-temperature outside the periods")
          .orElse("16 °C", "4 to 5 K below a living room's want, " + PRACTICE);
  public static final Key SET_BACK_BY =
      Key.optional(
              "set back by",
              new Choice(List.of(BY_SOURCE, BY_HEADS)),
              "who carries out the setback: the source and pump rest, or programmable heads turn down")
          .orElse(BY_SOURCE, "one programmer for the house, " + PRACTICE);
  public static final Key REFERENCE_ROOM =
      Key.optional(
              "reference room", new Reference(RoomKeys.ROOM), "room in which the thermostat hangs")
          .orElse("the first room");
  public static final Key DIFFERENTIAL =
      Key.optional(
              "differential",
              Forms.DIFFERENCE.usually(0.1, 3),
              "switching differential of that thermostat")
          .orElse("0.5 K", PRACTICE);
  public static final Table CONTROL_TABLE =
      Table.of(
          "how the programme acts", PROGRAMME, SETBACK, SET_BACK_BY, REFERENCE_ROOM, DIFFERENTIAL);

  // Aims.

  public static final Key TOLERANCE =
      Key.optional(
              "tolerance",
              Forms.of(Dimension.TEMPERATURE_DIFFERENCE).from(0, 5).usually(0.1, 2),
              "how far below want still counts as warm")
          .orElse("0.5 K", PRACTICE);
  public static final Table AIMS_TABLE = Table.of("what counts as warm", TOLERANCE);

  // Run.

  public static final Key RUN_LENGTH =
      Key.optional("length", Forms.DURATION.atMost(400 * 86_400.0), "how long is recorded")
          .orElse("48 h", "a day to settle and a day to see it repeat, " + PRACTICE);
  public static final Key LEAD_IN =
      Key.optional(
              "lead in",
              Forms.DURATION_OR_NONE.atMost(60 * 86_400.0),
              "time run before, so that walls have found their daily course")
          .orElse(
              "24 h where there is a programme, otherwise none: a warm-up from the start temperature");
  public static final Key START_TEMPERATURE =
      Key.optional(
              "start temperature",
              Forms.TEMPERATURE.usually(-5, 25),
              "air, walls and water at the beginning")
          .orElse("16 °C", "a house left unheated for some hours, " + PRACTICE);
  public static final Key SHORTEST_STEP =
      Key.optional("shortest step", Forms.DURATION.from(0.1, 3600), "time step after an event")
          .orElse("10 s", "the engine's own choice");
  public static final Key LONGEST_STEP =
      Key.optional("longest step", Forms.DURATION.from(0.1, 3600), "time step in quiet stretches")
          .orElse("the engine's own choice");
  public static final Key PROFILES_AT =
      Key.optional(
              "profiles at",
              new Several(Forms.DURATION),
              "times after the first call for heat at which the temperature along each emitter is kept")
          .orElse("half a minute to half an hour");
  public static final Table RUN_TABLE =
      Table.of(
          "how long and from what state",
          RUN_LENGTH,
          LEAD_IN,
          START_TEMPERATURE,
          SHORTEST_STEP,
          LONGEST_STEP,
          PROFILES_AT);

  private PlantKeys() {}
}
