package settle.cli.output;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.plots.words.Answer;
import settle.plots.words.OddsWords;
import settle.sim.engine.HeldRun;
import settle.sim.engine.RestStatus;
import settle.sim.house.Aims;
import settle.sim.measure.Measure;
import settle.sim.study.BoilerAnswer;
import settle.sim.study.ComfortAtRest;
import settle.sim.study.HeatPumpAnswer;
import settle.sim.study.Holding;
import settle.sim.study.Judgement;
import settle.sim.study.LeastCurve;
import settle.sim.study.Lift;
import settle.sim.study.Odds;
import settle.sim.study.Remedies;
import settle.sim.study.Remedy;
import settle.sim.study.Season;
import settle.sim.study.Shortage;
import settle.sim.study.Verdict;
import settle.sim.study.WarmUps.WarmUp;

/**
 * The answers as one JSON document. Names are stable and carry their unit; what has no value is
 * null.
 */
public final class AnswersJson {

  private static final double HOURS_PER_DAY = 24;

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
    json.number("sureShare", aims.sure(), 4);
    json.list("arrangements", answers.verdicts(), this::arrangement);
    if (answers.written().isPresent()) {
      json.text("written", answers.written().get());
    } else {
      json.nothing("written");
    }
    json.strings("warnings", answers.warnings());
  }

  private void arrangement(Verdict verdict) {
    json.text("name", verdict.arrangement().name());
    json.text("answer", answer(verdict.outcome()));
    json.flag("confirmedByRun", verdict.confirmedByRun());
    json.flag("keepsUp", verdict.keepsUp());
    json.flag("holds", verdict.held());
    json.number("holdingOutdoorC", verdict.holdingOutdoor(), 2);
    json.text("governingRoom", verdict.rooms().get(verdict.governing()).room());
    shortage(verdict.shortage());
    json.list("rooms", verdict.rooms(), room -> room(verdict, room));
    json.list("daysRun", verdict.judgement().runs(), this::day);
    json.list("disagreements", verdict.judgement().disagreements(), this::disagreement);
    json.list("restless", verdict.judgement().restless(), this::restless);
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
    remedies(verdict.remedies());
    json.list("demand", verdict.demand(), this::demand);
    Optional<OddsWords> odds = answers.oddsOf(verdict);
    if (odds.isPresent()) {
      odds(odds.get().odds());
    } else {
      json.nothing("odds");
    }
    lift(verdict.lift());
  }

  private void lift(Optional<Lift> found) {
    if (found.isEmpty()) {
      json.nothing("lift");
      return;
    }
    Lift lift = found.get();
    json.start("lift");
    json.text("kind", lift.kind().name().toLowerCase(Locale.ROOT));
    json.text("room", lift.room());
    json.text("unit", lift.kind() == Lift.Kind.EMITTER ? "W" : "°C");
    json.number("from", lift.from(), 2);
    json.number("to", lift.to(), 2);
    json.number("keepUpShare", lift.share(), 4);
    json.end();
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
    json.number("failsShareHeadsTurnedUp", room.failsTurnedUp(), 4);
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

  private static String answer(Verdict.Outcome outcome) {
    return switch (outcome) {
      case YES -> "yes";
      case ONLY_JUST -> "onlyJust";
      case NO -> "no";
    };
  }

  private void shortage(Optional<Shortage> found) {
    if (found.isEmpty()) {
      json.nothing("shortage");
      return;
    }
    Shortage shortage = found.get();
    json.start("shortage");
    json.text("room", shortage.room());
    json.number("outdoorC", shortage.outdoor(), 2);
    json.number("operativeC", shortage.operative(), 3);
    json.flag("byRun", shortage.byRun());
    json.text("cause", shortage.cause().name().toLowerCase(Locale.ROOT));
    json.number("flowAskedC", shortage.flowAsked(), 2);
    json.number("flowNeededC", shortage.flowNeeded(), 2);
    json.number("outputW", shortage.output(), 1);
    json.number("loadW", shortage.load(), 1);
    json.end();
  }

  private void day(Judgement.Weather weather) {
    HeldRun.Day day = weather.run().orElseThrow();
    json.number("outdoorC", weather.outdoor(), 2);
    json.text("ending", day.ending().name().toLowerCase(Locale.ROOT));
    json.number("flowC", day.flow(), 2);
    json.number("returnC", day.returning(), 2);
    json.number("sourceHeatW", day.sourceHeat(), 1);
    json.number("inputW", day.input(), 1);
    json.number("startsPerHour", day.starts() / HOURS_PER_DAY, 3);
    json.number("blockedShare", day.blocked(), 4);
  }

  private void disagreement(Judgement.Disagreement found) {
    json.text("room", found.room());
    json.number("outdoorC", found.outdoor(), 2);
    json.number("atRestOperativeC", found.atRest(), 3);
    json.number("runMeanOperativeC", found.mean(), 3);
    json.number("runLeastOperativeC", found.least(), 3);
    json.number("runMostOperativeC", found.most(), 3);
  }

  /** A weather in which the house does not stand still, and why. */
  private void restless(Judgement.Weather weather) {
    RestStatus status = weather.rest().status();
    json.number("outdoorC", weather.outdoor(), 2);
    if (Double.isFinite(status.uncertainty())) {
      json.number("uncertaintyK", status.uncertainty(), 3);
    } else {
      json.nothing("uncertaintyK");
    }
    json.strings(
        "reasons",
        status.reasons().stream()
            .map(r -> r.kind().name().toLowerCase(Locale.ROOT))
            .distinct()
            .toList());
  }

  /** The room in every weather looked at: where it is held and where not. */
  private void weather(Judgement judgement, int room, Judgement.Weather weather) {
    json.number("outdoorC", weather.outdoor(), 2);
    json.flag("held", weather.shortfall()[room] <= 0);
    json.flag("byRun", weather.byRun());
    json.number("shortfallK", weather.shortfall()[room], 3);
    if (weather.run().isPresent()) {
      HeldRun.Day day = weather.run().get();
      int index = judgement.rooms().get(room).index();
      json.number("operativeC", day.operative()[index], 3);
      json.number("leastOperativeC", day.least()[index], 3);
      json.number("mostOperativeC", day.most()[index], 3);
    }
    json.number("atRestOperativeC", weather.rest().operative()[room], 3);
    json.flag("standsStill", weather.rest().claims());
    json.number("atRestLowestC", weather.rest().lowest()[room], 3);
    json.number("atRestHighestC", weather.rest().highest()[room], 3);
  }

  private void room(Verdict verdict, Holding.RoomAnswer room) {
    json.text("name", room.room());
    json.number("wantC", room.want(), 3);
    json.number("loadW", room.load(), 1);
    json.number("outputW", room.output(), 1);
    json.number("margin", room.margin(), 4);
    json.number("settledOperativeC", room.settled(), 3);
    json.flag("holds", room.holds());
    json.number("holdingOutdoorC", room.holdingOutdoor(), 2);
    Judgement judgement = verdict.judgement();
    int at = verdict.rooms().indexOf(room);
    json.number("notHeldFromOutdoorC", judgement.lostFrom(at), 2);
    json.number("leastFlowC", room.leastFlow(), 2);
    json.list("weathers", judgement.weathers(), weather -> weather(judgement, at, weather));
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
    json.number("mildOutdoorC", pump.mildOutdoor(), 2);
    cycling("mildWeather", pump.mild());
    cycling("mildWeatherWithWaterNeeded", pump.mildCured());
    json.number("waterVolumeLitres", pump.water().volume() / Units.CUBIC_METRES_PER_LITRE, 1);
    json.number("waterVolumeAllOpenLitres", pump.water().total() / Units.CUBIC_METRES_PER_LITRE, 1);
    json.number("waterNeededLitres", pump.water().needed() / Units.CUBIC_METRES_PER_LITRE, 1);
    json.number("leastFlowKgPerS", pump.water().least(), 4);
    json.number("flowLeftKgPerS", pump.water().flowLeft(), 4);
    json.number("flowAtMostKgPerS", pump.water().flowAtMost(), 4);
    json.number("throttledFromOutdoorC", pump.water().throttledFrom(), 2);
    json.number("riseAtLeastOutputK", pump.water().rise(), 2);
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

  private void remedies(Remedies remedies) {
    json.list("remedies", remedies.tried(), this::remedy);
    if (remedies.cure().isPresent()) {
      json.start("cure");
      json.list("measures", remedies.cure().get().measures(), this::measure);
      json.list("rooms", remedies.cure().get().effects(), this::effect);
      json.end();
    } else {
      json.nothing("cure");
    }
    json.list("outOfReach", remedies.outOfReach(), this::outOfReach);
    json.strings("kindsTried", remedies.kinds().stream().map(AnswersJson::word).toList());
    json.count("housesJudged", remedies.judged());
    json.count("housesJudgedAtMost", remedies.most());
  }

  private void remedy(Remedy remedy) {
    json.text("room", remedy.room());
    change(remedy.measure());
    json.number("limit", OptionalDouble.of(remedy.limit()), unit(remedy.kind()).inSi(), 4);
    json.text("status", remedy.status().name().toLowerCase(Locale.ROOT));
    json.flag("possible", remedy.suffices());
    json.flag("wholeHouse", remedy.whole());
    json.list("rooms", remedy.effects(), this::effect);
    json.strings("roomsLost", remedy.lost());
  }

  private void measure(Measure measure) {
    json.text("room", measure.room());
    change(measure);
  }

  private void change(Measure measure) {
    Unit unit = unit(measure.kind());
    json.text("kind", word(measure.kind()));
    json.text("unit", unit.symbol());
    json.number("from", OptionalDouble.of(measure.from()), unit.inSi(), 4);
    json.number("to", OptionalDouble.of(measure.to()), unit.inSi(), 4);
    json.text("words", Answer.words(measure));
  }

  private void effect(Remedy.Effect effect) {
    json.text("room", effect.room());
    json.number("outdoorC", effect.outdoor(), 2);
    json.number("beforeC", effect.before(), 3);
    json.number("afterC", effect.after(), 3);
    json.number("shortBeforeK", effect.shortBefore(), 3);
    json.number("shortAfterK", effect.shortAfter(), 3);
  }

  private void outOfReach(Remedies.OutOfReach room) {
    json.text("room", room.room());
    json.number("flowC", room.flow(), 2);
    json.number("outputW", room.output(), 1);
    json.number("loadW", room.load(), 1);
  }

  private static String word(Measure.Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  /** A unit as it is written, and what one of it is in SI. */
  private record Unit(String symbol, double inSi) {}

  private static Unit unit(Measure.Kind kind) {
    return switch (kind) {
      case PREHEAT -> new Unit("s", 1);
      case BALANCE, REFERENCE_ROOM -> new Unit("-", 1);
      case LOCKSHIELD, THROTTLE -> new Unit("turns", 1);
      case HEADS, CURVE, FLOW_TEMPERATURE -> new Unit("°C", 1);
      case PUMP, BYPASS -> new Unit("kPa", 1000);
      case BUFFER -> new Unit("l", Units.CUBIC_METRES_PER_LITRE);
      case AIR_CHANGE -> new Unit("1/h", 1);
      case PROFILE -> new Unit("W/m", 1);
      case LENGTH -> new Unit("m", 1);
      case RADIATOR, SOURCE -> new Unit("W", 1);
      case WINDOW -> new Unit("W/m²K", 1);
    };
  }
}
