package settle.plots.words;

import static settle.plots.words.Sentences.capitalised;
import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import settle.sim.commissioning.CommissioningDay;
import settle.sim.commissioning.Diagnosis;
import settle.sim.commissioning.Diagnosis.Outcome;
import settle.sim.commissioning.Diagnosis.Reading;
import settle.sim.commissioning.Diagnosis.Suspect;
import settle.sim.commissioning.Diagnostician;
import settle.sim.commissioning.Fault;
import settle.sim.commissioning.FaultKind;
import settle.sim.commissioning.Point;
import settle.sim.commissioning.ReadingModel;
import settle.sim.control.FlowCurve;
import settle.sim.house.House;

/**
 * What readings of commissioning day say, in sentences.
 *
 * @param model what would be read
 * @param diagnosis what they say
 * @param day the day
 * @param looked whether somebody looked somewhere already
 */
public record AcceptWords(
    ReadingModel model, Diagnosis diagnosis, CommissioningDay day, boolean looked) {

  /** How many suspects are named. */
  public static final int NAMED = 3;

  /** How many readings are named that speak for or against one. */
  private static final int VOICES = 3;

  /** Probability below which a suspect is not worth a line [-]. */
  private static final double WORTH_A_LINE = 0.05;

  /** Most that is said of a probability [-]. */
  private static final double SURE = 0.999;

  /** Probability of nothing wrong up to which readings have hardly added to it [-]. */
  private static final double HARDLY_TOLD = 0.6;

  /** How many of its standard deviations a reading is off before it is out of its band [-]. */
  public static final double BAND = 2;

  /** How far apart explanations are in a reading for it to be asked for [-]. */
  private static final double TELLS = 0.3;

  /** How much cooler than designed weather compensation keeps the water for that to matter [K]. */
  private static final double MUCH_COOLER = 4;

  /** How much warmer than at the start a return has to be to tell anything [K]. */
  private static final double WARM = 6;

  public static final String MORE =
      "every reading beside what was expected, and what speaks for and against each";

  /** What cannot be told whatever is read. */
  public String blind() {
    List<String> quiet = new ArrayList<>();
    FaultWords words = words();
    for (int f = 0; f < model.faults().size(); f++) {
      Fault fault = model.faults().get(f);
      if (fault.kind().hasLevels()
          && Math.abs(model.heatMove(f, FaultKind.WORST)) < Diagnostician.MATTERS) {
        quiet.add(words.placed(fault));
      }
    }
    String claim =
        say(
            "Nothing is claimed of what moves a room's heat by less than {}.",
            Quantities.share(Diagnostician.MATTERS));
    return quiet.isEmpty()
        ? claim
        : say("{} At its worst that is: {}.", claim, String.join("; ", quiet));
  }

  private FaultWords words() {
    return new FaultWords(model.model());
  }

  /** The answer. */
  public List<String> answer() {
    List<String> answer = new ArrayList<>();
    int count = diagnosis.readings().size();
    switch (diagnosis.outcome()) {
      case AS_DESIGNED ->
          answer.add(
              say(
                  "Yes, as far as {} tell: what was read is what was designed ({} that nothing that matters is wrong).",
                  readings(count),
                  likely(diagnosis.nothing())));
      case WRONG -> answer.add(wrong());
      case UNEXPLAINED ->
          answer.add(
              diagnosis.suspects().isEmpty()
                  ? wrong()
                  : say(
                      "No, and nothing that is known explains it: of sound readings fewer than one set in a thousand is as far off as"
                          + " these. Read again what is furthest off: {}.",
                      diagnosis.readings().stream()
                          .limit(VOICES)
                          .map(this::beside)
                          .collect(Collectors.joining("; "))));
    }
    diagnosis
        .two()
        .ifPresent(
            two ->
                answer.add(
                    say(
                        "Two things together explain it better than any one: {}, and {} ({}).",
                        words().placed(two.one()),
                        words().placed(two.other()),
                        likely(two.probability()))));
    return answer;
  }

  private static String readings(int count) {
    return count == 1 ? "one reading" : count + " readings";
  }

  private String wrong() {
    if (diagnosis.suspects().isEmpty()) {
      return "No: more was found than readings can be weighed with. Put it right, and read again.";
    }
    Suspect first = diagnosis.suspects().get(0);
    String wrong = say("No: something is not as designed ({}).", likely(1 - diagnosis.nothing()));
    return diagnosis.two().isPresent()
        ? wrong
        : say("{} Most likely {} ({}).", wrong, named(first), likely(first.probability()));
  }

  /** A probability: of nothing that readings say anybody is certain. */
  private static String likely(double probability) {
    return Quantities.share(Math.min(Math.max(probability, 1 - SURE), SURE));
  }

  private String named(Suspect suspect) {
    return suspect.branch() < 0
        ? "the " + FaultWords.of(suspect.group())
        : say("{}: {}", place(suspect), FaultWords.of(suspect.group()));
  }

  /** Where a suspect is. */
  public String place(Suspect suspect) {
    return words().place(suspect.branch());
  }

  /** Those that are named, the likeliest first. */
  public List<Suspect> named() {
    return diagnosis.suspects().stream()
        .filter(s -> s.probability() >= WORTH_A_LINE)
        .limit(NAMED)
        .toList();
  }

  /** One suspect: what it may be, what it does, what speaks for and against it. */
  public String suspect(Suspect suspect) {
    String causes =
        suspect.causes().stream()
            .limit(2)
            .filter(c -> c.share() >= WORTH_A_LINE)
            .map(c -> FaultWords.of(c.fault().kind()) + share(c))
            .collect(Collectors.joining(" or "));
    String does =
        Math.abs(suspect.heatMove()) < 0.005
            ? ""
            : say(
                " It would {} {} of the heat of {}.",
                suspect.heatMove() < 0 ? "take" : "add",
                Quantities.share(Math.abs(suspect.heatMove())),
                model.model().arrangement().branches().get(suspect.movedBranch()).room());
    return say(
        "{} ({}): {}.{}{}{}",
        capitalised(named(suspect)),
        likely(suspect.probability()),
        causes,
        does,
        voices("For it", suspect.speaking()),
        voices("Against it", suspect.against()));
  }

  private static String share(Diagnosis.Cause cause) {
    return cause.share() > 1 - WORTH_A_LINE
        ? ""
        : say(" ({} of it)", Quantities.share(cause.share()));
  }

  private String voices(String name, List<Integer> which) {
    return which.isEmpty()
        ? ""
        : say(
            " {}: {}.",
            name,
            which.stream()
                .limit(VOICES)
                .map(i -> beside(diagnosis.readings().get(i)))
                .collect(Collectors.joining("; ")));
  }

  private String beside(Reading reading) {
    return say(
        "{} {}, {} ± {} expected",
        what(reading.point()),
        Quantities.temperature(reading.value()),
        Quantities.number(reading.expected(), 1),
        Quantities.difference(BAND * reading.spread()));
  }

  /** What is read at a point, with its place. */
  public String what(Point point) {
    String name = what(point.kind());
    return switch (point.kind()) {
      case FLOW -> name;
      case AIR -> say("{} of {}", name, model.model().house().rooms().get(point.which()).name());
      case INLET, RETURN, FAR_END -> say("{} of {}", name, words().place(point.which()));
    };
  }

  /** What a thermometer is held to. */
  public static String what(Point.Kind kind) {
    return switch (kind) {
      case INLET -> "inlet";
      case RETURN -> "return";
      case FAR_END -> "far end";
      case AIR -> "air";
      case FLOW -> "source's flow";
    };
  }

  /** What to look at, at two places. */
  public List<String> look() {
    if (diagnosis.outcome() == Outcome.AS_DESIGNED) {
      return List.of();
    }
    List<String> look = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    for (Suspect suspect : named()) {
      if (places.contains(suspect.branch()) || places.size() == 2) {
        continue;
      }
      places.add(suspect.branch());
      List<String> at =
          named().stream()
              .filter(s -> s.branch() == suspect.branch())
              .flatMap(s -> s.causes().stream())
              .filter(c -> c.share() >= WORTH_A_LINE)
              .map(c -> words().look(c.fault()))
              .distinct()
              .toList();
      look.add(say("{}: {}.", capitalised(place(suspect)), String.join("; ", at)));
    }
    return look;
  }

  /** What to do next, so that more can be told. */
  public List<String> next() {
    List<String> next = new ArrayList<>();
    if (!isWarm()) {
      next.add(
          say(
              "Even as designed this house is hardly warm {} after the start: these readings can tell next to nothing. Read later, or set the source hotter.",
              Quantities.duration(day.readAfter())));
      return next;
    }
    if (diagnosis.outcome() == Outcome.AS_DESIGNED && diagnosis.nothing() < HARDLY_TOLD) {
      next.add(
          "That is hardly more than was believed before anything was read: these readings tell next to nothing of this house.");
    }
    Optional<Diagnosis.Next> reading = diagnosis.next().filter(n -> n.apart() >= TELLS);
    if (diagnosis.outcome() != Outcome.AS_DESIGNED && !looked) {
      next.add(
          "Write what you find into a column 'found' (right, lockshield open, lockshield shut, pin, head, air, short, covered, exchanged) and ask again.");
    }
    reading.ifPresent(
        n -> next.add(say("Of what was not read the {} would tell most.", what(n.point()))));
    cooler()
        .ifPresent(
            flow ->
                next.add(
                    say(
                        "Weather compensation keeps the water at {}. Set to {} for the hour (--flow {}), readings would tell more.",
                        Quantities.temperature(model.expected(flow())),
                        Quantities.setting(flow),
                        Quantities.number(flow, 0))));
    return next;
  }

  private boolean isWarm() {
    for (int p = 0; p < model.points().size(); p++) {
      if (model.points().get(p).kind() == Point.Kind.RETURN
          && model.expected(p) > day.start() + WARM) {
        return true;
      }
    }
    return false;
  }

  private int flow() {
    for (int p = 0; p < model.points().size(); p++) {
      if (model.points().get(p).kind() == Point.Kind.FLOW) {
        return p;
      }
    }
    throw new IllegalStateException("the source's flow is not among the points");
  }

  /** The flow temperature of design weather, where the day's is much cooler. */
  private Optional<Double> cooler() {
    House house = model.model().house();
    Optional<FlowCurve> curve = house.control().flowCurve();
    if (curve.isEmpty() || day.flow().isPresent()) {
      return Optional.empty();
    }
    double designed = Math.rint(curve.get().setPoint(house.designOutdoor(), 0));
    return designed > model.expected(flow()) + MUCH_COOLER
        ? Optional.of(Math.min(designed, Math.floor(house.source().highestFlow())))
        : Optional.empty();
  }
}
