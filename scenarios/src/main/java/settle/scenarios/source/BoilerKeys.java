package settle.scenarios.source;

import static settle.scenarios.format.Forms.PRACTICE;

import settle.scenarios.definition.DefinitionKeys;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Several;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;

/** Boilers, each described once and used by name. */
public final class BoilerKeys {

  public static final String BOILER = "boiler";

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
          DefinitionKeys.ABOUT,
          DefinitionKeys.SOURCE);

  public static final Key BOILERS =
      DefinitionKeys.section("boilers", BOILER, new Keys(BOILER_TABLE));

  private BoilerKeys() {}
}
