package settle.plots.words;

import static settle.plots.words.Sentences.say;

import settle.sim.tuning.FirstOrderDeadTime;
import settle.sim.tuning.LoopMargins;
import settle.sim.tuning.Reason;
import settle.sim.tuning.Setting;

/**
 * Why a search began where it did, in words; empty where nothing better was known than what was
 * found.
 *
 * @param setting whose beginning it is
 */
record StartReason(Setting setting) implements Reason.Cases<String> {

  private static final double KILOGRAMS_PER_HOUR = 3600;

  /** Dead time below which it is none [s]. */
  private static final double SHORTEST_DEAD_TIME = 1;

  @Override
  public String asFound() {
    return "";
  }

  @Override
  public String atRest(Reason.AtRest rest) {
    return say(
        "on a usual day ({}) the room settles at {}; {} is wanted",
        Quantities.temperature(rest.outdoor()),
        Quantities.temperature(rest.settled()),
        Quantities.setting(rest.want()));
  }

  @Override
  public String leastFlow(Reason.LeastFlow least) {
    return say(
        "with heads open, {} holds every room in design weather",
        Quantities.temperature(least.flow()));
  }

  @Override
  public String leastLine(Reason.LeastLine least) {
    return say(
        "with heads open, the lowest curve that holds every room has slope {} and shift {}",
        Quantities.number(least.curve().slope(), 2),
        Quantities.difference(least.curve().shift()));
  }

  @Override
  public String balanced(Reason.Balanced balanced) {
    return say(
        "by balancing, with {} as the index branch{}",
        balanced.index(),
        setting.kind() == Setting.Kind.PUMP_HEAD
            ? say(
                ", for a total of {} kg/h",
                Quantities.number(balanced.flow() * KILOGRAMS_PER_HOUR, 0))
            : "");
  }

  @Override
  public String warmUp(Reason.WarmUp warmUp) {
    return say(
        "without it {} is warm {} after its period begins, on a usual day, before anything else is set",
        warmUp.room(),
        Quantities.duration(warmUp.lateness()));
  }

  @Override
  public String limitCycle(Reason.LimitCycle limit) {
    return say(
        "{}; about want that gives a cycle of {} between {} and {}, {} starts an hour",
        identified(limit.plant(), "K"),
        Quantities.duration(limit.cycle().period()),
        Quantities.temperature(limit.cycle().least()),
        Quantities.temperature(limit.cycle().most()),
        Quantities.number(limit.cycle().startsPerHour(), 1));
  }

  @Override
  public String rule(Reason.Rule rule) {
    return say(
        "{}; SIMC with a closed loop of {} gives a gain of {} /K and an integral time of {}{}",
        identified(rule.plant(), "K for the whole lift"),
        Quantities.duration(rule.rule().closedLoop()),
        Quantities.number(rule.rule().gain(), 2),
        Quantities.duration(rule.rule().integralTime()),
        margin(rule));
  }

  /** How much stronger the loop may get; without a dead time there is no end to it. */
  private static String margin(Reason.Rule rule) {
    if (rule.plant().deadTime() < SHORTEST_DEAD_TIME) {
      return "";
    }
    double margin =
        LoopMargins.of(rule.plant(), rule.rule().gain(), rule.rule().integralTime()).gainMargin();
    return ", a gain margin of " + Quantities.number(margin, 1);
  }

  private static String identified(FirstOrderDeadTime plant, String unit) {
    return say(
        "a step gives {} {} with a time constant of {} after a dead time of {}",
        Quantities.number(plant.gain(), 1),
        unit,
        Quantities.duration(plant.lag()),
        Quantities.duration(plant.deadTime()));
  }
}
