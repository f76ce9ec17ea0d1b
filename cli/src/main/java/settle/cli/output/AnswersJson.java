package settle.cli.output;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import settle.plots.words.OddsWords;
import settle.sim.house.Aims;
import settle.sim.study.BoilerAnswer;
import settle.sim.study.ComfortAtRest;
import settle.sim.study.HeatPumpAnswer;
import settle.sim.study.Holding;
import settle.sim.study.LeastCurve;
import settle.sim.study.Odds;
import settle.sim.study.Remedies.Kind;
import settle.sim.study.Remedies.Remedy;
import settle.sim.study.Season;
import settle.sim.study.Verdict;
import settle.sim.study.WarmUps.WarmUp;

/**
 * The answers as one JSON document. Names are stable and carry their unit; what has no value is
 * null.
 */
public final class AnswersJson {

  private final JsonDocument json;
  private final Answers answers;

  private AnswersJson(JsonDocument json, Answers answers) {
    this.json = json;
    this.answers = answers;
  }

  /**
   * The document.
   *
   * @param answers what was found out
   * @param version the tool's version
   * @return JSON text, ending with a newline
   */
  public static String write(Answers answers, String version) {
    return JsonDocument.write(
        answers.command(),
        answers.scenario(),
        version,
        json -> new AnswersJson(json, answers).document());
  }

  private void document() {
    Aims aims = answers.house().aims();
    json.number("designOutdoorC", answers.house().designOutdoor(), 3);
    json.number("wantToleranceK", aims.tolerance(), 3);
    json.number("warmUpAllowedMinutes", aims.warmUp(), Units.SECONDS_PER_MINUTE, 2);
    json.number("overshootAllowedK", aims.overshoot(), 3);
    json.list("arrangements", answers.verdicts(), this::arrangement);
    json.strings("warnings", answers.warnings());
  }

  private void arrangement(Verdict verdict) {
    json.text("name", verdict.arrangement().name());
    json.flag("keepsUp", verdict.keepsUp());
    json.flag("holds", verdict.held());
    json.number("holdingOutdoorC", verdict.holdingOutdoor(), 2);
    json.text("governingRoom", verdict.rooms().get(verdict.governing()).room());
    json.list("rooms", verdict.rooms(), this::room);
    json.number("flowAskedC", verdict.flowAsked(), 2);
    json.number("flowHeldC", verdict.flowHeld(), 2);
    json.number("leastFlowC", verdict.leastFlow(), 2);
    curve(verdict.leastCurve());
    if (verdict.warmUps().fromSetback().isPresent()) {
      warmUps("warmUpFromSetback", verdict.warmUps().fromSetback().get());
    } else {
      json.nothing("warmUpFromSetback");
    }
    warmUps("warmUpFromCold", verdict.warmUps().fromCold());
    heatPump(verdict.heatPump());
    boiler(verdict.boiler());
    season("season", verdict.season());
    json.list("comfort", verdict.comfort(), this::comfort);
    json.list("remedies", verdict.remedies(), this::remedy);
    json.list("demand", verdict.demand(), this::demand);
    Optional<OddsWords> odds = answers.oddsOf(verdict);
    if (odds.isPresent()) {
      odds(odds.get().odds());
    } else {
      json.nothing("odds");
    }
  }

  private void odds(Odds odds) {
    json.start("odds");
    estimate(odds.estimate());
    json.flag("converged", odds.converged());
    json.number("keepUpShareHeadsTurnedUp", odds.headsTurnedUp().keepUp(), 4);
    json.list("rooms", odds.rooms(), this::room);
    json.list("influences", odds.influences(), this::influence);
    json.list("convergence", odds.convergence(), this::estimate);
    json.end();
  }

  private void estimate(Odds.Estimate estimate) {
    json.count("samples", estimate.samples());
    json.number("keepUpShare", estimate.keepUp(), 4);
    json.number("standardError", estimate.standardError(), 4);
  }

  private void room(Odds.RoomOdds room) {
    json.text("room", room.room());
    json.number("failsShare", room.fails(), 4);
    json.number("worstShare", room.worst(), 4);
    json.number("medianShortfallK", room.medianShortfall(), 3);
  }

  private void influence(Odds.Influence influence) {
    json.text("what", influence.what().name().toLowerCase(Locale.ROOT));
    json.number("rankCorrelation", influence.correlation(), 4);
    json.number("spread", influence.what().of(answers.house().aims().spreads()), 4);
    json.text("spreadUnit", influence.what().isShare() ? "-" : "K");
  }

  private void demand(Verdict.Demand demand) {
    json.number("outdoorC", demand.outdoor(), 3);
    json.number("needW", demand.need(), 1);
    json.number("deliveryW", demand.delivery(), 1);
  }

  private void room(Holding.RoomAnswer room) {
    json.text("name", room.room());
    json.number("wantC", room.want(), 3);
    json.number("loadW", room.load(), 1);
    json.number("outputW", room.output(), 1);
    json.number("margin", room.margin(), 4);
    json.number("settledOperativeC", room.settled(), 3);
    json.flag("holds", room.holds());
    json.number("holdingOutdoorC", room.holdingOutdoor(), 2);
    json.number("leastFlowC", room.leastFlow(), 2);
  }

  private void curve(Optional<LeastCurve> least) {
    if (least.isEmpty()) {
      json.nothing("leastCurve");
      return;
    }
    json.start("leastCurve");
    json.number("slope", least.get().curve().slope(), 4);
    json.number("shiftK", least.get().curve().shift(), 3);
    json.number("lowestFlowC", least.get().curve().lowest(), 2);
    json.number("highestFlowC", least.get().curve().highest(), 2);
    json.end();
  }

  private void warmUps(String name, List<WarmUp> rooms) {
    json.list(name, rooms, this::warmUp);
  }

  private void warmUp(WarmUp room) {
    json.text("room", room.room());
    json.number("minutes", room.time(), Units.SECONDS_PER_MINUTE, 2);
    json.text("limit", room.limit().name().toLowerCase(Locale.ROOT));
    json.number("overshootK", room.overshoot(), 3);
  }

  private void heatPump(Optional<HeatPumpAnswer> answer) {
    if (answer.isEmpty()) {
      json.nothing("heatPump");
      return;
    }
    HeatPumpAnswer pump = answer.get();
    json.start("heatPump");
    json.text("unit", pump.unit());
    json.number("loadW", pump.load(), 1);
    json.number("capacityW", pump.capacity(), 1);
    json.number("capacityWithBackupW", pump.capacityWithBackup(), 1);
    json.number("flowAskedC", pump.flowAsked(), 2);
    json.number("flowNeededC", pump.flowNeeded(), 2);
    json.number("highestFlowC", pump.highestFlow(), 2);
    json.flag("mapCoversSeason", pump.covered());
    json.number("bivalenceOutdoorC", pump.bivalence(), 2);
    json.number("cyclesAboveOutdoorC", pump.cyclesAbove(), 2);
    cycling("mildWeather", pump.mild());
    cycling("mildWeatherWithWaterNeeded", pump.mildCured());
    json.number("waterVolumeLitres", pump.water().volume() / Units.CUBIC_METRES_PER_LITRE, 1);
    json.number("waterNeededLitres", pump.water().needed() / Units.CUBIC_METRES_PER_LITRE, 1);
    json.number("leastFlowKgPerS", pump.water().least(), 4);
    json.number("flowLeftKgPerS", pump.water().flowLeft(), 4);
    json.number("flowAtMostKgPerS", pump.water().flowAtMost(), 4);
    json.strings("doubts", pump.doubts());
    json.end();
  }

  private void cycling(String name, Optional<HeatPumpAnswer.Cycling> answer) {
    if (answer.isEmpty()) {
      json.nothing(name);
      return;
    }
    HeatPumpAnswer.Cycling cycling = answer.get();
    json.start(name);
    json.number("loadW", cycling.load(), 1);
    json.number("leastOutputW", cycling.least(), 1);
    json.number("onMinutes", cycling.onTime() / Units.SECONDS_PER_MINUTE, 2);
    json.number("offMinutes", cycling.offTime() / Units.SECONDS_PER_MINUTE, 2);
    json.number("startsPerHour", cycling.startsPerHour(), 3);
    json.end();
  }

  private void boiler(Optional<BoilerAnswer> answer) {
    if (answer.isEmpty()) {
      json.nothing("boiler");
      return;
    }
    BoilerAnswer boiler = answer.get();
    json.start("boiler");
    json.text("unit", boiler.unit());
    json.number("loadW", boiler.load(), 1);
    json.number("capacityW", boiler.capacity(), 1);
    json.number("flowAskedC", boiler.flowAsked(), 2);
    json.number("flowNeededC", boiler.flowNeeded(), 2);
    json.number("cyclesAboveOutdoorC", boiler.cyclesAbove(), 2);
    json.number("condensingShare", boiler.condensingShare(), 4);
    json.number("efficiency", boiler.efficiency(), 4);
    json.strings("doubts", boiler.doubts());
    json.end();
  }

  private void season(String name, Season season) {
    json.start(name);
    json.text("climate", season.climate().climate());
    json.number("designOutdoorC", season.climate().designOutdoor(), 3);
    json.start("asControlled");
    year(season.asControlled());
    json.end();
    if (season.leastFlow().isPresent()) {
      json.start("atLeastFlow");
      year(season.leastFlow().get());
      json.end();
    } else {
      json.nothing("atLeastFlow");
    }
    json.end();
  }

  private void year(Season.Year year) {
    Optional<Season.Consumption> taken = year.consumption();
    json.number("heatKWh", year.heat() / Units.JOULES_PER_KWH, 2);
    json.number("backupHeatKWh", year.backupHeat() / Units.JOULES_PER_KWH, 2);
    json.number("unmetHeatKWh", year.unmetHeat() / Units.JOULES_PER_KWH, 2);
    json.number("inputKWh", taken.map(c -> c.input() / Units.JOULES_PER_KWH).orElse(Double.NaN), 2);
    json.number("seasonalFactor", taken.map(Season.Consumption::factor).orElse(Double.NaN), 4);
    json.number("cost", taken.map(Season.Consumption::cost).orElse(Double.NaN), 2);
    json.number("carbonKg", taken.map(Season.Consumption::carbon).orElse(Double.NaN), 2);
    json.number("condensingShare", year.condensingShare(), 4);
    json.number("hoursBelowLeastOutput", year.hoursBelowMinimum(), 1);
  }

  private void comfort(ComfortAtRest comfort) {
    json.text("room", comfort.room());
    json.number("airC", comfort.comfort().air(), 3);
    json.number("radiantC", comfort.comfort().radiant(), 3);
    json.number("predictedMeanVote", comfort.comfort().vote(), 3);
    json.number("dissatisfiedShare", comfort.comfort().dissatisfied(), 4);
  }

  private void remedy(Remedy remedy) {
    json.text("room", remedy.room());
    json.text("kind", remedy.kind().name().toLowerCase(Locale.ROOT));
    json.text("unit", unit(remedy.kind()));
    json.number("from", remedy.from(), 4);
    json.number("to", remedy.to(), 4);
    json.number("limit", remedy.limit(), 4);
    json.flag("possible", remedy.possible());
  }

  private static String unit(Kind kind) {
    return switch (kind) {
      case PREHEAT -> "s";
      case BALANCE -> "-";
      case REFERENCE_ROOM, FLOW_TEMPERATURE -> "°C";
      case AIR_CHANGE -> "1/h";
      case PROFILE -> "W/m";
      case LENGTH -> "m";
      case RADIATOR, SOURCE -> "W";
      case WINDOW -> "W/m²K";
    };
  }
}
