package settle.plots.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import settle.sim.tuning.Aim;
import settle.sim.tuning.FirstOrderDeadTime;
import settle.sim.tuning.Flatness;
import settle.sim.tuning.LoopMargins;
import settle.sim.tuning.OverSpreads;
import settle.sim.tuning.Reason;
import settle.sim.tuning.Setting;
import settle.sim.tuning.Tuning;
import settle.sim.tuning.Tuning.Change;

/** A tuning in words: settings by their names, why, what it does, what cannot be had. */
public final class TuningWords {

  private static final double LITRES_PER_HOUR = 3600;

  /** Dead time below which it is none [s]. */
  private static final double SHORTEST_DEAD_TIME = 1;

  private final Tuning tuning;

  /**
   * @param tuning what was found
   */
  public TuningWords(Tuning tuning) {
    this.tuning = tuning;
  }

  /** What a setting is called. */
  public static String name(Setting setting) {
    if (setting instanceof Setting.Head head) {
      return head.room() + ", head";
    }
    if (setting instanceof Setting.FlowTemperature) {
      return "flow temperature";
    }
    if (setting instanceof Setting.CurveSlope) {
      return "weather compensation, slope";
    }
    if (setting instanceof Setting.CurveShift) {
      return "weather compensation, shift";
    }
    if (setting instanceof Setting.StartLead) {
      return "start before each period";
    }
    if (setting instanceof Setting.LockshieldTurns turns) {
      return turns.place() + ", lockshield";
    }
    if (setting instanceof Setting.PumpHead) {
      return "pump head";
    }
    if (setting instanceof Setting.ThermostatDifferential) {
      return "room thermostat, differential";
    }
    return setting instanceof Setting.MotorGain gain
        ? gain.room() + ", motor head's gain"
        : ((Setting.MotorIntegralTime) setting).room() + ", its integral time";
  }

  /** A value of a setting with its unit. */
  public static String value(Setting setting, double value) {
    if (setting instanceof Setting.Head || setting instanceof Setting.FlowTemperature) {
      return Quantities.temperature(value);
    }
    if (setting instanceof Setting.CurveSlope) {
      return Quantities.number(value, 2);
    }
    if (setting instanceof Setting.CurveShift
        || setting instanceof Setting.ThermostatDifferential) {
      return Quantities.difference(value);
    }
    if (setting instanceof Setting.StartLead || setting instanceof Setting.MotorIntegralTime) {
      return Quantities.duration(value);
    }
    if (setting instanceof Setting.LockshieldTurns) {
      return Quantities.number(value, 2) + " turns";
    }
    return setting instanceof Setting.PumpHead
        ? Quantities.pressure(value)
        : Quantities.number(value, 2) + " /K";
  }

  /** The answer in a sentence or two. */
  public String headline() {
    long moved = tuning.changes().stream().filter(Change::moved).count();
    String changes =
        tuning.changes().isEmpty()
            ? "there is nothing to set"
            : moved == 0
                ? "every setting is as good as can be found"
                : moved + " of " + tuning.changes().size() + " settings change";
    List<Aim> missed = tuning.after().missed();
    return changes
        + "; "
        + (missed.isEmpty()
            ? "every aim is met."
            : missed.size() == 1
                ? "one aim cannot be met."
                : missed.size() + " aims cannot be met.");
  }

  /** An aim with what comes of it. */
  public String aim(Aim aim) {
    return switch (aim.kind()) {
      case HELD ->
          aim.room()
              + " settles "
              + Quantities.difference(aim.value())
              + " below want at "
              + Quantities.setting(tuning.after().coldest().outdoor())
              + ", "
              + Quantities.difference(aim.miss())
              + " more than allowed";
      case WARM_UP ->
          Double.isInfinite(aim.value())
              ? aim.room()
                  + " does not get warm at "
                  + Quantities.setting(tuning.after().coldest().outdoor())
                  + " within its period, "
                  + Quantities.duration(aim.limit())
                  + " are allowed"
              : aim.room()
                  + " takes "
                  + Quantities.duration(aim.value())
                  + " to be warm at "
                  + Quantities.setting(tuning.after().coldest().outdoor())
                  + ", "
                  + Quantities.duration(aim.miss())
                  + " more than allowed";
      case OVERSHOOT ->
          aim.room()
              + " rises "
              + Quantities.difference(aim.value())
              + " above want on a usual day, "
              + Quantities.difference(aim.miss())
              + " more than allowed";
      case STARTS ->
          "the source starts "
              + Quantities.number(aim.value(), 1)
              + " times an hour on a usual day, "
              + Quantities.number(aim.miss(), 1)
              + " more than is good for it";
    };
  }

  /** The aims that cannot be met; empty if all are. */
  public List<String> missed() {
    return tuning.after().missed().stream().map(this::aim).toList();
  }

  /** Why the search began where it did: one reason for all settings that share it. */
  public List<String> reasons() {
    Map<String, List<String>> byReason = new LinkedHashMap<>();
    for (Change change : tuning.changes()) {
      String why = why(change);
      if (!why.isEmpty()) {
        byReason.computeIfAbsent(why, w -> new ArrayList<>()).add(name(change.setting()));
      }
    }
    return byReason.entrySet().stream()
        .map(e -> String.join("; ", e.getValue()) + ": " + e.getKey())
        .toList();
  }

  private String why(Change change) {
    Reason reason = change.reason();
    if (reason instanceof Reason.AtRest rest) {
      return "on a usual day ("
          + Quantities.temperature(rest.outdoor())
          + ") the room settles at "
          + Quantities.temperature(rest.settled())
          + ", wanted "
          + Quantities.setting(rest.want());
    }
    if (reason instanceof Reason.LeastFlow least) {
      return "heads open, "
          + Quantities.temperature(least.flow())
          + " holds every room at design weather";
    }
    if (reason instanceof Reason.LeastLine least) {
      return "heads open, the least line that holds every room has slope "
          + Quantities.number(least.curve().slope(), 2)
          + " and shift "
          + Quantities.difference(least.curve().shift());
    }
    if (reason instanceof Reason.Balanced balanced) {
      return "by a balance, "
          + balanced.index()
          + " being the index branch"
          + (change.setting() instanceof Setting.PumpHead
              ? ", for " + Quantities.number(balanced.flow() * LITRES_PER_HOUR, 0) + " kg/h in all"
              : "");
    }
    if (reason instanceof Reason.BalanceIdle) {
      return "a balance gains nothing worth a visit";
    }
    if (reason instanceof Reason.WarmUp warmUp) {
      return "without it "
          + warmUp.room()
          + " is warm "
          + Quantities.duration(warmUp.lateness())
          + " after its period has begun, on a usual day and all else as found";
    }
    if (reason instanceof Reason.LimitCycle limit) {
      return identified(limit.plant(), "K")
          + "; about its want that makes a cycle of "
          + Quantities.duration(limit.cycle().period())
          + " between "
          + Quantities.temperature(limit.cycle().least())
          + " and "
          + Quantities.temperature(limit.cycle().most())
          + ", "
          + Quantities.number(limit.cycle().startsPerHour(), 1)
          + " starts an hour";
    }
    if (reason instanceof Reason.Rule rule) {
      return identified(rule.plant(), "K for the whole lift")
          + "; SIMC with a closed loop of "
          + Quantities.duration(rule.rule().closedLoop())
          + " gives a gain of "
          + Quantities.number(rule.rule().gain(), 2)
          + " /K and an integral time of "
          + Quantities.duration(rule.rule().integralTime())
          + margin(rule);
    }
    return "";
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
    return "a step makes "
        + Quantities.number(plant.gain(), 1)
        + " "
        + unit
        + " with a time constant of "
        + Quantities.duration(plant.lag())
        + " after a dead time of "
        + Quantities.duration(plant.deadTime());
  }

  /** How far a setting may be off: what costs 5 % more, below and above. */
  public String flatness(Setting setting) {
    return tuning.flatness().stream()
        .filter(f -> f.setting().equals(setting))
        .findFirst()
        .map(f -> side("\u2212", setting, f.down()) + " / " + side("+", setting, f.up()))
        .orElse("");
  }

  private static String side(String sign, Setting setting, OptionalDouble off) {
    if (off.isEmpty()) {
      return "any";
    }
    boolean temperature =
        setting instanceof Setting.Head || setting instanceof Setting.FlowTemperature;
    return sign
        + (temperature
            ? Quantities.difference(off.getAsDouble())
            : value(setting, off.getAsDouble()));
  }

  /** How the settings fare in the houses it may be. */
  public List<String> spreads() {
    OverSpreads before = tuning.before().spreads();
    OverSpreads after = tuning.after().spreads();
    List<String> said = new ArrayList<>();
    said.add(
        "In the coldest weather "
            + Quantities.share(after.meeting())
            + " of "
            + after.houses()
            + " houses drawn over the spreads meet every aim, as found "
            + Quantities.share(before.meeting())
            + turnedUp(before, after)
            + ".");
    said.add(
        "Held least often by itself: "
            + after.weakest().room()
            + ", in "
            + Quantities.share(after.weakest().held())
            + "; as found "
            + before.weakest().room()
            + ", in "
            + Quantities.share(before.weakest().held())
            + ".");
    if (!after.worst().met()) {
      said.add("The worst of them, tuned: " + aim(after.worst()) + ".");
    }
    if (after.meeting() < before.meeting()) {
      said.add(
          "Fewer than as found: what is saved was reserve, beyond the share of houses asked for"
              + " room by room; a larger share (--sure) keeps more of it.");
    }
    return said;
  }

  /** What people can put right themselves; nothing where no head is set too low. */
  private static String turnedUp(OverSpreads before, OverSpreads after) {
    return after.turnedUp() == after.meeting() && before.turnedUp() == before.meeting()
        ? ""
        : "; once heads that are set too low are turned up, "
            + Quantities.share(after.turnedUp())
            + ", as found "
            + Quantities.share(before.turnedUp());
  }

  /** Which settings hardly matter, in a sentence; empty if all do. */
  public String careless() {
    String names =
        tuning.flatness().stream()
            .filter(f -> f.down().isEmpty() && f.up().isEmpty())
            .map(f -> name(f.setting()))
            .collect(Collectors.joining("; "));
    return names.isEmpty()
        ? ""
        : "Wherever they are set within their limits, less than "
            + Math.round(100 * Flatness.DEARER)
            + " % is gained or lost by: "
            + names
            + ".";
  }
}
