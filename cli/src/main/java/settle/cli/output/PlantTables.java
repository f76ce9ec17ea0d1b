package settle.cli.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import settle.plots.words.PlantVerdict;
import settle.plots.words.Quantities;
import settle.sim.house.House;
import settle.sim.house.WaterProperties;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.Balance.BranchBalance;
import settle.sim.result.CyclingFigures;
import settle.sim.result.PlantFigures;
import settle.sim.result.RunResult;
import settle.sim.source.Carrier;

/**
 * The tables on source, water and balance of a summary, each with the columns that say something of
 * the plant there is.
 */
final class PlantTables {

  private static final String INDEX = " *";

  private final House house;
  private final List<RunResult> runs;

  PlantTables(House house, List<RunResult> runs) {
    this.house = house;
    this.runs = runs;
  }

  /** Temperatures and energies. */
  String plants() {
    boolean boiler = house.source().carrier() == Carrier.GAS;
    boolean heatPump = house.source().carrier() == Carrier.ELECTRICITY;
    boolean backup = runs.stream().anyMatch(r -> r.plant().backupHeat() > 0);
    TextTable table = new TextTable(1);
    table.head(
        TextTable.cells(
            "Source and water",
            "Flow",
            "Return",
            "Peak return",
            boiler ? "Condensing" : null,
            "Heat",
            backup ? "Backup" : null,
            "Input",
            heatPump ? "Seasonal" : null,
            "Pump",
            "Pipes lose",
            "Energy error"));
    table.head(
        TextTable.cells(
            "",
            "°C",
            "°C",
            "°C",
            boiler ? "%" : null,
            "kWh",
            backup ? "kWh" : null,
            "kWh",
            heatPump ? "factor" : null,
            "kWh",
            "kWh",
            "-"));
    for (RunResult run : runs) {
      PlantFigures plant = run.plant();
      table.row(
          TextTable.cells(
              run.arrangement().name(),
              Quantities.number(plant.flowMean(), 1),
              Quantities.number(plant.returnMean(), 1),
              Quantities.number(plant.returnPeak(), 1),
              boiler
                  ? Quantities.number(100 * plant.condensingShare().orElse(Double.NaN), 0)
                  : null,
              Quantities.kilowattHours(plant.sourceHeat()),
              backup ? Quantities.kilowattHours(plant.backupHeat()) : null,
              Quantities.kilowattHours(plant.input()),
              heatPump ? Quantities.number(plant.seasonalFactor().orElse(Double.NaN), 2) : null,
              Quantities.kilowattHours(plant.pumpElectricity()),
              Quantities.kilowattHours(plant.pipeLoss()),
              String.format(Locale.ROOT, "%.0e", run.ledger().error())));
    }
    return table.text();
  }

  /** How the source starts and stops; empty for one that does not do so by itself. */
  Optional<String> cycling() {
    if (house.source().carrier() == Carrier.NONE) {
      return Optional.empty();
    }
    boolean heatPump = house.source().carrier() == Carrier.ELECTRICITY;
    TextTable table = new TextTable(1);
    table.head(
        TextTable.cells(
            "Source starts",
            "Mean",
            "A day",
            "Most in 1 h",
            "Shortest run",
            "At least output",
            heatPump ? "Defrosts" : null,
            heatPump ? "Kept off" : null));
    table.head(
        TextTable.cells(
            "", "1/h", "", "", "min", "h", heatPump ? "" : null, heatPump ? "min" : null));
    for (RunResult run : runs) {
      CyclingFigures c = run.plant().cycling();
      table.row(
          TextTable.cells(
              run.arrangement().name(),
              Quantities.number(c.startsPerHour(), 1),
              Quantities.number(c.startsPerDay(), 0),
              Integer.toString(c.mostStartsInAnHour()),
              Quantities.number(c.shortestRun().orElse(Double.NaN) / Units.SECONDS_PER_MINUTE, 1),
              Quantities.number(c.timeAtMinimum() / Units.SECONDS_PER_HOUR, 1),
              heatPump ? Integer.toString(c.defrosts()) : null,
              heatPump ? Quantities.number(c.timeBlocked() / Units.SECONDS_PER_MINUTE, 0) : null));
    }
    return Optional.of(table.text());
  }

  /** Whether the water in circulation is enough, arrangement by arrangement. */
  List<String> water() {
    List<String> answers = new ArrayList<>();
    for (RunResult run : runs) {
      new PlantVerdict(house, run)
          .water()
          .ifPresent(answer -> answers.add(run.arrangement().name() + ": " + answer));
    }
    return answers;
  }

  /**
   * Flows with every valve open; empty where nothing was balanced and every branch begins at the
   * source, so that the verdict has said it all.
   */
  Optional<String> balance() {
    boolean known = runs.stream().noneMatch(r -> r.balance().branches().isEmpty());
    boolean telling =
        !house.distribution().mains().isEmpty()
            || runs.stream().anyMatch(r -> r.balance().balanced());
    if (!known || !telling || runs.stream().allMatch(r -> r.balance().branches().size() < 2)) {
      return Optional.empty();
    }
    StringBuilder text = new StringBuilder();
    for (RunResult run : runs) {
      text.append(text.length() == 0 ? "" : "\n").append(balance(run));
    }
    return Optional.of(text.toString());
  }

  /** What the sign at a branch's name means, and what the pump makes for it. */
  String heads() {
    return "* needs most at the pump, every valve open: "
        + runs.stream()
            .map(
                r ->
                    r.arrangement().name()
                        + " "
                        + Quantities.pressure(r.balance().headNeeded())
                        + " of "
                        + Quantities.pressure(r.balance().head())
                        + " made")
            .collect(Collectors.joining("; "))
        + ".";
  }

  private String balance(RunResult run) {
    Balance balance = run.balance();
    WaterProperties water = house.water();
    TextTable table = new TextTable(1);
    table.head(
        TextTable.cells(
            run.arrangement().name()
                + (balance.balanced() ? ", lockshields set" : ", lockshields as given"),
            "Design",
            balance.balanced() ? "As given" : null,
            "Flow",
            "Share",
            "Lockshield",
            "Kv",
            "Velocity",
            "Authority"));
    table.head(
        TextTable.cells(
            "", "l/h", balance.balanced() ? "l/h" : null, "l/h", "%", "turns", "m³/h", "m/s", "%"));
    for (int b = 0; b < balance.branches().size(); b++) {
      BranchBalance branch = balance.branches().get(b);
      table.row(
          TextTable.cells(
              branch.name() + (b == balance.indexBranch() ? INDEX : ""),
              litres(water.litresPerHour(branch.designFlow())),
              balance.balanced() ? litres(water.litresPerHour(branch.flowAsGiven())) : null,
              litres(water.litresPerHour(branch.flow())),
              Quantities.number(100 * branch.flow() / branch.designFlow(), 0),
              Quantities.number(branch.lockshield().turns(), 2),
              Quantities.number(branch.lockshield().kv(), 2),
              Quantities.number(branch.velocity(), 2),
              Quantities.number(100 * branch.authority(), 0)));
    }
    return table.text();
  }

  /** A flow in l/h to a litre, a small one to a tenth. */
  private static String litres(double flow) {
    return Quantities.number(flow, flow < 10 ? 1 : 0);
  }
}
