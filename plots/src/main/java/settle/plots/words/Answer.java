package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import settle.sim.atrest.RestStatus;
import settle.sim.house.House;
import settle.sim.measure.Measure;
import settle.sim.notice.Notice;
import settle.sim.room.Room;
import settle.sim.study.BesideWindow;
import settle.sim.study.ComfortAtRest;
import settle.sim.study.Holding;
import settle.sim.study.Judgement;
import settle.sim.study.Odds;
import settle.sim.study.RoomAnswer;
import settle.sim.study.Shortage;
import settle.sim.study.Verdict;
import settle.sim.units.Times;

/**
 * What is found about an arrangement, in a designer's words.
 *
 * @param house the house
 * @param verdict what was found
 */
public record Answer(House house, Verdict verdict) {

  /** Range of a room's temperature in a run that is worth a word [K]. */
  private static final double NOTABLE_SWING = 0.1;

  /** The arrangement's name, with a capital first letter. */
  public String name() {
    String name = verdict.arrangement().name();
    return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  /** Yes, only just or no, in which weather, which room decides, and why. */
  public String sentence() {
    return switch (verdict.outcome()) {
      case YES -> yes();
      case ONLY_JUST -> onlyJust();
      case NO ->
          verdict.shortage().map(this::no).orElseGet(() -> new WarmUpWords(house, verdict).late());
    };
  }

  private String yes() {
    RoomAnswer first = firstToFail();
    return say(
        "yes: {}. At rest, not run, it would hold {}; {} emitters and pipes can give {} at {} flow, and it needs {} in design weather.",
        held(),
        downTo(verdict.holdingOutdoor()),
        one() ? "its" : first.room() + " fails first: its",
        Quantities.power(first.output()),
        Quantities.setting(verdict.flow().asked()),
        Quantities.power(first.load()));
  }

  private String onlyJust() {
    Odds odds = verdict.odds().orElseThrow();
    Odds.RoomOdds weakest = odds.weakest();
    boolean turned = odds.headsTurnedUp().keepUp() > odds.estimate().keepUp();
    return say(
        "only just: as stated {}, but only {} of 100 houses like it are held (at rest, not run){}, short of the {} asked for.{} {}",
        held(),
        OddsWords.shortOf(verdict.aims().sure(), odds.headsTurnedUp().keepUp()),
        turned ? " once valve heads that are set too low are turned up" : "",
        Quantities.number(100 * verdict.aims().sure(), 0),
        one()
            ? ""
            : say(
                " {} is too cold most often, in {} of 100.",
                Sentences.capitalised(weakest.room()),
                Math.round(100 * weakest.failsTurnedUp())),
        OddsWords.lift(verdict));
  }

  /** What is held, and in which weathers that was run. */
  private String held() {
    return season() + (one() ? " the room is held " : " every room is held ") + confirmed();
  }

  /** The outdoor temperatures that were judged. */
  String season() {
    List<Judgement.Weather> weathers = verdict.judgement().weathers();
    String coldest = Quantities.setting(house.designOutdoor());
    return weathers.size() == 1
        ? "at " + coldest + " outdoors"
        : say(
            "from {} to {} outdoors",
            coldest,
            Quantities.setting(weathers.get(weathers.size() - 1).outdoor()));
  }

  /** Which runs confirm it, in brackets. */
  private String confirmed() {
    String run =
        "run at "
            + Listing.of(
                verdict.judgement().runs().stream()
                    .map(w -> Quantities.setting(w.outdoor()))
                    .toList());
    return verdict.confirmedByRun() ? "(" + run + ")" : "(" + run + "; else at rest, not run)";
  }

  private String no(Shortage shortage) {
    long others = verdict.rooms().stream().filter(r -> !r.holds()).count() - 1;
    return say(
        "no: at {} outdoors {} {} where {} is wanted{}, and it is {}. {}{}",
        Quantities.setting(shortage.outdoor()),
        shortage.room(),
        warmth(shortage, house.wantTolerance()),
        Quantities.setting(shortage.want()),
        shortage.warmth().byRun() ? " (run)" : " (at rest, not run)",
        where(position(shortage.room())),
        reason(shortage),
        others == 0
            ? ""
            : others == 1
                ? " 1 other room is not held either."
                : " " + others + " other rooms are not held either.");
  }

  /**
   * Where it settles, or its mean and range where rest and run differ or nothing settles; with the
   * digits that show that it is too cold.
   *
   * @param tolerance how far below want a room may settle [K]
   */
  static String warmth(Shortage shortage, double tolerance) {
    double need = shortage.want() - tolerance;
    return shortage.warmth().settles()
        ? "settles at " + Quantities.temperatureBelow(shortage.warmth().operative(), need)
        : inRun(
            shortage.warmth().operative(),
            shortage.warmth().least(),
            shortage.warmth().most(),
            need);
  }

  /** What a room does in a run: where it stays, or its mean with its range. */
  private static String inRun(double mean, double least, double most, double need) {
    return most - least < NOTABLE_SWING
        ? "stays at " + Quantities.temperatureBelow(mean, need)
        : say(
            "averages {}, between {} and {},",
            Quantities.temperatureBelow(mean, need),
            Quantities.below(least, need - Judgement.SWING),
            Quantities.temperature(most));
  }

  private int position(String room) {
    List<Judgement.Asked> rooms = verdict.judgement().rooms();
    for (int r = 0; r < rooms.size(); r++) {
      if (rooms.get(r).name().equals(room)) {
        return r;
      }
    }
    throw new IllegalArgumentException("no room '" + room + "' was judged");
  }

  /** In which weather a room that is not held all season is held. */
  private String where(int room) {
    Judgement judgement = verdict.judgement();
    OptionalDouble lost = judgement.lostFrom(room);
    if (lost.isPresent()) {
      return say(
          "held only in colder weather, not from {} up",
          Quantities.temperature(lost.getAsDouble()));
    }
    OptionalDouble from = judgement.heldFrom(room);
    return from.isEmpty()
        ? "not held even in mild weather"
        : "held only down to " + Quantities.temperature(from.getAsDouble());
  }

  /** Outdoor temperatures at which the house is held, the lowest looked at standing for below. */
  public String heldWhere() {
    String words = downTo(verdict.holdingOutdoor());
    OptionalDouble lost = lostFrom();
    return lost.isPresent() && verdict.holdingOutdoor().isPresent()
        ? words + ", but not from " + Quantities.temperature(lost.getAsDouble()) + " up"
        : words;
  }

  /** Lowest outdoor temperature above design weather from which on some room is not held. */
  private OptionalDouble lostFrom() {
    return IntStream.range(0, verdict.judgement().rooms().size())
        .mapToObj(r -> verdict.judgement().lostFrom(r))
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .min();
  }

  /** An outdoor temperature that is the lowest looked at stands for that and below. */
  private String downTo(OptionalDouble outdoor) {
    if (outdoor.isEmpty()) {
      return "not even in mild weather";
    }
    double coldest = Holding.coldest(house.designOutdoor());
    return outdoor.getAsDouble() <= coldest
        ? "below " + Quantities.setting(coldest)
        : "down to " + Quantities.temperature(outdoor.getAsDouble());
  }

  private String reason(Shortage shortage) {
    String asked = Quantities.temperature(shortage.flowAsked());
    String able = "can give " + Quantities.power(shortage.output()) + " at " + asked + " flow";
    return switch (shortage.cause()) {
      case NEVER_RUNS -> neverRuns();
      case BLOCKED ->
          say(
              "The cause is too little water through the source, which keeps it off for {} of the time.",
              Quantities.share(shortage.blocked()));
      case SOURCE ->
          say(
              "The cause is the source: it does not reach the flow temperature asked for, {}.",
              asked);
      case HOT_WATER ->
          say(
              "The cause is hot water: it takes the source away for {} of the day, and without it the room would be held.",
              Quantities.duration((1 - house.shareForRooms()) * Times.DAY));
      case UNBALANCED ->
          "The cause is its water: the room gets less than its share, and balanced it would be held.";
      case THERMOSTAT ->
          say(
              "The cause is the room thermostat in {}: that room is warm and stops the source, while {} needs water at {} on average.",
              house.control().referenceRoom(),
              shortage.room(),
              Quantities.temperature(shortage.flowNeeded().orElseThrow()));
      case COOL_WATER ->
          say(
              "The cause is the flow temperature: {} for {} there, and the room needs {}.",
              house.control().flowCurve().isPresent()
                  ? "the weather compensation asks"
                  : "the controls ask",
              asked,
              Quantities.temperature(shortage.flowNeeded().orElseThrow()));
      case EMITTER ->
          say(
              "The cause is its emitters: with the pipes they {}, and the room needs {}.",
              able,
              Quantities.power(shortage.load()));
      case VALVE ->
          say(
              "Its emitters {}, more than the {} it needs, but the valve has throttled by then, or the water arrives cooler.",
              able,
              Quantities.power(shortage.load()));
    };
  }

  private String neverRuns() {
    return verdict
        .source()
        .heatPump()
        .filter(h -> h.water().neverRuns())
        .map(
            h ->
                say(
                    "The heat pump never runs: with every valve open {} of water flows through it, and it needs {}. All else said of it holds once it has enough water, from a parallel buffer for instance.",
                    litresPerHour(h.water().flowAtMost()),
                    litresPerHour(h.water().least())))
        .orElse("The source never runs: too little water flows through it.");
  }

  private String litresPerHour(double massFlow) {
    return Quantities.number(house.water().litresPerHour(massFlow), 0) + " l/h";
  }

  /**
   * Where in the season the house does not come to rest and why, in one line; empty where it does
   * everywhere.
   */
  private Optional<String> restless() {
    List<Judgement.Weather> restless = verdict.judgement().restless();
    if (restless.isEmpty()) {
      return Optional.empty();
    }
    List<String> reasons =
        restless.stream()
            .flatMap(w -> w.rest().status().reasons().stream())
            .map(RestStatus.Reason::kind)
            .distinct()
            .sorted()
            .flatMap(kind -> reason(kind).stream())
            .toList();
    double coldest = restless.get(0).outdoor();
    double mildest = restless.get(restless.size() - 1).outdoor();
    return Optional.of(
        say(
            "{} outdoors: {}. There the run decides, and figures at rest, not run, are uncertain.",
            coldest == mildest
                ? "the house never settles at " + Quantities.setting(coldest)
                : say(
                    "the house never settles from {} to {}",
                    Quantities.setting(coldest),
                    Quantities.setting(mildest)),
            Listing.of(reasons)));
  }

  /** Why a house does not settle; empty for reasons that do not prevent it. */
  private static Optional<String> reason(RestStatus.Kind kind) {
    return switch (kind) {
      case NOT_FOUND -> Optional.of("no rest was found");
      case BLOCKED -> Optional.of("too little water keeps the source off at times");
      case STARTS_AND_STOPS -> Optional.of("the source starts and stops");
      case HOT_WATER -> Optional.of("hot water takes the source away at times");
      case DEFROSTS -> Optional.of("the source defrosts");
      case THERMOSTAT -> Optional.of("the room thermostat stops the source");
      case INTERLOCK -> Optional.of("electric valves stop the source");
      case ACTUATOR -> Optional.of("actuators open and shut");
      case NEVER_RUNS, PLAY -> Optional.empty();
    };
  }

  /** Where the rest claims otherwise than a run, in one line; empty where it does not. */
  public Optional<String> disagreement() {
    List<String> all = disagreements();
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Rest and run differ: "
                + all.get(0)
                + (all.size() > 2
                    ? "; and in " + (all.size() - 1) + " more places"
                    : all.size() == 2 ? "; and in one more place" : "")
                + ". The run decides; other figures at rest may be as far off for this house, which is a fault of this tool.");
  }

  /** Each place in which it does, the largest first: defects of the house at rest. */
  public List<String> disagreements() {
    return verdict.judgement().disagreements().stream()
        .sorted(
            Comparator.comparingDouble((Judgement.Disagreement d) -> Math.abs(d.by())).reversed())
        .map(
            d ->
                say(
                    "at {} outdoors {} {} in the run, against {} at rest",
                    Quantities.setting(d.outdoor()),
                    d.room(),
                    inRun(d.mean(), d.least(), d.most(), Double.NEGATIVE_INFINITY),
                    Quantities.temperature(d.atRest())))
        .toList();
  }

  boolean one() {
    return verdict.rooms().size() == 1;
  }

  /** Rooms that are not held. */
  List<RoomAnswer> notHeld() {
    return verdict.rooms().stream().filter(r -> !r.holds()).toList();
  }

  /** The room that is the first not to be held when it gets colder. */
  RoomAnswer firstToFail() {
    return verdict.rooms().stream()
        .max(Comparator.comparingDouble(r -> r.holdingOutdoor().orElse(Double.POSITIVE_INFINITY)))
        .orElseThrow();
  }

  /** The room that needs the hottest water. */
  RoomAnswer governing() {
    return verdict.governing();
  }

  /** What trying houses has found; empty if none were tried. */
  public Optional<OddsWords> odds() {
    return verdict.odds().map(o -> new OddsWords(o, house.aims().spreads()));
  }

  /**
   * The house's lines, each with a name: flow temperature, warm-up, source, season, comfort, odds.
   */
  public List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    FlowWords flows = new FlowWords(house, verdict);
    lines.add(new Line("Flow temperature", flows.flow()));
    lines.add(new Line("Weather compensation", flows.curve()));
    WarmUpWords warmUps = new WarmUpWords(house, verdict);
    warmUps.fromSetback().ifPresent(words -> lines.add(new Line("From set-back", words)));
    lines.add(new Line("From cold (10 °C)", warmUps.fromCold()));
    verdict.source().heatPump().ifPresent(h -> lines.add(new Line("Heat pump", SourceWords.of(h))));
    verdict.source().boiler().ifPresent(b -> lines.add(new Line("Boiler", SourceWords.of(b))));
    lines.add(new Line("Season", new SeasonWords(house, verdict.source().season()).sentence()));
    comfort().ifPresent(words -> lines.add(new Line("Comfort", words)));
    restless().ifPresent(words -> lines.add(new Line("Unsettled", words)));
    lines.add(
        new Line(OddsWords.KEEPS_UP, odds().map(OddsWords::keepUp).orElse(OddsWords.NONE_TRIED)));
    odds().ifPresent(odds -> lines.add(new Line(OddsWords.MATTERS, odds.ranking())));
    return lines;
  }

  /**
   * One thing found.
   *
   * @param name what it is about
   * @param words what was found
   */
  public record Line(String name, String words) {}

  private Optional<String> comfort() {
    return verdict.comfort().stream()
        .max(Comparator.comparingDouble(c -> c.comfort().dissatisfied()))
        .map(this::comfort);
  }

  private String comfort(ComfortAtRest least) {
    return say(
            "in design weather {} is the least comfortable to sit in: predicted mean vote {}, {} dissatisfied.",
            least.room(),
            Quantities.number(least.comfort().vote(), 1),
            Quantities.share(least.comfort().dissatisfied()))
        + besideWindow();
  }

  /** By which window it is worst to sit, and what a run below it does. */
  private String besideWindow() {
    return verdict.comfort().stream()
        .filter(c -> c.window().isPresent())
        .max(Comparator.comparingDouble(c -> c.window().orElseThrow().bare().annoyed()))
        .map(c -> besideWindow(c.room(), c.window().orElseThrow()))
        .orElse("");
  }

  private static String besideWindow(String room, BesideWindow at) {
    String bare =
        say(
            " A metre from {} in {}, air of {} runs over the floor at {} m/s and annoys {}",
            at.window(),
            room,
            Quantities.temperature(at.bare().air()),
            Quantities.number(at.bare().speed(), 2),
            Quantities.share(at.bare().annoyed()));
    String run =
        at.warmed()
            .map(
                w ->
                    say(
                        ", with one of its runs below at {} m/s and {}",
                        Quantities.number(w.speed(), 2),
                        Quantities.share(w.annoyed())))
            .orElse("");
    return bare
        + run
        + say(
            "; that side is {} colder, which annoys {}.",
            Quantities.difference(at.asymmetry()),
            Quantities.share(at.annoyed()));
  }

  /** What the trade argues about and is reckoned nowhere. */
  public static String notReckoned() {
    return "Not reckoned: air warmer under the ceiling than at the floor, but for what the key 'stratification' says; furniture and curtains in front of emitters, but for what 'covered' says. Draught and the cold side by a window move no temperature.";
  }

  /** What a heat loss leaves open about the rooms of which nothing else is known; else empty. */
  public static String notKnown(House house) {
    List<String> rooms =
        house.rooms().stream().filter(r -> r.directLoss().whole()).map(Room::name).toList();
    if (rooms.isEmpty()) {
      return "";
    }
    return say(
        "Known by heat loss alone, and so not answered: in {} the sun, draught and cold beside windows, and what emitters lose through the walls behind them; warm-up follows the class of mass.",
        rooms.size() == house.rooms().size() ? "every room" : String.join(", ", rooms));
  }

  /** What is meant by a season, for a note beside the figures. */
  public String seasonNote() {
    return new SeasonWords(house, verdict.source().season()).note();
  }

  /** When a room counts as held. */
  public static String heldMeans(House house) {
    return say(
        "Held: within {} of want, the day value in every room, without heat from sun, people or appliances.",
        Quantities.tolerance(house.wantTolerance()));
  }

  /** Which figures are confirmed by a run and which are not. */
  public static String notRun() {
    return "Run: the house in steady weather until it settles or repeats, and the warm-ups. At rest, not run: load, output, held to, flow temperatures, season, comfort and odds.";
  }

  /** The arrangement and its flow temperatures. */
  public String flowSentence() {
    return name() + ": " + new FlowWords(house, verdict).flow();
  }

  /** What was tried and what is doubtful, each under its heading; what is empty is left out. */
  public List<Points> points() {
    List<Notice> doubts = new ArrayList<>();
    verdict.source().heatPump().ifPresent(h -> doubts.addAll(h.doubts()));
    verdict.source().boiler().ifPresent(b -> doubts.addAll(b.doubts()));
    return Stream.of(
            new Points(
                "Tried one at a time, carried out and run, least effort first",
                RemedyWords.lines(verdict.remedies())),
            new Points("Doubts about the source", Notices.each(doubts)))
        .filter(p -> !p.points().isEmpty())
        .toList();
  }

  /** Heading of what to do. */
  public static final String CURE = "To hold every room";

  /** What together lets every room be held, in order of effort; or that it was not found. */
  public List<String> cure() {
    List<String> lines = new ArrayList<>(RemedyWords.cure(verdict.remedies()));
    if (verdict.outcome() == Verdict.Outcome.NO) {
      OddsWords.sureOnceHeld(verdict).ifPresent(lines::add);
    }
    return lines;
  }

  /** A measure in words: what is changed, from what to what. */
  public static String words(Measure measure) {
    return RemedyWords.placed(measure);
  }
}
