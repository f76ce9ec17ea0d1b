package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import settle.sim.house.House;
import settle.sim.recording.RoomColumn;
import settle.sim.result.PlantFigures;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.units.Times;

/**
 * What one run means, in sentences. Every number in them is a figure of the run; thresholds only
 * decide what is worth saying.
 *
 * @param house what was simulated
 * @param result what came out
 */
public record Verdict(House house, RunResult result) {

  /** Overshoot beyond where the room settles, below which it is not worth a word [K]. */
  private static final double NOTABLE_OVERSHOOT = 0.3;

  /** Degree-hours short after the first warm-up, below which it is not worth a word [K h]. */
  private static final double NOTABLE_SHORTFALL = 1;

  /** Length of a run from which sums are also given per day [d]. */
  private static final double WEEKS = 14;

  /** A room this far above want in the end deserves an explanation [K]. */
  private static final double NOTABLE_RISE = 0.5;

  /** Share of a room's heat from pipes that must not pass for output of its emitter [-]. */
  private static final double NOTABLE_PIPES = 0.15;

  /** The arrangement's name, with a capital first letter. */
  public String name() {
    return Sentences.capitalised(result.arrangement().name());
  }

  /** The sentences one by one: warmth first, then what disturbs it, then water and source. */
  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    sentences.add(answer());
    addTooShortPeriod(sentences);
    addHolding(sentences);
    addOvershoot(sentences);
    addRise(sentences);
    addPipes(sentences);
    addWater(sentences);
    return sentences;
  }

  /** Whether the rooms keep up and when they get warm: the answer in one sentence. */
  public String answer() {
    if (Double.isNaN(result.firstCall())) {
      return "there is no call for heat in the time simulated.";
    }
    boolean one = heatedRooms().size() == 1;
    if (result.keepsUp()) {
      return (one ? "the room keeps up: " : "the rooms keep up: ") + warmth();
    }
    boolean allWarm = allWarm();
    return (one ? "the room does not keep up" : "the rooms do not keep up")
        + (allWarm ? ", although " : ": ")
        + warmth()
        + (allWarm ? coldLater() : "");
  }

  private boolean allWarm() {
    return heatedRooms().stream().allMatch(r -> r.warmUp().isPresent());
  }

  /** Which room, once warm, does not stay so. */
  private String coldLater() {
    List<RoomFigures> falling = fallingShort(Double.MIN_VALUE);
    return falling.isEmpty()
        ? ""
        : say(
            " Later {} falls short of want by {}{}.",
            falling.get(0).name(),
            shortfall(falling.get(0)),
            andOthers(fallingShort(NOTABLE_SHORTFALL).size() - 1));
  }

  private String warmth() {
    List<RoomFigures> heated = heatedRooms();
    List<RoomFigures> never = heated.stream().filter(r -> r.warmUp().isEmpty()).toList();
    List<RoomFigures> warm = heated.stream().filter(r -> r.warmUp().isPresent()).toList();
    if (never.isEmpty()) {
      return allWarm(warm);
    }
    String cold = never.stream().map(this::neverWarm).collect(Collectors.joining("; "));
    if (warm.isEmpty()) {
      return cold + ".";
    }
    RoomFigures last = slowest(warm).orElseThrow();
    String others = warm.size() == 1 ? "the other room is" : "the other rooms are";
    return say(
        "{}; {} warm within {} of the first call.", cold, others, Quantities.warmUp(last.warmUp()));
  }

  /** The arrangement's name in quotation marks, to stand as a noun of either number. */
  String quotedName() {
    return "“" + result.arrangement().name() + "”";
  }

  /**
   * The heated room that gets warm last, a room that never does counting as last of all; empty if
   * none is heated.
   */
  Optional<RoomFigures> slowest() {
    return slowest(heatedRooms());
  }

  private static Optional<RoomFigures> slowest(List<RoomFigures> rooms) {
    return rooms.stream()
        .max(Comparator.comparingDouble(r -> r.warmUp().orElse(Double.POSITIVE_INFINITY)));
  }

  /** Rooms that have an emitter in this arrangement. */
  List<RoomFigures> heatedRooms() {
    return result.rooms().stream().filter(RoomFigures::isHeated).toList();
  }

  /** Whether no heated room has to be waited for. */
  boolean warmFromTheFirst() {
    return heatedRooms().stream().allMatch(r -> r.warmUp().orElse(1) == 0);
  }

  /**
   * Degree-hours below want less tolerance from the first call on, all heated rooms together [K h].
   */
  double shortfall() {
    return heatedRooms().stream().mapToDouble(RoomFigures::shortfall).sum();
  }

  /** Largest overshoot of all heated rooms [K]. */
  double largestOvershoot() {
    return heatedRooms().stream().mapToDouble(RoomFigures::overshoot).max().orElse(0);
  }

  private String allWarm(List<RoomFigures> rooms) {
    RoomFigures last = slowest(rooms).orElseThrow();
    double longest = last.warmUp().orElseThrow();
    String subject = rooms.size() == 1 ? rooms.get(0).name() + " is" : "every room is";
    if (longest == 0) {
      return subject + " warm from the first call for heat on.";
    }
    String time = Quantities.duration(longest);
    return rooms.size() == 1
        ? subject + " warm " + time + " after the first call for heat."
        : say(
            "{} warm within {} of the first call for heat; the slowest is {}.",
            subject,
            time,
            last.name());
  }

  private String neverWarm(RoomFigures room) {
    return room.name()
        + " never comes within "
        + Quantities.tolerance(house.wantTolerance())
        + " of its "
        + Quantities.setting(room.want())
        + " (it "
        + new LastDayWords(room).verb()
        + ")";
  }

  /**
   * A room may have to wait for the programme's next period: then the first was too short for it.
   */
  private void addTooShortPeriod(List<String> sentences) {
    List<String> rooms = new ArrayList<>();
    for (int r = 0; r < result.rooms().size(); r++) {
      RoomFigures room = result.rooms().get(r);
      if (room.isHeated() && room.warmUp().isPresent() && wantFell(r, room)) {
        rooms.add(room.name());
      }
    }
    if (!rooms.isEmpty()) {
      sentences.add("The first heating period is too short to warm " + Listing.of(rooms) + ".");
    }
  }

  /** Whether the want in force fell below the day want between the first call and warmth. */
  private boolean wantFell(int index, RoomFigures room) {
    double[] time = result.trace().time();
    double[] want = result.trace().column(RoomColumn.WANT, index);
    double warm = result.firstCall() + room.warmUp().orElseThrow();
    boolean wanted = false;
    for (int i = 1; i < time.length && time[i] <= warm; i++) {
      boolean full = want[i] >= room.want();
      if (time[i] > result.firstCall() && wanted && !full) {
        return true;
      }
      wanted = time[i] > result.firstCall() && full;
    }
    return false;
  }

  private void addHolding(List<String> sentences) {
    if (!result.keepsUp() && allWarm()) {
      // The answer has named the room.
      return;
    }
    List<RoomFigures> falling = fallingShort(NOTABLE_SHORTFALL);
    if (falling.isEmpty()) {
      return;
    }
    RoomFigures worst = falling.get(0);
    if (result.keepsUp()) {
      sentences.add(
          say(
              "After set-back {} is short of want by {}{}.",
              worst.name(),
              shortfall(worst),
              falling.size() > 1 ? ", more than any other room" : ""));
      return;
    }
    sentences.add(
        say(
            "Once warm, {} falls short again by {}{}.",
            worst.name(),
            shortfall(worst),
            andOthers(falling.size() - 1)));
  }

  /** Rooms that were warm and fell short of want by so many degree-hours, the worst first. */
  private List<RoomFigures> fallingShort(double atLeast) {
    return heatedRooms().stream()
        .filter(r -> r.warmUp().isPresent() && r.shortfallOnceWarm() >= atLeast)
        .sorted(Comparator.comparingDouble(RoomFigures::shortfallOnceWarm).reversed())
        .toList();
  }

  private static String andOthers(int rooms) {
    return rooms <= 0
        ? ""
        : ", and so " + (rooms == 1 ? "does " : "do ") + counted(rooms, "other room");
  }

  /** Degree-hours once warm; over a run of weeks what that is on an average day, too. */
  private String shortfall(RoomFigures room) {
    double[] time = result.trace().time();
    double days = (time[time.length - 1] - time[0]) / Times.DAY;
    String all = Quantities.degreeHours(room.shortfallOnceWarm());
    return days < WEEKS
        ? all
        : all + " (" + Quantities.degreeHours(room.shortfallOnceWarm() / days) + " a day)";
  }

  /** Settling above want by design is reported separately; only overshoot beyond it counts. */
  private void addOvershoot(List<String> sentences) {
    heatedRooms().stream()
        .filter(r -> r.overshoot() - rise(r) >= NOTABLE_OVERSHOOT)
        .max(Comparator.comparingDouble(RoomFigures::overshoot))
        .ifPresent(
            r ->
                sentences.add(
                    say(
                        r.overshoot() == largestOvershoot()
                            ? "Largest overshoot: {}, in {}."
                            : "Largest overshoot of a room that does not stay above want: {}, in {}.",
                        Quantities.difference(r.overshoot()),
                        r.name())));
  }

  private void addRise(List<String> sentences) {
    heatedRooms().stream()
        .max(Comparator.comparingDouble(Verdict::rise))
        .filter(r -> rise(r) >= NOTABLE_RISE)
        .ifPresent(
            r -> {
              LastDayWords words = new LastDayWords(r);
              sentences.add(
                  Sentences.capitalised(r.name())
                      + " "
                      + words.ofDifference()
                      + " "
                      + Quantities.difference(rise(r))
                      + " above want"
                      + words.rangeAside()
                      + ": "
                      + new WarmerWords(house, result, house.roomIndex(r.name())).why());
            });
  }

  /** How far above want a room is at the end [K]; 0 where it is not. */
  private static double rise(RoomFigures room) {
    return room.lastDay().wanted() ? Math.max(-room.droop(), 0) : 0;
  }

  /** Pipes that warm a room much: they do so whether its valve is open or not. */
  private void addPipes(List<String> sentences) {
    List<RoomFigures> piped =
        heatedRooms().stream()
            .filter(r -> r.lastDay().pipeShare() >= NOTABLE_PIPES)
            .sorted(
                Comparator.comparingDouble((RoomFigures r) -> r.lastDay().pipeHeat()).reversed())
            .toList();
    if (piped.isEmpty()) {
      return;
    }
    RoomFigures most = piped.get(0);
    sentences.add(
        say(
            "At the end {} gets {} from pipes besides {} from its emitter{}.",
            most.name(),
            Quantities.power(most.lastDay().pipeHeat()),
            Quantities.power(most.lastDay().emitterHeat()),
            piped.size() == 1
                ? ""
                : say(
                    "; pipes also give {} {} or more of the heat",
                    counted(piped.size() - 1, "other room"),
                    Quantities.share(NOTABLE_PIPES))));
  }

  private void addWater(List<String> sentences) {
    PlantFigures plant = result.plant();
    if (Double.isNaN(plant.flowMean())) {
      sentences.add("No water flowed.");
      return;
    }
    StringBuilder water =
        new StringBuilder("Water leaves the source at ")
            .append(Quantities.temperature(plant.flowMean()))
            .append(" and returns at ")
            .append(Quantities.temperature(plant.returnMean()))
            .append(" on average");
    if (plant.condensingShare().isPresent() && house.source().dewPoint().isPresent()) {
      water
          .append("; water of ")
          .append(Quantities.temperature(plant.entering().orElseThrow()))
          .append(" enters the boiler while it fires, below the dew point of ")
          .append(Quantities.setting(house.source().dewPoint().getAsDouble()))
          .append(" for ")
          .append(Quantities.share(plant.belowDewPoint().orElseThrow()))
          .append(" of that time, and ")
          .append(Quantities.share(plant.condensingShare().getAsDouble()))
          .append(" of the flue's vapour condenses");
    }
    sentences.add(water.append(".").toString());
    sentences.addAll(new PlantVerdict(house, result).sentences());
  }

  private static String counted(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
