package settle.plots.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import settle.plots.words.Comparison;
import settle.plots.words.PlantVerdict;
import settle.plots.words.Quantities;
import settle.plots.words.Sentences;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.Balance.BranchBalance;
import settle.sim.result.CyclingFigures;
import settle.sim.result.PlantFigures;
import settle.sim.result.RunResult;
import settle.sim.source.Carrier;

/** The tables of a report on source, starts and balance. */
final class PlantPage {

  private final Comparison comparison;
  private final House house;

  PlantPage(Comparison comparison) {
    this.comparison = comparison;
    this.house = comparison.house();
  }

  /** Adds them to the page. */
  void addTo(Map<String, Object> page) {
    page.put("plants", comparison.results().stream().map(PlantPage::plant).toList());
    page.put("inputName", input());
    page.put("boiler", house.source().carrier() == Carrier.GAS);
    page.put("heatPump", house.source().carrier() == Carrier.ELECTRICITY);
    page.put("backedUp", comparison.results().stream().anyMatch(r -> r.plant().backupHeat() > 0));
    page.put("cycling", cycling());
    List<Map<String, Object>> balances = balances();
    page.put("balanced", balances.isEmpty() ? List.of() : List.of(Map.of("balances", balances)));
  }

  /** What the source uses. */
  private String input() {
    if (house.source().carrier() == Carrier.GAS) {
      return "Fuel (gross)";
    }
    return house.source().carrier() == Carrier.ELECTRICITY ? "Electricity" : "Input";
  }

  private static Map<String, Object> plant(RunResult result) {
    PlantFigures plant = result.plant();
    Map<String, Object> row = new HashMap<>();
    row.put("arrangement", result.arrangement().name());
    row.put("flow", Quantities.number(plant.flowMean(), 1));
    row.put("return", Quantities.number(plant.returnMean(), 1));
    row.put("peak", Quantities.number(plant.returnPeak(), 1));
    row.put(
        "condensing",
        plant.condensingShare().isPresent()
            ? Quantities.share(plant.condensingShare().getAsDouble())
            : "–");
    row.put("heat", Quantities.kilowattHours(plant.sourceHeat()));
    row.put("backup", Quantities.kilowattHours(plant.backupHeat()));
    row.put("input", Quantities.kilowattHours(plant.input()));
    row.put("factor", Quantities.number(plant.seasonalFactor().orElse(Double.NaN), 2));
    row.put("pump", Quantities.kilowattHours(plant.pumpElectricity()));
    row.put("loss", Quantities.kilowattHours(plant.pipeLoss()));
    return row;
  }

  /** Empty for a source that does not start and stop by itself, otherwise one table. */
  private List<Map<String, Object>> cycling() {
    List<Map<String, Object>> rows = new ArrayList<>();
    List<String> water = new ArrayList<>();
    for (RunResult result : comparison.results()) {
      PlantVerdict verdict = new PlantVerdict(house, result);
      if (!verdict.cycles()) {
        return List.of();
      }
      rows.add(starts(result));
      verdict
          .water()
          .ifPresent(w -> water.add(Report.unbroken(result.arrangement().name() + ": " + w)));
    }
    return List.of(Map.of("rows", rows, "water", water));
  }

  private static Map<String, Object> starts(RunResult result) {
    CyclingFigures c = result.plant().cycling();
    return Map.of(
        "arrangement",
        result.arrangement().name(),
        "hour",
        Quantities.number(c.startsPerHour(), 1),
        "day",
        Quantities.number(c.startsPerDay(), 0),
        "most",
        c.mostStartsInAnHour(),
        "shortest",
        Quantities.number(c.shortestRun().orElse(Double.NaN) / 60, 1),
        "least",
        Quantities.number(c.timeAtMinimum() / 3600, 1),
        "defrosts",
        c.defrosts(),
        "blocked",
        Quantities.number(c.timeBlocked() / 60, 0));
  }

  /** Where water has more than one way to go, a table per arrangement. */
  private List<Map<String, Object>> balances() {
    return comparison.results().stream()
        .filter(r -> r.balance().branches().size() > 1)
        .map(this::balance)
        .toList();
  }

  private Map<String, Object> balance(RunResult result) {
    Balance balance = result.balance();
    List<Map<String, Object>> rows = new ArrayList<>();
    for (int b = 0; b < balance.branches().size(); b++) {
      rows.add(branch(balance.branches().get(b), b == balance.indexBranch()));
    }
    return Map.of(
        "heading",
        result.arrangement().name(),
        "state",
        Report.unbroken(state(balance)),
        "rows",
        rows);
  }

  private static String state(Balance balance) {
    BranchBalance index = balance.branches().get(balance.indexBranch());
    return (balance.balanced()
            ? "Lockshields and pump set by the balance. "
            : "Not balanced: lockshields and pump as given. ")
        + Sentences.capitalised(index.name())
        + " needs most: "
        + Quantities.pressure(balance.headNeeded())
        + " at the pump, which makes "
        + Quantities.pressure(balance.head())
        + " with every valve open.";
  }

  private Map<String, Object> branch(BranchBalance branch, boolean index) {
    double share = branch.flow() / branch.designFlow();
    Map<String, Object> row = new HashMap<>();
    row.put("branch", branch.name());
    row.put("index", index);
    row.put("design", litres(branch.designFlow()));
    row.put("given", litres(branch.flowAsGiven()));
    row.put("run", litres(branch.flow()));
    row.put("share", Quantities.number(100 * share, 0) + " %");
    row.put("starved", PlantVerdict.isStarved(share));
    row.put("turns", Quantities.number(branch.lockshield().turns(), 2));
    row.put("kv", Quantities.number(branch.lockshield().kv(), 2));
    row.put("velocity", Quantities.number(branch.velocity(), 2));
    row.put(
        "authority",
        Double.isNaN(branch.authority())
            ? "–"
            : Quantities.number(100 * branch.authority(), 0) + " %");
    return row;
  }

  private String litres(double massFlow) {
    double flow = house.water().litresPerHour(massFlow);
    return Quantities.number(flow, flow < 10 ? 1 : 0);
  }
}
