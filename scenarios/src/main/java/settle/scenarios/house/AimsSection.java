package settle.scenarios.house;

import static settle.scenarios.format.Forms.PRACTICE;

import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Quantity;
import settle.scenarios.format.Form.Words;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;
import settle.sim.house.Aims;
import settle.sim.house.Spreads;
import settle.sim.house.Tariffs;
import settle.sim.units.Times;

/** What is asked of the heating, what energy costs, and how sure the house's figures are. */
public final class AimsSection {

  private static final String OF_THE_TIME = "typical of the mid-2020s, " + PRACTICE;

  private static final Quantity PRICE =
      Forms.of(Dimension.ENERGY_PRICE, 0, 10_000, "prices in any currency");
  private static final Quantity CARBON =
      Forms.of(Dimension.ENERGY_CARBON, 0, 10, "several times that of burning coal")
          .usually(0, 1.5);
  private static final Quantity SHARE_SPREAD = Forms.SHARE.usually(0, 0.5);
  private static final Quantity SPREAD =
      Forms.of(
              Dimension.TEMPERATURE_DIFFERENCE,
              0,
              10,
              "a standard deviation of a temperature in a house")
          .usually(0, 4);

  private static final Key TOLERANCE =
      Key.optional(
              "tolerance",
              Forms.of(Dimension.TEMPERATURE_DIFFERENCE, 0, 5, "what may still be called warm")
                  .usually(0.1, 2),
              "how far below want still counts as warm")
          .orElse("0.5 K", PRACTICE);
  private static final Key WARM_UP =
      Key.optional(
              "warm-up",
              Forms.of(Dimension.DURATION, 60, 7 * Times.DAY, "a minute to a week")
                  .usually(600, Times.DAY),
              "longest time a room may take from the call for heat until it is warm")
          .orElse("none");
  private static final Key OVERSHOOT =
      Key.optional(
              "overshoot",
              Forms.of(Dimension.TEMPERATURE_DIFFERENCE, 0, 10, "what may still be called comfort")
                  .usually(0.2, 5),
              "how far a room may rise above want while it warms up")
          .orElse("none");
  private static final Key SURE =
      Key.optional(
              "sure",
              Forms.SHARE.usually(0.5, 0.99),
              "share of houses like this, drawn at random over 'spreads', that must be held; with fewer 'verdict' says only just")
          .orElse("80 %", PRACTICE);

  private static final Key CURRENCY =
      Key.optional("currency", new Words(), "symbol put before an amount")
          .orElse("amounts stand without one");
  private static final Key ELECTRICITY =
      Key.optional("electricity", PRICE, "price of electricity").orElse("0.27 /kWh", OF_THE_TIME);
  private static final Key GAS =
      Key.optional("gas", PRICE, "price of gas, of its gross heat")
          .orElse("0.07 /kWh", OF_THE_TIME);
  private static final Key ELECTRICITY_CARBON =
      Key.optional("electricity CO2", CARBON, "CO2 emitted for electricity")
          .orElse("0.15 kg/kWh", OF_THE_TIME);
  private static final Key GAS_CARBON =
      Key.optional("gas CO2", CARBON, "CO2 emitted for gas, of its gross heat")
          .orElse("0.2 kg/kWh", OF_THE_TIME);
  private static final Key TARIFFS =
      section(
          "tariffs",
          Table.of(
              "what energy costs and emits",
              CURRENCY,
              ELECTRICITY,
              GAS,
              ELECTRICITY_CARBON,
              GAS_CARBON));

  private static final Key U_VALUES =
      Key.optional("U-values", SHARE_SPREAD, "of fabric and windows, the whole house alike")
          .orElse("15 %", PRACTICE);
  private static final Key AIR_CHANGE =
      Key.optional("air change", SHARE_SPREAD, "of the air let in, all rooms alike")
          .orElse("30 %", PRACTICE);
  private static final Key EMITTER_OUTPUT =
      Key.optional("emitter output", SHARE_SPREAD, "of output against rating, all emitters alike")
          .orElse("7 %", PRACTICE);
  private static final Key VALVE_SETTING =
      Key.optional("valve setting", SPREAD, "of the true setting of each valve")
          .orElse("0.7 K", PRACTICE);
  private static final Key WANT =
      Key.optional("want", SPREAD, "of the temperature people want, all rooms and heads alike")
          .orElse("0.7 K", PRACTICE);
  private static final Key COLDEST_OUTDOOR =
      Key.optional("coldest outdoor", SPREAD, "of the coldest weather about 'design outdoor'")
          .orElse("1.5 K", PRACTICE);
  private static final Key SPREADS =
      section(
          "spreads",
          Table.of(
              "uncertainty of what is not known exactly, each a standard deviation",
              U_VALUES,
              AIR_CHANGE,
              EMITTER_OUTPUT,
              VALVE_SETTING,
              WANT,
              COLDEST_OUTDOOR));

  public static final Table TABLE =
      Table.of(
          "what is asked of the heating", TOLERANCE, WARM_UP, OVERSHOOT, SURE, TARIFFS, SPREADS);

  private static Key section(String name, Table table) {
    return Key.optional(name, new Keys(table), table.about());
  }

  private AimsSection() {}

  static Aims read(Section s) {
    return new Aims(
        s.number(TOLERANCE),
        s.numberIfWritten(WARM_UP),
        s.numberIfWritten(OVERSHOOT),
        s.number(SURE),
        tariffs(s.section(TARIFFS)),
        spreads(s.section(SPREADS)));
  }

  private static Tariffs tariffs(Section s) {
    return new Tariffs(
        s.words(CURRENCY, Tariffs.USUAL.currency()),
        s.number(ELECTRICITY),
        s.number(GAS),
        s.number(ELECTRICITY_CARBON),
        s.number(GAS_CARBON));
  }

  private static Spreads spreads(Section s) {
    return new Spreads(
        s.number(U_VALUES),
        s.number(AIR_CHANGE),
        s.number(EMITTER_OUTPUT),
        s.number(VALVE_SETTING),
        s.number(WANT),
        s.number(COLDEST_OUTDOOR));
  }
}
