package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import settle.sim.tuning.Aim;
import settle.sim.tuning.Flatness;
import settle.sim.tuning.OverSpreads;
import settle.sim.tuning.Setting;
import settle.sim.tuning.Tuning;
import settle.sim.tuning.Tuning.Change;
import settle.sim.valve.KnobScale;

/** A tuning in words: settings by their names, why, what it does, what is missed. */
public final class TuningWords {

  /** Strokes from one number of a knob to the next. */
  private static final int STROKES = 4;

  private static final int EIGHTHS = 8;

  private static final String PLUS = "+";
  private static final String MINUS = "\u2212";

  /** How far to trust it. */
  public static final String TRUST =
      "Days are run in steady weather without sun, with the scenario's gains; the coldest weather without set-back or gains."
          + " Shares of houses drawn at random and the season are calculated at rest, not run.";

  /** What the short answer leaves out. */
  public static final String MORE =
      "what it does day by day and room by room, and how it was worked out";

  /** Amount below which thousandths are shown [currency]. */
  private static final double SMALL_CHANGE = 0.1;

  private final Tuning tuning;

  /**
   * @param tuning what was found
   */
  public TuningWords(Tuning tuning) {
    this.tuning = tuning;
  }

  /** What a setting is called. */
  public static String name(Setting setting) {
    return switch (setting.kind()) {
      case HEAD -> setting.where() + ", head";
      case FLOW_TEMPERATURE -> "flow temperature";
      case CURVE_SLOPE -> "weather compensation, slope";
      case CURVE_SHIFT -> "weather compensation, shift";
      case START_LEAD -> "start before each period";
      case LOCKSHIELD_TURNS -> setting.where() + ", lockshield";
      case PUMP_HEAD -> "pump head";
      case THERMOSTAT_DIFFERENTIAL -> "room thermostat, differential";
      case MOTOR_GAIN -> setting.where() + ", motor head's gain";
      case MOTOR_INTEGRAL_TIME -> setting.where() + ", its integral time";
    };
  }

  /** A value of a setting with its unit, as it is read off what is turned. */
  public String value(Setting setting, double value) {
    return switch (setting.kind()) {
      case HEAD -> head(setting, value);
      case FLOW_TEMPERATURE -> Quantities.setting(value);
      case LOCKSHIELD_TURNS -> turns(value);
      default -> difference(setting, value);
    };
  }

  private String head(Setting setting, double value) {
    String knob =
        setting.turnsKnob(tuning.found())
            ? Quantities.fraction(KnobScale.position(value), STROKES)
            : "";
    return knob.isEmpty()
        ? Quantities.temperature(value)
        : knob + " (" + Quantities.setting(value) + ")";
  }

  private static String turns(double value) {
    String turns = Quantities.fraction(value, EIGHTHS);
    return (turns.isEmpty() ? Quantities.number(value, 2) : turns)
        + (value > 1 ? " turns" : " turn");
  }

  /** A difference of a setting, with its unit. */
  private static String difference(Setting setting, double off) {
    return switch (setting.kind()) {
      case HEAD, FLOW_TEMPERATURE, CURVE_SHIFT, THERMOSTAT_DIFFERENTIAL ->
          Quantities.difference(off);
      case CURVE_SLOPE -> Quantities.number(off, 2);
      case LOCKSHIELD_TURNS -> Quantities.number(off, 2) + " turns";
      case PUMP_HEAD -> Quantities.pressure(off);
      case START_LEAD, MOTOR_INTEGRAL_TIME -> Quantities.duration(off);
      case MOTOR_GAIN -> Quantities.number(off, 2) + " /K";
    };
  }

  /** The answer in a sentence or two. */
  public String headline() {
    long moved = tuning.changes().stream().filter(Change::moved).count();
    String changes =
        tuning.changes().isEmpty()
            ? "there is nothing to set"
            : moved == 0
                ? "every setting is as good as can be found"
                : say(
                    "{} of {} {} {}",
                    moved,
                    tuning.changes().size(),
                    tuning.changes().size() == 1 ? "setting" : "settings",
                    moved == 1 ? "changes" : "change");
    List<Aim> missed = tuning.after().missed();
    return say(
        "{}; {}",
        changes,
        missed.isEmpty()
            ? "every aim is met in runs of a usual, a mild and the coldest day."
            : missed.size() == 1
                ? "one aim is still missed."
                : missed.size() + " aims are still missed.");
  }

  /** The days that were run, in a sentence. */
  public String days() {
    Tuning.Performance after = tuning.after();
    String asked =
        tuning.found().house().aims().warmUp().isPresent()
            ? ""
            : say(
                " Since no longest warm-up is set, a room with set-back may be {} late on a usual or a mild day.",
                Quantities.duration(Aim.LATEST));
    return say(
        "Run: a usual day, at the mean outdoor temperature of a season's heat ({}); a mild one, with a tenth of that heat made in milder weather ({}); the coldest ({}), in which each room is to be held without set-back{}{}",
        Quantities.temperature(after.usual().outdoor()),
        Quantities.temperature(after.mild().outdoor()),
        Quantities.setting(after.coldest().outdoor()),
        after.usual().days() > 1 ? "; each for a week, since days differ." : ".",
        asked);
  }

  /** How the search went, in a sentence. */
  public String search() {
    Tuning.Searched search = tuning.search();
    String tried =
        say(
            "Tried {} combinations of settings that can be made by hand, from {}",
            search.trials(),
            search.starts() == 1 ? "one start" : search.starts() + " starts");
    return search.converged()
        ? tried
            + "; none one mark away from the answer is better by a thousandth. Of settings that are"
            + " as good within a thousandth, the least change is taken."
        : say("{}; the search stopped at its limit, so better settings may exist.", tried);
  }

  /** What is weighed against what, in a sentence. */
  public String prices() {
    return say(
        "Weighting: 1 K from want in every room all day counts as {}, a setting to be changed as {}, and an aim missed by 1 K, 1 h or five starts an hour as twice a day's energy (common practice, no source).",
        moneyPerDay(tuning.prices().kelvin()),
        moneyPerDay(tuning.prices().change()));
  }

  /** An amount of money as the tariffs have it. */
  private String moneyPerDay(double amount) {
    String currency = tuning.found().house().aims().tariffs().currency();
    String number = Quantities.number(amount, amount < SMALL_CHANGE ? 3 : 2);
    return currency.isEmpty() ? number + " a day by the tariffs" : currency + number + " a day";
  }

  /** What stays as it was found although it is on no mark; empty if there is none. */
  public String offMarks() {
    String names =
        tuning.changes().stream()
            .filter(change -> !change.onMark())
            .map(change -> name(change.setting()) + " " + value(change.setting(), change.after()))
            .collect(Collectors.joining("; "));
    return names.isEmpty()
        ? ""
        : say("Left as found although between marks or below what can be set by hand: {}.", names);
  }

  /** In which weather, with its temperature. */
  private String when(Aim aim) {
    return switch (aim.when()) {
      case USUAL ->
          "on a usual day (" + Quantities.temperature(tuning.after().usual().outdoor()) + ")";
      case MILD ->
          "on a mild day (" + Quantities.temperature(tuning.after().mild().outdoor()) + ")";
      case COLDEST -> "at " + Quantities.setting(tuning.after().coldest().outdoor());
    };
  }

  /** An aim with what comes of it. */
  public String aim(Aim aim) {
    return switch (aim.kind()) {
      case SETTLED ->
          say(
              "{} settles {} below want {} (at rest, not run), {} more than allowed",
              aim.room(),
              Quantities.difference(aim.value()),
              when(aim),
              Quantities.difference(aim.miss()));
      case HELD ->
          say(
              "{} is {} below want {}{}{} more than allowed",
              aim.room(),
              Quantities.difference(aim.value()),
              when(aim),
              aim.when() == Aim.When.COLDEST ? " without set-back, " : ", ",
              Quantities.difference(aim.miss()));
      case LATE ->
          say(
              "{} is warm {} late {}, {} more than allowed",
              aim.room(),
              Quantities.duration(aim.value()),
              when(aim),
              Quantities.duration(aim.miss()));
      case WARM_UP ->
          Double.isInfinite(aim.value())
              ? say(
                  "{} does not get warm {} within its period; {} is allowed",
                  aim.room(),
                  when(aim),
                  Quantities.duration(aim.limit()))
              : say(
                  "{} takes {} to be warm {}, {} more than allowed",
                  aim.room(),
                  Quantities.duration(aim.value()),
                  when(aim),
                  Quantities.duration(aim.miss()));
      case OVERSHOOT ->
          say(
              "{} rises {} above want {}, {} more than allowed",
              aim.room(),
              Quantities.difference(aim.value()),
              when(aim),
              Quantities.difference(aim.miss()));
      case STARTS ->
          say(
              "the source starts {} times an hour {}, {} more than it should",
              Quantities.number(aim.value(), 1),
              when(aim),
              Quantities.number(aim.miss(), 1));
    };
  }

  /** The aims that are missed; empty if none is. */
  public List<String> missed() {
    return tuning.after().missed().stream().map(this::aim).toList();
  }

  /** Why the search began where it did: one reason for all settings that share it. */
  public List<String> reasons() {
    Map<String, List<String>> byReason = new LinkedHashMap<>();
    for (Change change : tuning.changes()) {
      String why = change.reason().fold(new StartReason(change.setting()));
      if (!why.isEmpty()) {
        byReason.computeIfAbsent(why, w -> new ArrayList<>()).add(name(change.setting()));
      }
    }
    return byReason.entrySet().stream()
        .map(e -> String.join("; ", e.getValue()) + ": " + e.getKey())
        .toList();
  }

  /** How far a setting may be off: what costs 5 % more, below and above. */
  public String flatness(Setting setting) {
    return tuning.flatness().stream()
        .filter(f -> f.setting().equals(setting))
        .findFirst()
        .map(f -> side(MINUS, setting, f.down()) + " / " + side(PLUS, setting, f.up()))
        .orElse("");
  }

  private String side(String sign, Setting setting, OptionalDouble off) {
    if (off.isEmpty()) {
      return "any";
    }
    if (off.getAsDouble() < toNextMark(setting, sign.equals(PLUS))) {
      return sign + "a mark";
    }
    return sign + difference(setting, off.getAsDouble());
  }

  /** How far it is from what is tuned to the next mark; 0 where there is none. */
  private double toNextMark(Setting setting, boolean up) {
    double tuned = setting.of(tuning.tuned());
    return Arrays.stream(setting.marks(tuning.found()))
        .map(mark -> up ? mark - tuned : tuned - mark)
        .filter(distance -> distance > 1e-9)
        .min()
        .orElse(0);
  }

  /** How the settings do in houses drawn over the spreads. */
  public List<String> spreads() {
    OverSpreads before = tuning.before().spreads();
    OverSpreads after = tuning.after().spreads();
    List<String> said = new ArrayList<>();
    said.add(
        say(
            "In the coldest weather, at rest, not run, {} of {} houses drawn over the spreads meet every aim; as found, {}{}.",
            Quantities.share(after.meeting()),
            after.houses(),
            Quantities.share(before.meeting()),
            turnedUp(before, after)));
    said.add(
        say(
            "The room held least often is {}, in {}; as found {}, in {}.",
            after.weakest().room(),
            Quantities.share(after.weakest().held()),
            before.weakest().room(),
            Quantities.share(before.weakest().held())));
    if (!after.worst().met()) {
      said.add("The worst of them, tuned: " + aim(after.worst()) + ".");
    }
    if (after.meeting() < before.meeting()) {
      said.add(
          "Fewer than as found: what is saved was reserve beyond the share of houses asked for"
              + " in each room; a larger share (--sure) keeps more of it.");
    }
    return said;
  }

  /** What people can put right themselves; nothing where no head is set too low. */
  private static String turnedUp(OverSpreads before, OverSpreads after) {
    return after.turnedUp() == after.meeting() && before.turnedUp() == before.meeting()
        ? ""
        : say(
            "; once heads set too low are turned up, {}, and {} as found",
            Quantities.share(after.turnedUp()),
            Quantities.share(before.turnedUp()));
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
        : say(
            "Less than {} % is gained or lost wherever these are set within their limits: {}.",
            Math.round(100 * Flatness.DEARER), names);
  }
}
