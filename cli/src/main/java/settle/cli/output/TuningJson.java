package settle.cli.output;

import java.util.List;
import java.util.Locale;
import settle.plots.words.TuningWords;
import settle.sim.result.LastDay;
import settle.sim.result.PlantFigures;
import settle.sim.result.RoomFigures;
import settle.sim.study.Season;
import settle.sim.tuning.Aim;
import settle.sim.tuning.FirstOrderDeadTime;
import settle.sim.tuning.Flatness;
import settle.sim.tuning.OverSpreads;
import settle.sim.tuning.Reason;
import settle.sim.tuning.Setting;
import settle.sim.tuning.Spell;
import settle.sim.tuning.Tuning;
import settle.sim.tuning.Tuning.Change;
import settle.sim.tuning.Tuning.Performance;

/** A tuning as one JSON document: settings in their SI units, which are named beside them. */
public final class TuningJson {

  private final JsonDocument json;
  private final Tuning tuning;

  private TuningJson(JsonDocument json, Tuning tuning) {
    this.json = json;
    this.tuning = tuning;
  }

  /**
   * The document.
   *
   * @param outcome what was found
   * @param version the tool's version
   * @return JSON text, ending with a newline
   */
  public static String write(TunedOutcome outcome, String version) {
    return JsonDocument.write(
        outcome.command(),
        outcome.scenario(),
        version,
        json -> {
          new TuningJson(json, outcome.tuning()).document();
          json.texts("warnings", outcome.notes());
        });
  }

  private void document() {
    json.text("arrangement", tuning.found().arrangement().name());
    json.flag("meetsAims", tuning.after().meetsAims());
    json.start("search");
    json.text("ending", tuning.search().converged() ? "converged" : "trialsUsedUp");
    json.count("trials", tuning.search().trials());
    json.count("starts", tuning.search().starts());
    json.end();
    json.start("weighed");
    json.number("kelvinFromWantPerDay", tuning.prices().kelvin(), 4);
    json.number("settingTouchedPerDay", tuning.prices().change(), 4);
    json.end();
    json.list("settings", tuning.changes(), this::setting);
    json.start("found");
    performance(tuning.before());
    json.end();
    json.start("tuned");
    performance(tuning.after());
    json.end();
  }

  private void setting(Change change) {
    Setting setting = change.setting();
    json.text("name", TuningWords.name(setting));
    json.text("group", setting.group().name().toLowerCase(Locale.ROOT));
    json.text("unit", unit(setting));
    json.exactly("found", change.before());
    json.exactly("workedOut", change.workedOut());
    json.exactly("tuned", change.after());
    json.flag("canBeSetByHand", change.onMark());
    reason(change.reason());
    for (Flatness flat : tuning.flatness()) {
      if (flat.setting().equals(setting)) {
        json.number("fivePercentDearerBelowBy", flat.down(), 3);
        json.number("fivePercentDearerAboveBy", flat.up(), 3);
        json.list(
            "alongIt",
            flat.points(),
            point -> {
              json.number("value", point.value(), 4);
              json.number("dearerPerDay", point.dearer(), 4);
            });
      }
    }
  }

  private void reason(Reason reason) {
    FirstOrderDeadTime plant =
        reason instanceof Reason.Rule rule
            ? rule.plant()
            : reason instanceof Reason.LimitCycle limit ? limit.plant() : null;
    if (plant != null) {
      json.start("identified");
      json.number("gainK", plant.gain(), 3);
      json.number("timeConstantSeconds", plant.lag(), 1);
      json.number("deadTimeSeconds", plant.deadTime(), 1);
      json.end();
    }
  }

  private static String unit(Setting setting) {
    if (setting instanceof Setting.Head || setting instanceof Setting.FlowTemperature) {
      return "°C";
    }
    if (setting instanceof Setting.CurveShift
        || setting instanceof Setting.ThermostatDifferential) {
      return "K";
    }
    if (setting instanceof Setting.CurveSlope) {
      return "K/K";
    }
    if (setting instanceof Setting.StartLead || setting instanceof Setting.MotorIntegralTime) {
      return "s";
    }
    if (setting instanceof Setting.LockshieldTurns) {
      return "turns";
    }
    return setting instanceof Setting.PumpHead ? "Pa" : "1/K";
  }

  private void performance(Performance performance) {
    day("usualDay", performance.usual());
    day("mildDay", performance.mild());
    day("coldestDay", performance.coldest());
    performance
        .season()
        .flatMap(Season.Year::consumption)
        .ifPresentOrElse(
            c -> {
              json.number("seasonInputKWh", c.input() / Units.JOULES_PER_KWH, 1);
              json.number("seasonCost", c.cost(), 2);
            },
            () -> {
              json.nothing("seasonInputKWh");
              json.nothing("seasonCost");
            });
    json.list("aims", performance.aims(), this::aim);
    OverSpreads spreads = performance.spreads();
    json.start("overSpreads");
    json.count("houses", spreads.houses());
    json.number("meetingShare", spreads.meeting(), 4);
    json.number("meetingShareHeadsTurnedUp", spreads.turnedUp(), 4);
    json.text("weakestRoom", spreads.weakest().room());
    json.number("weakestRoomHeldShare", spreads.weakest().held(), 4);
    json.list("worst", List.of(spreads.worst()), this::aim);
    json.end();
    json.start("weighedPerDay");
    json.number("energy", performance.worth().energy(), 4);
    json.number("discomfort", performance.worth().discomfort(), 4);
    json.number("aimsMissed", performance.worth().misses(), 4);
    json.number("settingsTouched", performance.worth().effort(), 4);
    json.end();
  }

  private void day(String name, Spell day) {
    PlantFigures plant = day.run().plant();
    json.start(name);
    json.number("outdoorC", day.outdoor(), 2);
    json.count("days", day.days());
    json.number("inputPerDayKWh", day.inputPerDay() / Units.JOULES_PER_KWH, 3);
    json.number("costPerDay", day.costPerDay(tuning.found().house()), 4);
    json.number("flowMeanC", plant.flowMean(), 2);
    json.number("returnMeanC", plant.returnMean(), 2);
    json.number("sourceStartsPerHour", plant.cycling().startsPerHour(), 3);
    json.number("awayFromWantK", day.awayFromWant(), 3);
    json.list("rooms", day.rooms(), room -> room(room, day));
    json.end();
  }

  private void room(RoomFigures room, Spell day) {
    Spell.Warmth warmth = day.warmth().get(room.name());
    json.text("name", room.name());
    json.number("wantC", room.want(), 3);
    LastDay last = room.lastDay();
    json.number("settledOperativeC", last.settles() ? last.operative() : Double.NaN, 3);
    json.number("lastDayOperativeC", last.operative(), 3);
    json.number("onceWarmC", room.want() - warmth.below(), 3);
    json.number("warmUpMinutes", room.warmUp(), Units.SECONDS_PER_MINUTE, 2);
    json.number("lateMinutes", warmth.lateness() / Units.SECONDS_PER_MINUTE, 2);
    json.number("overshootK", room.overshoot(), 3);
    json.number("swingK", room.valveSwing(), 3);
  }

  private void aim(Aim aim) {
    json.text("aim", aim.kind().name().toLowerCase(Locale.ROOT));
    json.text("day", aim.when().name().toLowerCase(Locale.ROOT));
    json.text("room", aim.room());
    json.number("value", aim.value(), 4);
    json.number("limit", aim.limit(), 4);
    json.flag("met", aim.met());
  }
}
