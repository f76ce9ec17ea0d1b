package settle.plots.words;

import static settle.plots.words.Sentences.say;

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

  /** The sentence of one notice. */
  public static String of(Notice notice) {
    return new Notices(List.of(notice)).words();
  }

  /** A sentence for each notice. */
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
          say(
              "every valve is shut for {} while heat is called for: the pump works against a dead end; fit a bypass or leave one emitter open",
              hours(0));
      case STEPS_UNAGREED ->
          say(
              "in {} of {} steps source, water, valves and rooms did not converge however short the step was made: do not rely on figures from those moments",
              number(0, 0),
              number(1, 0));
      case KEPT_OFF ->
          say(
              "for {} heat is called for but too little water flows for the heat pump to run: open valves, or fit a bypass or a parallel buffer",
              hours(0));
      case OUTSIDE_DECLARED ->
          say(
              "the heat pump runs {} at temperatures that its declared performance does not cover: output and COP are held at its edge there",
              hours(0));
      case NO_WATER -> about() + "no water ever flows through it";
      case PUMP_TOO_WEAK ->
          say(
              "the pump cannot carry the design flows: {} needs {} at the pump; every branch gets {} of its design flow; use larger pipe on that route or a stronger pump",
              named(),
              kilopascals(0),
              percent(1));
      case LEFT_SHUT ->
          about() + "shut in the scenario, so balancing leaves it shut and allows no water for it";
      case LOOP_UNBALANCED ->
          about()
              + "its loop has no lockshield that all of its water passes, so balancing leaves it as it is";
      case NOISY_BRANCH ->
          say(
              "{}water runs at {} m/s and will be heard; use a larger pipe or throttle it",
              about(),
              number(0, 1));
      case LITTLE_AUTHORITY ->
          say(
              "{}the valve has {} authority and governs its flow only when nearly shut; use a valve of smaller Kv, or less pressure from the pump",
              about(),
              percent(0));
      case NEARLY_SHUT ->
          say(
              "{}the lockshield is open by less than {} turns, where it is hard to set and clogs; lower the pump's head or use a valve of smaller Kv",
              about(),
              number(0, 2));
      case NOISY_MAINS ->
          say(
              "mains {}water runs at {} m/s and will be heard; use a larger pipe",
              about(),
              number(0, 1));
      case NOISY_VALVES ->
          say(
              "the pump makes {} when the valves close, and valves are heard above {}; lower its head, or use one that lowers it as the flow falls, or a bypass",
              kilopascals(0),
              kilopascals(1));
      case FLOW_OUT_OF_REACH ->
          say(
              "in design weather the rooms need a flow of {}, which it cannot reach: it stops at {}; fit more emitter in the rooms that need most",
              celsius(0),
              celsius(1));
      case CURVE_TOO_HIGH ->
          say(
              "in design weather the controls ask for a flow of {}, but it stops at {}: lower the curve",
              celsius(0),
              celsius(1));
      case NO_FLOW_HOLDS ->
          say(
              "no flow temperature up to {} holds every room in design weather: fit more emitter in those that are not held",
              celsius(0));
      case FLOW_TOO_LOW ->
          askedAndNeeded() + "raise it, or fit more emitter in the rooms that need most";
      case FLOW_LOWERS_FACTOR -> askedAndNeeded() + lessFlow("seasonal factor");
      case FLOW_LOWERS_EFFICIENCY -> askedAndNeeded() + lessFlow("efficiency");
      case DESIGN_NOT_DECLARED ->
          say(
              "its declared performance does not reach {} outdoors at a flow of {}, so figures there are extrapolated or guessed: ask for them",
              celsius(0),
              celsius(1));
      case NEVER_RUNS ->
          say(
              "with every valve open {} l/h of water flows through it, and it needs {} l/h to run: fit a parallel buffer or a bypass, or larger pipes and lockshields; as it is, it never runs",
              number(0, 0),
              number(1, 0));
      case THROTTLED ->
          say(
              "above {} outdoors the valves leave it less than the {} l/h it needs to run: at {} only {} l/h (at rest, not run); {}",
              celsius(0),
              number(1, 0),
              celsius(2),
              number(3, 0),
              WAY_FOR_WATER);
      case STANDS_STILL ->
          say(
              "run at {} outdoors it is kept off for {} of the time, since the valves leave it too little water: {}",
              celsius(0),
              percent(1),
              WAY_FOR_WATER);
      case TOO_SMALL_WITH_HEATER -> tooSmall() + ", or an electric heater of " + kilowatts(2);
      case MUCH_BACKUP ->
          say(
              "below {} outdoors it does not carry the house on its own: {} of the season's heat is left to electric heaters; choose a larger one, or reduce the heat loss",
              celsius(0),
              percent(1));
      case PASSES_TOO_LITTLE ->
          say(
              "at {} outdoors so little water passes that even its least output warms it by {} K, more than the {} K between on and off: more water in series does not help; a parallel buffer with a pump of its own does, or more open emitters",
              celsius(0),
              number(1, 1),
              number(2, 1));
      case VOLUME_LACKING ->
          say(
              "at {} outdoors it makes at least {} and the house needs {}, so it starts {} times an hour; a volumiser of {} more brings that to {}",
              celsius(0),
              kilowatts(1),
              kilowatts(2),
              number(3, 1),
              litresUp(4),
              number(5, 1));
      case STARTS_OFTEN ->
          say(
              "at {} outdoors it starts {} times an hour, more than {}: choose a smaller one, a longer least run, or a volumiser",
              celsius(0),
              number(1, 1),
              number(2, 0));
      case TOO_SMALL -> tooSmall();
      case HOT_WATER_DELAYS ->
          say(
              "{}: hot water takes the source away at times: warm after {} with it, after {} without",
              named(),
              minutes(0),
              minutes(1));
      case HOT_WATER_PREVENTS ->
          say(
              "{}: hot water takes the source away at times: never warm with it, after {} without",
              named(),
              minutes(0));
      case CONDENSES_LITTLE ->
          say(
              "{} of its flue's vapour condenses: lower the flow temperature; less flow cools the water further only down to what its by-pass keeps going",
              percent(0));
      case MODULATES_TOO_LITTLE ->
          say(
              "above {} outdoors it makes more than the house needs and starts and stops: set its range lower, or choose one that modulates further",
              celsius(0));
    };
  }

  private static final String WAY_FOR_WATER =
      "fit a bypass or a parallel buffer, or leave some emitters without heads";

  private String askedAndNeeded() {
    return say(
        "in design weather the controls ask for a flow of {} and the rooms need {}: ",
        celsius(0),
        celsius(1));
  }

  private String lessFlow(String factor) {
    return say(
        "with no more than is needed all season the {} would be {}, not {}",
        factor,
        number(2, 2),
        number(3, 2));
  }

  private String tooSmall() {
    return say(
        "in design weather it gives {} and the house needs {}: choose a larger one",
        kilowatts(0),
        kilowatts(1));
  }

  /** What the notice is about, with a colon. */
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

  private String minutes(int place) {
    return scaled(place, 1.0 / 60, 0) + " min";
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
