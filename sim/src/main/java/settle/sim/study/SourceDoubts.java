package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.house.House;
import settle.sim.house.WaterProperties;
import settle.sim.notice.Code;
import settle.sim.notice.Notice;
import settle.sim.source.WaterNeeded;

/** What is doubtful about a source with what it heats, each a notice with its numbers. */
final class SourceDoubts {

  /** How far the flow temperature may be from what is needed without a word [K]. */
  private static final double FLOW_MARGIN = 1;

  /** Flow temperature asked for beyond need that is worth a word [K]. */
  private static final double FLOW_SURPLUS = 5;

  /** Share of a day without the least flow that is worth a word [-]. */
  private static final double BLOCKED = 0.01;

  /** Gain that is worth a word, as a share of the factor [-]. */
  private static final double WORTHWHILE = 0.01;

  /** Share of a season's heat by electric heaters that is worth a word [-]. */
  private static final double BACKUP_SHARE = 0.02;

  /**
   * Share of its flue's vapour that a boiler condenses at a return of some 45 °C [-]; with less it
   * gives away what it could do; common practice, no source.
   */
  private static final double CONDENSING_SHARE = 0.25;

  private SourceDoubts() {}

  static List<Notice> about(HeatPumpAnswer answer, House house) {
    List<Notice> doubts = new ArrayList<>();
    power(doubts, answer);
    HeatPumpAnswer.Flow flow = answer.flow();
    if (flow.needed().orElse(0) > flow.highest()) {
      doubts.add(Notice.of(Code.FLOW_OUT_OF_REACH, flow.needed().getAsDouble(), flow.highest()));
    } else {
      flow(doubts, flow.asked(), flow.needed());
    }
    if (flow.asked() > flow.highest()) {
      doubts.add(Notice.of(Code.CURVE_TOO_HIGH, flow.asked(), flow.highest()));
    }
    surplus(doubts, Code.FLOW_LOWERS_FACTOR, answer.season(), flow.asked(), flow.needed());
    if (!flow.covered()) {
      doubts.add(
          Notice.of(
              Code.DESIGN_NOT_DECLARED,
              house.designOutdoor(),
              Math.min(flow.asked(), flow.highest())));
    }
    cycling(doubts, answer);
    water(doubts, answer, house.water());
    return doubts;
  }

  private static void water(List<Notice> doubts, HeatPumpAnswer answer, WaterProperties liquid) {
    HeatPumpAnswer.Water water = answer.water();
    double least = liquid.litresPerHour(water.least());
    if (water.neverRuns()) {
      doubts.add(Notice.of(Code.NEVER_RUNS, liquid.litresPerHour(water.flowAtMost()), least));
    } else if (water.throttledFrom().isPresent() && !blocked(doubts, answer.days())) {
      doubts.add(
          Notice.of(
              Code.THROTTLED,
              water.throttledFrom().getAsDouble(),
              least,
              answer.mild().outdoor(),
              liquid.litresPerHour(water.flowLeft())));
    }
  }

  /** What runs say of too little flow; whether they say anything. */
  private static boolean blocked(List<Notice> doubts, List<SourceDay> days) {
    SourceDay most = null;
    for (SourceDay day : days) {
      boolean notable = day.blocked() > BLOCKED;
      most = notable && (most == null || day.blocked() > most.blocked()) ? day : most;
    }
    if (most == null) {
      return false;
    }
    doubts.add(Notice.of(Code.STANDS_STILL, most.outdoor(), most.blocked()));
    return true;
  }

  private static void power(List<Notice> doubts, HeatPumpAnswer answer) {
    if (answer.capacityWithBackup() < answer.load()) {
      doubts.add(
          Notice.of(
              Code.TOO_SMALL_WITH_HEATER,
              answer.capacityWithBackup(),
              answer.load(),
              answer.load() - answer.capacity()));
    }
    double share =
        answer.season().asControlled().backupHeat() / answer.season().asControlled().heat();
    if (answer.bivalence().isPresent() && share > BACKUP_SHARE) {
      doubts.add(Notice.of(Code.MUCH_BACKUP, answer.bivalence().getAsDouble(), share));
    }
  }

  private static void cycling(List<Notice> doubts, HeatPumpAnswer answer) {
    double lacking = answer.water().lacking();
    if (answer.mild().now().isEmpty()) {
      return;
    }
    HeatPumpAnswer.Cycling now = answer.mild().now().get();
    double outdoor = answer.mild().outdoor();
    if (answer.water().passesTooLittle()) {
      doubts.add(
          Notice.of(
              Code.PASSES_TOO_LITTLE, outdoor, answer.water().rise(), answer.water().swing()));
    } else if (lacking > 0) {
      doubts.add(
          Notice.of(
              Code.VOLUME_LACKING,
              outdoor,
              now.least(),
              now.load(),
              now.startsPerHour(),
              lacking,
              answer.mild().cured().orElseThrow().startsPerHour()));
    } else if (now.startsPerHour() > WaterNeeded.OFTEN) {
      doubts.add(Notice.of(Code.STARTS_OFTEN, outdoor, now.startsPerHour(), WaterNeeded.OFTEN));
    }
  }

  static List<Notice> about(BoilerAnswer answer, House house) {
    List<Notice> doubts = new ArrayList<>();
    if (answer.capacity() < answer.load()) {
      doubts.add(Notice.of(Code.TOO_SMALL, answer.capacity(), answer.load()));
    }
    flow(doubts, answer.flowAsked(), answer.flowNeeded());
    surplus(
        doubts,
        Code.FLOW_LOWERS_EFFICIENCY,
        answer.season(),
        answer.flowAsked(),
        answer.flowNeeded());
    if (answer.condensingShare() < CONDENSING_SHARE) {
      doubts.add(Notice.of(Code.CONDENSES_LITTLE, answer.condensingShare()));
    }
    double middle = (house.designOutdoor() + Holding.MILDEST) / 2;
    if (answer.cyclesAbove().orElse(Double.POSITIVE_INFINITY) < middle) {
      doubts.add(Notice.of(Code.MODULATES_TOO_LITTLE, answer.cyclesAbove().getAsDouble()));
    }
    return doubts;
  }

  private static void flow(List<Notice> doubts, double asked, OptionalDouble needed) {
    if (needed.isEmpty()) {
      doubts.add(Notice.of(Code.NO_FLOW_HOLDS, Holding.HOTTEST_FLOW));
    } else if (needed.getAsDouble() > asked + FLOW_MARGIN) {
      doubts.add(Notice.of(Code.FLOW_TOO_LOW, asked, needed.getAsDouble()));
    }
  }

  /**
   * What could be gained by asking for no more than is needed. Not always anything: heads throttle
   * hotter water, so that it comes back colder, which is all that a boiler minds.
   */
  private static void surplus(
      List<Notice> doubts, Code code, Season season, double asked, OptionalDouble needed) {
    if (needed.isEmpty() || asked <= needed.getAsDouble() + FLOW_SURPLUS) {
      return;
    }
    double now = factor(Optional.of(season.asControlled()));
    double least = factor(season.leastFlow());
    if (least > now * (1 + WORTHWHILE)) {
      doubts.add(Notice.of(code, asked, needed.getAsDouble(), least, now));
    }
  }

  private static double factor(Optional<Season.Year> year) {
    return year.flatMap(Season.Year::consumption).map(Season.Consumption::factor).orElse(0.0);
  }
}
