package settle.scenarios.source;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.format.Form;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Several;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.format.Typed;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.house.WaterProperties;
import settle.sim.source.Boiler;
import settle.sim.source.BoilerEfficiency;
import settle.sim.source.Exchanger;
import settle.sim.source.Flue;
import settle.sim.source.Source;

/**
 * A boiler; the flow temperature of the pattern is replaced when it is placed.
 *
 * @param described its name and source
 * @param pattern everything but the flow temperature
 */
public record BoilerType(Described described, Boiler pattern) implements SourceType {

  /** What a start costs for each watt of the largest output [s]. */
  private static final double START_SHARE = 5;

  private static final Key LARGEST_OUTPUT =
      Key.required("largest output", Forms.OUTPUT.usually(2000, 100_000), "largest heat output");
  private static final Key LEAST_OUTPUT =
      Key.required(
          "least output", Forms.OUTPUT.usually(500, 50_000), "least heat output while firing");
  private static final Key SWITCHING_BAND =
      Key.optional(
              "switching band",
              Forms.DIFFERENCE.usually(1, 15),
              "off at set flow temperature plus this, on at minus this")
          .orElse("5 K", PRACTICE);
  private static final Key HEAT_CAPACITY =
      Key.optional(
              "heat capacity",
              Forms.of(Dimension.HEAT_CAPACITY, 100, 1e7, "from a cup of water to two cubic metres")
                  .usually(2000, 500_000),
              "its water and metal together")
          .orElse("15 kJ/K", "2 l of water and 10 kg of metal, " + PRACTICE);
  private static final Key CONTROL_TIME =
      Key.optional(
              "control time",
              Forms.of(Dimension.DURATION, 1, 3600, "a second to an hour").usually(5, 600),
              "time constant with which its controller brings the flow to the set temperature")
          .orElse("40 s", PRACTICE);
  private static final Key ANTI_CYCLE =
      Key.optional("anti-cycle time", Forms.PAUSE, "least time from burner off to its next start")
          .orElse("3 min", PRACTICE);
  private static final Key OVER_RUN =
      Key.optional(
              "pump over-run",
              Forms.PAUSE,
              "how long the pump runs on after the call for heat ends")
          .orElse("3 min", PRACTICE);
  private static final Key STANDING_LOSS =
      Key.optional(
              "standing loss",
              Forms.of(Dimension.CONDUCTANCE, 0, 1000, "none to a bare vessel of the largest size")
                  .usually(0, 10),
              "loss of its casing to a space at 20 °C")
          .orElse("1.5 W/K", PRACTICE);
  private static final Key LEAST_FLOW =
      Key.optional(
              "least flow",
              Forms.of(Dimension.FLOW, 0, Forms.MOST_FLOW, "mains of a large house")
                  .usually(0, 3e-4),
              "flow that its internal by-pass keeps through it, mixing flow into return; 0 l/h without one")
          .orElse("300 l/h", PRACTICE);
  private static final Key LARGEST_DROP =
      Key.optional(
              "largest drop",
              Forms.DIFFERENCE.usually(15, 40),
              "between flow and return, at which it turns down, though not below its least output")
          .orElse("25 K", PRACTICE);
  private static final Key START_LOSS =
      Key.optional(
              "start loss",
              Forms.of(Dimension.ENERGY, 0, 1e8, "none to a ton of cold iron").usually(0, 2e6),
              "gas that a start costs: purge, and an exchanger that has cooled")
          .orElse(
              "5 kJ per kW of largest output, 1 for the purge and 4 for the exchanger, "
                  + PRACTICE);
  private static final Key EXCESS_AIR =
      Key.optional(
              "excess air",
              Forms.of(Dimension.SHARE, 0, 3, "none to an open draught").usually(0.1, 1.2),
              "air beyond what burns the gas")
          .orElse("25 %", PRACTICE);
  private static final Key DEW_POINT =
      Key.optional(
              "dew point",
              Forms.of(Dimension.TEMPERATURE, 10, 90, "from hardly any vapour to mostly vapour")
                  .usually(40, 60),
              "temperature below which vapour of the flue condenses")
          .orElse(
              "that of methane with its excess air, from its combustion equation; air with 0.008 mol of water per mol");
  private static final Key APPROACH =
      Key.optional(
              "flue approach",
              Forms.of(Dimension.TEMPERATURE_DIFFERENCE, 0, 150, "a perfect to a bare exchanger")
                  .usually(1, 100),
              "how far above the water that enters the flue gas leaves")
          .orElse("5 K", "a condensing boiler, " + PRACTICE);
  private static final Key CASE_LOSS =
      Key.optional(
              "case loss",
              Forms.of(Dimension.SHARE, 0, 0.2, "none to a bare case").usually(0, 0.05),
              "share of the gas that its case loses while it fires, besides 'standing loss'; not with an 'efficiency' of its own")
          .orElse("1 %", PRACTICE);
  private static final Key EFFICIENCY_RETURN =
      Key.required("return", Forms.TEMPERATURE, "return temperature");
  private static final Key EFFICIENCY_VALUES =
      Key.required("efficiency", new Several(Forms.SHARE), "gross efficiency, one for each load");
  private static final Key EFFICIENCY_LOADS =
      Key.required("loads", new Several(Forms.SHARE), "ascending shares of the largest output");
  private static final Table ROW =
      Table.of("efficiency at one return temperature", EFFICIENCY_RETURN, EFFICIENCY_VALUES);
  private static final Key EFFICIENCY_ROWS =
      Key.required("rows", new Several(new Keys(ROW)), "ascending return temperatures");
  private static final Key EFFICIENCY =
      Key.optional(
              "efficiency",
              new Keys(
                  Table.of(
                      "gross efficiency over return temperature and load",
                      EFFICIENCY_LOADS,
                      EFFICIENCY_ROWS)),
              "gross efficiency over return temperature and load, measured")
          .orElse("by its flue: what the gas carries away, condensing counted, less the case loss");
  public static final DefinitionSection<BoilerType> SECTION =
      DefinitionSection.of(
          "boilers",
          "boiler",
          "condensing boiler 18 kW",
          Table.of(
              "a modulating gas boiler",
              LARGEST_OUTPUT,
              LEAST_OUTPUT,
              SWITCHING_BAND,
              HEAT_CAPACITY,
              CONTROL_TIME,
              ANTI_CYCLE,
              OVER_RUN,
              STANDING_LOSS,
              LEAST_FLOW,
              LARGEST_DROP,
              START_LOSS,
              EXCESS_AIR,
              DEW_POINT,
              APPROACH,
              CASE_LOSS,
              EFFICIENCY),
          BoilerType::read);

  static final SourceKind KIND =
      new NamedSource(
          SECTION,
          65,
          10,
          SourceKind.CIRCULATOR,
          boiler -> Typed.rounded(((Boiler) boiler).maximumPower()),
          BoilerType::typed);

  private static BoilerType read(Described described, Section s, Definitions known) {
    double largest = s.number(LARGEST_OUTPUT);
    double least = s.number(LEAST_OUTPUT);
    if (least > largest) {
      s.problem(
          "found least output "
              + Dimension.POWER.show(least)
              + " above the largest, "
              + Dimension.POWER.show(largest));
      least = largest;
    }
    return new BoilerType(
        described,
        new Boiler(
            described.name(),
            largest,
            least,
            UNSET,
            s.number(SWITCHING_BAND),
            s.number(HEAT_CAPACITY),
            s.number(CONTROL_TIME),
            s.number(ANTI_CYCLE),
            s.number(OVER_RUN),
            s.number(STANDING_LOSS),
            new BoilerEfficiency(flue(s), efficiency(s)),
            new Exchanger(
                s.number(LEAST_FLOW) * WaterProperties.AT_50.density(),
                s.number(LARGEST_DROP),
                s.number(START_LOSS, START_SHARE * largest))));
  }

  private static Flue flue(Section s) {
    double excessAir = s.number(EXCESS_AIR);
    return new Flue(
        excessAir,
        s.number(DEW_POINT, Flue.dewPoint(excessAir)),
        s.number(APPROACH),
        s.number(CASE_LOSS));
  }

  private static Optional<BoilerEfficiency.Table> efficiency(Section boiler) {
    if (!boiler.has(EFFICIENCY)) {
      return Optional.empty();
    }
    Section s = boiler.section(EFFICIENCY);
    List<Value> loadValues = s.several(EFFICIENCY_LOADS);
    List<Value> rowValues = s.several(EFFICIENCY_ROWS);
    double[] loads =
        numbers(loadValues, Form.Quantity.of(Dimension.SHARE, 0, 1, "none of it to all of it"));
    double[] returns = new double[rowValues.size()];
    double[][] efficiencies = new double[rowValues.size()][];
    boolean sound = loads.length > 0 && returns.length > 0 && ascends(loads, loadValues);
    for (int i = 0; i < returns.length; i++) {
      Section row = rowValues.get(i).section(ROW);
      returns[i] = row.number(EFFICIENCY_RETURN);
      efficiencies[i] =
          numbers(
              row.several(EFFICIENCY_VALUES),
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
    return sound
        ? Optional.of(new BoilerEfficiency.Table(returns, loads, efficiencies))
        : Optional.empty();
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

  private static Typed typed(Source source) {
    Boiler boiler = (Boiler) source;
    Flue flue = boiler.efficiency().flue();
    Exchanger exchanger = boiler.exchanger();
    Typed typed =
        new Typed()
            .put(LARGEST_OUTPUT, boiler.maximumPower())
            .put(LEAST_OUTPUT, boiler.minimumPower())
            .put(SWITCHING_BAND, boiler.switchingBand())
            .put(HEAT_CAPACITY, boiler.thermalMass())
            .put(CONTROL_TIME, boiler.controlTime())
            .put(ANTI_CYCLE, boiler.antiCycleTime())
            .put(OVER_RUN, boiler.overRunTime())
            .put(STANDING_LOSS, boiler.standingLoss())
            .put(LEAST_FLOW, exchanger.leastFlow() / WaterProperties.AT_50.density())
            .put(LARGEST_DROP, exchanger.largestDrop())
            .put(START_LOSS, exchanger.startInput())
            .put(EXCESS_AIR, flue.excessAir())
            .put(DEW_POINT, flue.dewPoint())
            .put(APPROACH, flue.approach())
            .put(CASE_LOSS, flue.caseLoss());
    boiler.efficiency().table().ifPresent(t -> typed.put(EFFICIENCY, typed(t)));
    return typed;
  }

  private static Typed typed(BoilerEfficiency.Table table) {
    List<Typed> rows = new ArrayList<>();
    for (int i = 0; i < table.values().length; i++) {
      rows.add(
          new Typed()
              .put(EFFICIENCY_RETURN, table.returnTemperatures()[i])
              .put(EFFICIENCY_VALUES, table.values()[i]));
    }
    return new Typed().put(EFFICIENCY_LOADS, table.loads()).put(EFFICIENCY_ROWS, rows);
  }

  @Override
  public String facts() {
    return Dimension.POWER.show(pattern.minimumPower())
        + " to "
        + Dimension.POWER.show(pattern.maximumPower())
        + ", gross efficiency "
        + Dimension.SHARE.show(pattern.efficiency().at(30, 0.2))
        + " at 30 °C return, "
        + Dimension.SHARE.show(pattern.efficiency().at(60, 1))
        + " at 60 °C";
  }
}
