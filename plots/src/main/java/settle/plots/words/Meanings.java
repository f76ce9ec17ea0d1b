package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import settle.sim.emitter.Emitter;
import settle.sim.house.Branch;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.PlantFigures;
import settle.sim.result.Profile;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.source.Carrier;

/**
 * What each chart says, from the figures of the runs it shows.
 *
 * @param comparison the runs
 */
public record Meanings(Comparison comparison) {

  private static final double HALF_HOUR = 1800;

  /** How well the rooms keep want once they are warm. */
  public String ofRooms() {
    return perArrangement(
        (verdict, name) -> {
          String swing =
              verdict.heatedRooms().stream()
                  .max(Comparator.comparingDouble(RoomFigures::overshoot))
                  .filter(r -> r.overshoot() >= 0.05)
                  .map(
                      r ->
                          say(
                              "; the largest overshoot is {} in {}",
                              Quantities.difference(r.overshoot()),
                              r.name()))
                  .orElse("; no room overshoots");
          return "With " + name + " " + kept(verdict) + swing + ".";
        });
  }

  /** When each room is warm. */
  public String ofWarmUp() {
    return perArrangement(
        (verdict, name) -> {
          RoomFigures slowest = verdict.slowest().orElseThrow();
          RoomFigures quickest =
              verdict.heatedRooms().stream()
                  .min(Comparator.comparingDouble(r -> r.warmUp().orElse(Double.POSITIVE_INFINITY)))
                  .orElseThrow();
          String last =
              slowest.name()
                  + (slowest.warmUp().isPresent()
                      ? " last, after " + Quantities.warmUp(slowest.warmUp())
                      : " not at all in the time simulated");
          if (slowest.equals(quickest)) {
            return "With " + name + " " + last.replace(" last,", " is warm") + ".";
          }
          return say(
              "With {} {} is warm first, after {}, {}.",
              name,
              quickest.name(),
              Quantities.warmUp(quickest.warmUp()),
              last);
        });
  }

  /** What the water temperatures mean for the source. */
  public String ofFlowAndReturn() {
    return perArrangement(
        (verdict, name) -> {
          PlantFigures plant = verdict.result().plant();
          if (Double.isNaN(plant.returnMean())) {
            return "With " + name + " no water flows.";
          }
          String text =
              say(
                  "With {} water returns at {} on average and at most at {}",
                  name,
                  Quantities.temperature(plant.returnMean()),
                  Quantities.temperature(plant.returnPeak()));
          if (comparison.house().source().carrier() == Carrier.GAS
              && plant.condensingShare().isPresent()) {
            text +=
                say(
                    "; it enters the boiler at {} while that fires, and {} of the flue's vapour condenses",
                    Quantities.temperature(plant.entering().orElseThrow()),
                    Quantities.share(plant.condensingShare().getAsDouble()));
          }
          return text + ".";
        });
  }

  /** How far the hot front has come along the skirting of a room. */
  public String ofProfiles(int room) {
    List<String> sentences = new ArrayList<>();
    for (RunResult result : comparison.results()) {
      focus()
          .emitter(result, room)
          .ifPresent(
              b -> {
                if (result.arrangement().branches().get(b).emitter().run().isPresent()) {
                  sentences.add(front(result, b));
                }
              });
    }
    return sentences.isEmpty()
        ? Sentences.capitalised(Listing.of(standing(room)))
            + " warm as a whole: there is no front to see, only a fall in temperature from inlet to outlet."
        : String.join(" ", sentences);
  }

  /** What the trade calls the emitters shown of a room. */
  private List<String> standing(int room) {
    return comparison.results().stream()
        .flatMap(
            r ->
                focus().emitter(r, room).stream()
                    .mapToObj(b -> r.arrangement().branches().get(b).emitter().noun() + "s"))
        .distinct()
        .toList();
  }

  /** What the lag of the head does in a room. */
  public String ofValve(int room) {
    return perArrangement(
        (verdict, name) -> {
          RunResult result = verdict.result();
          RoomFigures figures = result.rooms().get(room);
          OptionalInt branch = focus().thermostatic(result, room);
          if (branch.isEmpty() || figures.warmUp().isEmpty()) {
            return branch.isEmpty()
                ? "With " + name + " " + figures.name() + " has no thermostatic head."
                : say(
                    "With {} {} never gets warm, so its head never has to close.",
                    name,
                    figures.name());
          }
          Trace trace = result.trace();
          int at = indexAt(trace, result.firstCall() + figures.warmUp().getAsDouble());
          double behind =
              trace.column(RoomColumn.OPERATIVE, room)[at]
                  - trace.column(BranchColumn.SENSED, branch.getAsInt())[at];
          double opening = trace.column(BranchColumn.OPENING, branch.getAsInt())[at];
          return say(
              "With {}, when {} is first warm, its head senses {} and its valve is {} open; the overshoot that follows is {}.",
              name,
              figures.name(),
              sensed(behind),
              Quantities.share(opening),
              Quantities.difference(figures.overshoot()));
        });
  }

  /** How the return comes up, and how often the source starts. */
  public String ofFirstHours() {
    return perArrangement(
        (verdict, name) -> {
          RunResult result = verdict.result();
          PlantFigures plant = result.plant();
          Trace trace = result.trace();
          double after =
              trace.column(HouseColumn.RETURN)[indexAt(trace, result.firstCall() + HALF_HOUR)];
          String back =
              Double.isNaN(after)
                  ? " no water flows half an hour after the first call"
                  : say(
                      " water returns at {} half an hour after the first call",
                      Quantities.temperature(after));
          String starts =
              comparison.house().source().carrier() == Carrier.NONE
                  ? ""
                  : say(
                      "; over the whole run the source starts {} times an hour",
                      Quantities.number(plant.cycling().startsPerHour(), 1));
          String shortest =
              plant.cycling().shortestRun().isPresent()
                  ? (comparison.house().source().carrier() == Carrier.GAS
                          ? ", and its shortest firing lasts "
                          : ", and its shortest run lasts ")
                      + Quantities.duration(plant.cycling().shortestRun().getAsDouble())
                  : "";
          return "With " + name + back + starts + shortest + ".";
        });
  }

  /** How much heat went where, that of pipes apart. */
  public String ofHeat() {
    return perArrangement(
        (verdict, name) -> {
          List<RoomFigures> rooms = verdict.result().rooms();
          double emitted = rooms.stream().mapToDouble(r -> r.heat().emitted()).sum();
          double piped = rooms.stream().mapToDouble(r -> r.heat().piped()).sum();
          if (emitted + piped == 0) {
            return "With " + name + " the rooms get no heat.";
          }
          String pipes =
              piped > 0 ? " from emitters and " + Quantities.energy(piped) + " from pipes" : "";
          String text = "With " + name + " the rooms get " + Quantities.energy(emitted) + pipes;
          RoomFigures most =
              rooms.stream().max(Comparator.comparingDouble(Meanings::allHeat)).orElseThrow();
          return rooms.size() == 1
              ? text + "."
              : say(
                  "{}, most of it in {} ({}).",
                  text,
                  most.name(),
                  Quantities.share(allHeat(most) / (emitted + piped)));
        });
  }

  private static double allHeat(RoomFigures room) {
    return room.heat().whole();
  }

  /** What is asked of the source. */
  public String ofPower() {
    return perArrangement(
        (verdict, name) -> {
          RunResult result = verdict.result();
          double peak = 0;
          for (double p : result.trace().column(HouseColumn.SOURCE_HEAT)) {
            peak = Double.isNaN(p) ? peak : Math.max(peak, p);
          }
          double length =
              result.trace().time()[result.trace().size() - 1] - result.trace().time()[0];
          return say(
              "With {} the source gives {} on average and {} at most.",
              name,
              Quantities.power(result.plant().sourceHeat() / length),
              Quantities.power(peak));
        });
  }

  /** Whether the rooms get warm whenever they are wanted warm. */
  private static String kept(Verdict verdict) {
    List<RoomFigures> rooms = verdict.heatedRooms();
    List<String> never =
        rooms.stream().filter(r -> r.warmUp().isEmpty()).map(RoomFigures::name).toList();
    if (!never.isEmpty()) {
      return Listing.of(never) + (never.size() == 1 ? " never gets warm" : " never get warm");
    }
    if (rooms.size() == 1) {
      return verdict.result().keepsUp()
          ? "the room gets warm and stays so"
          : "the room gets warm but does not stay so in every heating period";
    }
    return verdict.result().keepsUp()
        ? "all " + rooms.size() + " heated rooms get warm and stay so in every heating period"
        : "not every room is warm in every heating period";
  }

  /** What a head senses of the room, given how far it lags behind [K]. */
  private static String sensed(double behind) {
    String difference = Quantities.difference(Math.abs(behind));
    if (difference.equals(Quantities.difference(0))) {
      return "the room’s temperature";
    }
    return difference + (behind > 0 ? " less" : " more") + " than the room’s temperature";
  }

  private Focus focus() {
    return new Focus(comparison);
  }

  private interface Sentence {
    String of(Verdict verdict, String name);
  }

  private String perArrangement(Sentence sentence) {
    return String.join(
        " ", comparison.verdicts().stream().map(v -> sentence.of(v, v.quotedName())).toList());
  }

  private static String front(RunResult result, int branch) {
    Branch b = result.arrangement().branches().get(branch);
    Emitter.Run run = b.emitter().run().orElseThrow();
    double length = run.longest();
    List<Profile> whole =
        result.profiles().stream()
            .filter(p -> p.branch() == branch)
            .sorted(Comparator.comparingDouble(Profile::sinceCall))
            .toList();
    if (whole.isEmpty()) {
      return "";
    }
    List<Profile> profiles = whole.stream().map(p -> p.out(run.tubes())).toList();
    Profile last = profiles.get(profiles.size() - 1);
    double coldest =
        profiles.stream().flatMapToDouble(p -> Arrays.stream(p.temperature())).min().orElseThrow();
    List<String> stations = new ArrayList<>();
    for (Profile p : profiles) {
      double position = frontPosition(p, last, coldest);
      if (position >= 0.97 * length) {
        break;
      }
      stations.add(
          Quantities.number(position, 1) + " m after " + Quantities.duration(p.sinceCall()));
    }
    String way =
        stations.isEmpty()
            ? " has passed through by the first time shown"
            : " has come " + Listing.of(stations);
    double[] end = last.temperature();
    double[] all = whole.get(whole.size() - 1).temperature();
    return say(
        "In {} the hot front{}; after {} the far end, {} m along, is at {}{}.",
        b.room(),
        way,
        Quantities.duration(last.sinceCall()),
        Quantities.number(length, 1),
        Quantities.temperature(end[end.length - 1]),
        run.tubes() == 1
            ? ""
            : " and the water that comes back at " + Quantities.temperature(all[all.length - 1]));
  }

  /**
   * How far along the water has come half the way from the coldest water seen to what it is in the
   * end, or to what enters now if that is cooler [m]; the whole length once the far end has.
   */
  private static double frontPosition(Profile profile, Profile last, double coldest) {
    double[] t = profile.temperature();
    double[] end = last.temperature();
    for (int i = 0; i < t.length; i++) {
      double hot = Math.min(t[0], end[Math.min(i, end.length - 1)]);
      if (t[i] < (coldest + hot) / 2) {
        return i == 0 ? 0 : (profile.position()[i - 1] + profile.position()[i]) / 2;
      }
    }
    return profile.position()[t.length - 1];
  }

  private static int indexAt(Trace trace, double time) {
    int i = Arrays.binarySearch(trace.time(), time);
    return i >= 0 ? i : Math.min(trace.size() - 1, -i - 1);
  }
}
