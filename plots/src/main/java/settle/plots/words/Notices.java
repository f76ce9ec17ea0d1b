package settle.plots.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import settle.sim.notice.Code;
import settle.sim.notice.Notice;

/**
 * What the reader should know, in words: one sentence for each code. What is said of several things
 * is said once, its numbers as ranges: "'a' and 'b': the valve has 3 to 5 % authority".
 */
public final class Notices {

  /** More things than this are counted instead of named. */
  private static final int MOST_NAMED = 3;

  private final List<Notice> same;

  private Notices(List<Notice> same) {
    this.same = same;
  }

  /** A notice by itself. */
  public static String of(Notice notice) {
    return new Notices(List.of(notice)).words();
  }

  /** Each by itself. */
  public static List<String> each(List<Notice> notices) {
    return notices.stream().map(Notices::of).toList();
  }

  /** Notices with those of one code gathered, in the order of the first of each. */
  public static List<String> gathered(List<Notice> notices) {
    Map<Code, List<Notice>> byCode = new LinkedHashMap<>();
    for (Notice notice : notices) {
      byCode.computeIfAbsent(notice.code(), code -> new ArrayList<>()).add(notice);
    }
    return byCode.values().stream().map(same -> new Notices(same).words()).toList();
  }

  private String words() {
    return switch (same.get(0).code()) {
      case DEAD_END ->
          "every valve is shut for "
              + hours(0)
              + " while heat is called for: the pump works against a dead end; fit a bypass or leave"
              + " one emitter open";
      case STEPS_UNAGREED ->
          "in "
              + number(0, 0)
              + " of "
              + number(1, 0)
              + " steps source, water, valves and rooms came to no agreement however short the step"
              + " was made: what hangs on those moments is not to be relied on";
      case KEPT_OFF ->
          "too little water flows for "
              + hours(0)
              + " for the heat pump to run though heat is called for: open valves or fit a bypass or"
              + " a parallel buffer";
      case OUTSIDE_DECLARED ->
          "the heat pump runs "
              + hours(0)
              + " at temperatures that its declared performance does not cover: output and COP are"
              + " held at its edge there";
      case NO_WATER -> about() + "no water ever flows through it";
      case PUMP_TOO_WEAK ->
          "the pump cannot carry the design flows: "
              + named()
              + " needs "
              + kilopascals(0)
              + " at the pump; every branch gets "
              + percent(1)
              + " of its design flow; use larger pipe on that way or a stronger pump";
      case LEFT_SHUT ->
          about()
              + "shut in the scenario, so the balance leaves it shut and reckons no water for it";
      case NOISY_BRANCH ->
          about()
              + "water runs at "
              + number(0, 1)
              + " m/s and will be heard; use a larger pipe or throttle it";
      case LITTLE_AUTHORITY ->
          about()
              + "the valve has "
              + percent(0)
              + " authority and governs its flow only when nearly shut; use a valve of smaller Kv,"
              + " or less pressure from the pump";
      case NEARLY_SHUT ->
          about()
              + "the lockshield is open by less than "
              + number(0, 2)
              + " turns, where it sets badly and blocks; lower the pump's head or use a valve of"
              + " smaller Kv";
      case NOISY_MAINS ->
          "mains "
              + about()
              + "water runs at "
              + number(0, 1)
              + " m/s and will be heard; use a larger pipe";
      case NOISY_VALVES ->
          "the pump makes "
              + kilopascals(0)
              + " when the valves close, and valves are heard above "
              + kilopascals(1)
              + "; lower its head, or use one that lowers it as the flow falls, or a bypass";
      case FLOW_OUT_OF_REACH ->
          "in design weather the rooms need a flow of "
              + celsius(0)
              + ", which it cannot make: it stops at "
              + celsius(1)
              + "; give more emitter to the rooms that need most";
      case CURVE_TOO_HIGH ->
          "in design weather the controls ask for a flow of "
              + celsius(0)
              + ", it stops at "
              + celsius(1)
              + ": lower the curve";
      case NO_FLOW_HOLDS ->
          "no flow temperature up to "
              + celsius(0)
              + " holds every room in design weather: give more emitter to those that are not held";
      case FLOW_TOO_LOW ->
          askedAndNeeded() + "raise it, or give more emitter to the rooms that need most";
      case FLOW_LOWERS_FACTOR -> askedAndNeeded() + lessFlow("seasonal factor");
      case FLOW_LOWERS_EFFICIENCY -> askedAndNeeded() + lessFlow("efficiency");
      case DESIGN_NOT_DECLARED ->
          "its declared performance does not reach "
              + celsius(0)
              + " outdoors at a flow of "
              + celsius(1)
              + ", so that figures there are held or guessed: ask for them";
      case NEVER_RUNS ->
          "with every valve open "
              + number(0, 0)
              + " l/h of water flow through it, it needs "
              + number(1, 0)
              + " l/h to run: fit a parallel buffer or a bypass, or larger pipes and lockshields; as"
              + " it is it never runs";
      case THROTTLED ->
          "from "
              + celsius(0)
              + " outdoors up the valves leave it less water than the "
              + number(1, 0)
              + " l/h it needs to run, at "
              + celsius(2)
              + " "
              + number(3, 0)
              + " l/h (at rest, not run): "
              + WAY_FOR_WATER;
      case STANDS_STILL ->
          "run at "
              + celsius(0)
              + " outdoors it stands still for "
              + percent(1)
              + " of the time, since the valves leave it too little water: "
              + WAY_FOR_WATER;
      case TOO_SMALL_WITH_HEATER -> tooSmall() + ", or an electric heater of " + kilowatts(2);
      case MUCH_BACKUP ->
          "below "
              + celsius(0)
              + " outdoors it does not carry the house alone: "
              + percent(1)
              + " of the season's heat is left to electric heaters; a larger one, or less heat loss";
      case PASSES_TOO_LITTLE ->
          "at "
              + celsius(0)
              + " outdoors so little water passes that even its least output warms it by "
              + number(1, 1)
              + " K, more than the "
              + number(2, 1)
              + " K between on and off: more water in series does not help; a parallel buffer with a"
              + " pump of its own does, or more open emitters";
      case VOLUME_LACKING ->
          "at "
              + celsius(0)
              + " outdoors it makes at least "
              + kilowatts(1)
              + ", the house takes "
              + kilowatts(2)
              + ": it starts "
              + number(3, 1)
              + " times an hour; a volumiser of "
              + litresUp(4)
              + " more makes that "
              + number(5, 1);
      case STARTS_OFTEN ->
          "at "
              + celsius(0)
              + " outdoors it starts "
              + number(1, 1)
              + " times an hour, more than "
              + number(2, 0)
              + ": a smaller one, a longer least run, or a volumiser";
      case TOO_SMALL -> tooSmall();
      case CONDENSES_LITTLE ->
          percent(0)
              + " of its heat is made condensing: lower the flow temperature, or let the water cool"
              + " further by less flow";
      case MODULATES_TOO_LITTLE ->
          "above "
              + celsius(0)
              + " outdoors it makes more than the house takes and starts and stops: set its range"
              + " lower, or choose one that modulates further";
    };
  }

  private static final String WAY_FOR_WATER =
      "fit a bypass or a parallel buffer, or leave some emitters without heads";

  private String askedAndNeeded() {
    return "in design weather the controls ask for a flow of "
        + celsius(0)
        + ", the rooms need "
        + celsius(1)
        + ": ";
  }

  private String lessFlow(String factor) {
    return "with no more than needed all season the "
        + factor
        + " would be "
        + number(2, 2)
        + ", not "
        + number(3, 2);
  }

  private String tooSmall() {
    return "in design weather it gives "
        + kilowatts(0)
        + ", the house takes "
        + kilowatts(1)
        + ": choose a larger one";
  }

  /** What it is about, before what is said of it. */
  private String about() {
    return named() + ": ";
  }

  private String named() {
    List<String> names = same.stream().map(n -> "'" + n.about() + "'").distinct().toList();
    return Listing.of(
        names.size() <= MOST_NAMED ? names : List.of(names.get(0), (names.size() - 1) + " others"));
  }

  private String celsius(int place) {
    return number(place, 0) + " °C";
  }

  private String hours(int place) {
    return scaled(place, 1.0 / 3600, 1) + " h";
  }

  private String kilopascals(int place) {
    return scaled(place, 1e-3, 1) + " kPa";
  }

  private String kilowatts(int place) {
    return scaled(place, 1e-3, 1) + " kW";
  }

  private String percent(int place) {
    return scaled(place, 100, 0) + " %";
  }

  /** A volume that is enough when it is bought by the litre. */
  private String litresUp(int place) {
    return Quantities.number(Math.ceil(1000 * same.get(0).numbers().get(place)), 0) + " l";
  }

  private String number(int place, int digits) {
    return scaled(place, 1, digits);
  }

  /** From the least to the most of the numbers at a place. */
  private String scaled(int place, double scale, int digits) {
    double least = same.stream().mapToDouble(n -> n.numbers().get(place)).min().orElseThrow();
    double most = same.stream().mapToDouble(n -> n.numbers().get(place)).max().orElseThrow();
    String from = Quantities.number(scale * least, digits);
    String to = Quantities.number(scale * most, digits);
    return from.equals(to) ? from : from + " to " + to;
  }
}
