package settle.cli.output;

import settle.sim.house.WaterProperties;
import settle.sim.hydraulics.Balance;
import settle.sim.result.CyclingFigures;
import settle.sim.result.LastDay;
import settle.sim.result.PlantFigures;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.study.ErrorEstimate;

/**
 * The result as one JSON document. Names are stable and carry their unit; what has no value is
 * null.
 */
public final class ResultJson {

  private final Outcome outcome;
  private final JsonDocument json;

  private ResultJson(Outcome outcome, JsonDocument json) {
    this.outcome = outcome;
    this.json = json;
  }

  /**
   * The document.
   *
   * @param outcome what was found out
   * @param version the tool's version
   * @return JSON text, ending with a newline
   */
  public static String write(Outcome outcome, String version) {
    return JsonDocument.write(
        outcome.command(),
        outcome.scenario(),
        version,
        json -> new ResultJson(outcome, json).document());
  }

  private void document() {
    json.number("stepSeconds", outcome.house().run().shortestStep(), 6);
    json.list("arrangements", outcome.runs(), this::arrangement);
    json.strings("warnings", outcome.warnings());
  }

  private void arrangement(RunResult run) {
    PlantFigures plant = run.plant();
    json.text("name", run.arrangement().name());
    json.text(
        "emitterKind",
        switch (run.arrangement().emitterKind()) {
          case PERIMETER -> "perimeter";
          case RADIATOR -> "radiator";
          case MIXED -> "mixed";
        });
    json.flag("keepsUp", run.keepsUp());
    json.list("rooms", run.rooms(), this::room);
    json.number("flowMeanC", plant.flowMean(), 3);
    json.number("returnMeanC", plant.returnMean(), 3);
    json.number("returnPeakC", plant.returnPeak(), 3);
    json.number("condensingShare", plant.condensingShare(), 1, 4);
    cycling(plant.cycling());
    json.number("sourceHeatKWh", plant.sourceHeat() / Units.JOULES_PER_KWH, 4);
    json.number("backupHeatKWh", plant.backupHeat() / Units.JOULES_PER_KWH, 4);
    json.number("inputKWh", plant.input() / Units.JOULES_PER_KWH, 4);
    json.number("seasonalFactor", plant.seasonalFactor(), 1, 4);
    json.number("pumpElectricityKWh", plant.pumpElectricity() / Units.JOULES_PER_KWH, 4);
    json.number("pipeLossKWh", plant.pipeLoss() / Units.JOULES_PER_KWH, 4);
    balance(run.balance());
    json.exactly("energyBalanceError", run.ledger().error());
    json.count("stepsUnagreed", run.stepsUnagreed());
    if (!outcome.errors().isEmpty()) {
      error(outcome.errors().get(outcome.runs().indexOf(run)));
    }
  }

  private void room(RoomFigures room) {
    json.text("name", room.name());
    json.number("wantC", room.want(), 3);
    json.number("warmUpMinutes", room.warmUp(), Units.SECONDS_PER_MINUTE, 3);
    json.number("overshootK", room.overshoot(), 4);
    json.number("droopK", room.droop(), 4);
    LastDay last = room.lastDay();
    double ifSettled = last.settles() ? 1 : Double.NaN;
    json.number("settledOperativeC", ifSettled * last.operative(), 4);
    json.number("settledAirC", ifSettled * last.air(), 4);
    json.number("lastDayOperativeC", last.operative(), 4);
    json.number("lastDayAirC", last.air(), 4);
    json.number("lastDayLeastC", last.least(), 4);
    json.number("lastDayMostC", last.most(), 4);
    json.number("lastDayDriftK", last.drift(), 4);
    json.number("lastDayEmitterW", last.emitterHeat(), 2);
    json.number("lastDayPipesW", last.pipeHeat(), 2);
    json.number("shortfallDegreeHours", room.shortfall(), 4);
    json.number("shortfallOnceWarmDegreeHours", room.shortfallOnceWarm(), 4);
    json.number("emitterPeakW", room.emitterPeak(), 2);
    json.number("heatKWh", room.heat() / Units.JOULES_PER_KWH, 4);
    json.number("pipeHeatKWh", room.pipeHeat() / Units.JOULES_PER_KWH, 4);
  }

  private void cycling(CyclingFigures cycling) {
    json.number("sourceStartsPerHour", cycling.startsPerHour(), 4);
    json.number("sourceStartsPerDay", cycling.startsPerDay(), 3);
    json.count("mostStartsInAnHour", cycling.mostStartsInAnHour());
    json.number("shortestRunMinutes", cycling.shortestRun(), Units.SECONDS_PER_MINUTE, 3);
    json.number("minutesAtLeastOutput", cycling.timeAtMinimum() / Units.SECONDS_PER_MINUTE, 3);
    json.count("defrosts", cycling.defrosts());
    json.number("blockedMinutes", cycling.timeBlocked() / Units.SECONDS_PER_MINUTE, 3);
    json.number("waterVolumeLitres", cycling.waterVolume() / Units.CUBIC_METRES_PER_LITRE, 2);
    json.number("waterNeededLitres", cycling.waterNeeded(), Units.CUBIC_METRES_PER_LITRE, 2);
  }

  /** Flows with every valve open. */
  private void balance(Balance balance) {
    if (balance.branches().isEmpty()) {
      json.nothing("balance");
      return;
    }
    json.start("balance");
    json.flag("balanced", balance.balanced());
    json.text("indexBranch", balance.branches().get(balance.indexBranch()).name());
    json.number("headNeededKPa", balance.headNeeded() / Units.PASCALS_PER_KPA, 4);
    json.number("headKPa", balance.head() / Units.PASCALS_PER_KPA, 4);
    json.list("branches", balance.branches(), this::branch);
    json.strings("warnings", balance.warnings());
    json.end();
  }

  private void branch(Balance.BranchBalance branch) {
    WaterProperties water = outcome.house().water();
    json.text("name", branch.name());
    json.number("designFlowLPerHour", water.litresPerHour(branch.designFlow()), 3);
    json.number("flowAsGivenLPerHour", water.litresPerHour(branch.flowAsGiven()), 3);
    json.number("flowLPerHour", water.litresPerHour(branch.flow()), 3);
    json.number("lockshieldTurns", branch.lockshield().turns(), 3);
    json.number("lockshieldKv", branch.lockshield().kv(), 4);
    json.number("velocityMPerS", branch.velocity(), 4);
    json.number("authority", branch.authority(), 4);
  }

  /** How far the figures move: differences all, so temperatures are in kelvin here. */
  private void error(ErrorEstimate error) {
    json.start("numericalError");
    json.list("rooms", error.rooms(), this::roomError);
    json.number("flowMeanK", error.flowMean(), 4);
    json.number("returnMeanK", error.returnMean(), 4);
    json.number("sourceHeatShare", error.sourceHeat(), 6);
    json.end();
  }

  private void roomError(ErrorEstimate.RoomError room) {
    json.text("name", room.name());
    json.number("warmUpMinutes", room.warmUp(), Units.SECONDS_PER_MINUTE, 3);
    json.number("overshootK", room.overshoot(), 4);
    json.number("lastOperativeK", room.lastOperative(), 4);
  }
}
