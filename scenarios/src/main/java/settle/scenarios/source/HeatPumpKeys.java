package settle.scenarios.source;

import static settle.scenarios.format.Forms.PRACTICE;

import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Quantity;
import settle.scenarios.format.Form.Several;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;
import settle.sim.units.Times;

/** A heat pump, air to water, as it is described once and used by name. */
final class HeatPumpKeys {

  private static final Quantity CAPACITY = Forms.OUTPUT.usually(1000, 60_000);

  // Performance.

  static final Key POINT_OUTDOOR = Key.required("outdoor", Forms.OUTDOOR, "outdoor air");
  static final Key POINT_FLOW = Key.required("flow", Forms.FLOW_TEMPERATURE, "water leaving");
  static final Key POINT_CAPACITY =
      Key.required("capacity", CAPACITY, "heating capacity at full output");
  static final Key POINT_COP =
      Key.required(
          "COP",
          Forms.of(
                  Dimension.NUMBER,
                  0.5,
                  15,
                  "from less than an electric heater to the best there is")
              .usually(1, 8),
          "coefficient of performance there");
  static final Key POINT_LEAST_COP =
      Key.optional(
              "COP at least output",
              POINT_COP.form(),
              "coefficient of performance there at the least output; in every point or in none")
          .orElse("that at full output");
  static final Table POINT =
      Table.of(
          "a rating point, EN 14511",
          POINT_OUTDOOR,
          POINT_FLOW,
          POINT_CAPACITY,
          POINT_COP,
          POINT_LEAST_COP);
  static final Key PERFORMANCE =
      Key.optional(
          "performance",
          new Several(new Keys(POINT)),
          "rating points: every outdoor temperature with every flow temperature");
  static final Key SHARE_OF_CARNOT =
      Key.optional(
          "share of Carnot",
          Forms.of(Dimension.SHARE, 0.01, 1, "hardly any to the limit of nature")
              .usually(0.3, 0.55),
          "instead of rating points: COP over Carnot's between outdoor air and water leaving");
  static final Key CAPACITY_AT_SEVEN =
      Key.optional(
          "capacity at 7 °C",
          CAPACITY,
          "heating capacity at 7 °C outdoors, with 'share of Carnot'");
  static final Key CAPACITY_SLOPE =
      Key.optional(
              "capacity slope",
              Forms.of(Dimension.CONDUCTANCE, 0, 20_000, "none to twice the largest pump's")
                  .usually(0, 1000),
              "rise of that capacity per kelvin outdoors")
          .orElse("1.5 % of the capacity at 7 °C, " + PRACTICE);

  // How it runs.

  static final Key MINIMUM_MODULATION =
      Key.optional(
              "minimum modulation",
              Forms.of(Dimension.SHARE, 0.01, 1, "hardly any to all").usually(0.15, 1),
              "least output while running, as a share of the capacity; 100 % is one speed only")
          .orElse("30 %", PRACTICE);
  static final Key MINIMUM_FLOW =
      Key.optional(
              "minimum flow",
              Forms.of(Dimension.FLOW, 0, Forms.MOST_FLOW, "mains of a large house")
                  .usually(0, 1.5e-3),
              "flow of water below which it does not run")
          .orElse("half of what carries the capacity at 7/35 °C with a drop of 5 K, " + PRACTICE);
  static final Key MINIMUM_RUNNING =
      Key.optional(
              "minimum running time",
              Forms.PAUSE.usually(0, 1800),
              "least time it runs before it stops by itself")
          .orElse("6 min", "no more than six starts an hour, " + PRACTICE);
  static final Key MINIMUM_REST =
      Key.optional(
              "minimum rest",
              Forms.PAUSE.usually(0, 1800),
              "least time from a stop to the next start")
          .orElse("4 min", "no more than six starts an hour, " + PRACTICE);
  static final Key SWITCHING_BAND =
      Key.optional(
              "switching band",
              Forms.DIFFERENCE.usually(1, 10),
              "off at set flow temperature plus this, on at minus this")
          .orElse("3 K", PRACTICE);
  static final Key HIGHEST_FLOW =
      Key.optional(
              "highest flow temperature",
              Forms.of(Dimension.TEMPERATURE, 25, 110, "water that heats and stays liquid")
                  .usually(35, 80),
              "flow temperature it never passes")
          .orElse("that of its rating points; 55 °C with 'share of Carnot', " + PRACTICE);
  static final Key CONTROL_TIME =
      Key.optional(
              "control time",
              Forms.of(Dimension.DURATION, 1, 3600, "a second to an hour").usually(5, 900),
              "time constant with which its controller brings the flow to the set temperature")
          .orElse("2 min", PRACTICE);
  static final Key HEAT_CAPACITY =
      Key.optional(
              "heat capacity",
              Forms.of(Dimension.HEAT_CAPACITY, 100, 1e7, "from a cup of water to two cubic metres")
                  .usually(2000, 200_000),
              "its condenser's water and metal together")
          .orElse("20 kJ/K", "3 l of water and 15 kg of metal, " + PRACTICE);
  static final Key OVER_RUN =
      Key.optional(
              "pump over-run",
              Forms.PAUSE,
              "how long the pump runs on after the call for heat ends")
          .orElse("3 min", PRACTICE);
  static final Key STANDBY =
      Key.optional(
              "standby power",
              Forms.of(Dimension.POWER, 0, 5000, "electricity of a pump that does not run")
                  .usually(0, 150),
              "electricity taken while not running")
          .orElse("20 W", PRACTICE);
  static final Key DEGRADATION =
      Key.optional(
              "degradation",
              Forms.of(Dimension.SHARE, 0.5, 1, "half of it lost to starts to nothing at all")
                  .usually(0.8, 1),
              "Cc of EN 14825: a start takes 1 - Cc of the power at least output for as long as the unit rested, 10 min at most")
          .orElse("0.9", "EN 14825, where none was measured");

  // Defrost and backup heater.

  static final Key DEFROST_FROM =
      Key.optional("from", Forms.OUTDOOR, "coldest outdoor temperature at which its coil ices")
          .orElse("-7 °C", "colder air is dry, " + PRACTICE);
  static final Key DEFROST_TO =
      Key.optional("to", Forms.OUTDOOR, "warmest outdoor temperature at which its coil ices")
          .orElse("5 °C", PRACTICE);
  static final Key DEFROST_EVERY =
      Key.optional(
              "every",
              Forms.of(Dimension.DURATION, 300, 7 * Times.DAY, "five minutes to a week")
                  .usually(1200, 14_400),
              "running time between two defrosts")
          .orElse("60 min", PRACTICE);
  static final Key DEFROST_FOR =
      Key.optional(
              "for",
              Forms.of(Dimension.DURATION, 5, 7200, "five seconds to two hours").usually(60, 1200),
              "how long a defrost takes")
          .orElse("5 min", PRACTICE);
  static final Key DEFROST_HEAT =
      Key.required(
          "heat taken",
          Forms.of(Dimension.POWER, 0, 100_000, "the largest pump in reverse").usually(0, 30_000),
          "heat it takes from the water meanwhile");
  static final Key DEFROST_ELECTRICITY =
      Key.required(
          "electricity",
          Forms.of(Dimension.POWER, 0, 50_000, "the largest pump in reverse").usually(0, 10_000),
          "electricity it takes meanwhile");
  static final Key DEFROST =
      Key.optional(
              "defrost",
              new Keys(
                  Table.of(
                      "how it frees its coil of ice; rating points are then those without frost",
                      DEFROST_FROM,
                      DEFROST_TO,
                      DEFROST_EVERY,
                      DEFROST_FOR,
                      DEFROST_HEAT,
                      DEFROST_ELECTRICITY)),
              "how it frees its coil of ice")
          .orElse("in the rating points, as EN 14511 measures them");
  static final Key BACKUP_POWER =
      Key.required("power", Forms.OUTPUT.usually(500, 15_000), "its largest output");
  static final Key BACKUP_BELOW =
      Key.optional("below", Forms.OUTDOOR, "outdoor temperature above which it stays off")
          .orElse("-5 °C", PRACTICE);
  static final Key BACKUP =
      Key.optional(
              "backup heater",
              new Keys(
                  Table.of(
                      "an electric heater that gives what the compressor lacks",
                      BACKUP_POWER,
                      BACKUP_BELOW)),
              "electric heater behind the compressor")
          .orElse("none");

  static final Table TABLE =
      Table.of(
              "a heat pump, air to water",
              CAPACITY_AT_SEVEN,
              CAPACITY_SLOPE,
              MINIMUM_MODULATION,
              MINIMUM_FLOW,
              MINIMUM_RUNNING,
              MINIMUM_REST,
              SWITCHING_BAND,
              HIGHEST_FLOW,
              CONTROL_TIME,
              HEAT_CAPACITY,
              OVER_RUN,
              STANDBY,
              DEGRADATION,
              DEFROST,
              BACKUP)
          .oneOf(PERFORMANCE, SHARE_OF_CARNOT);

  private HeatPumpKeys() {}
}
