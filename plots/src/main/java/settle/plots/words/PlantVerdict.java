package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.Balance.BranchBalance;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.CyclingFigures;
import settle.sim.result.PlantFigures;
import settle.sim.result.RunResult;
import settle.sim.source.Buffer;
import settle.sim.source.Carrier;
import settle.sim.source.Source;
import settle.sim.source.WaterNeeded;

/**
 * What one run means for source, water and balance, in sentences. Thresholds only decide what is
 * worth saying; those without a source named are common practice.
 *
 * @param house what was simulated
 * @param result what came out
 */
public record PlantVerdict(House house, RunResult result) {

  /** Boilers starting more often than this wear and waste; common practice, no source [1/h]. */
  private static final double NOTABLE_BOILER_STARTS = 6;

  /** Blocked for less than this is a start or stop of the pump [s]. */
  private static final double NOTABLE_BLOCK = 120;

  /** Less backup heat than this share is not worth a word [-]. */
  private static final double NOTABLE_BACKUP = 0.01;

  /** A branch with less of its design flow than this is starved; common practice [-]. */
  private static final double STARVED = 0.75;

  /** Whether a branch with such a share of its design flow [-] is starved. */
  public static boolean isStarved(double share) {
    return share < STARVED;
  }

  /** The sentences worth including in a verdict. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    PlantFigures plant = result.plant();
    plant
        .seasonalFactor()
        .ifPresent(
            f ->
                sentences.add(
                    say(
                        "Over the run {} gives {} times as much heat as it uses electricity.",
                        named(),
                        Quantities.number(f, 2))));
    if (backupShare() >= NOTABLE_BACKUP) {
      sentences.add(
          say(
              "Its backup heater makes {} of the heat ({}).",
              Quantities.share(backupShare()),
              Quantities.energy(plant.backupHeat())));
    }
    if (startsOften()) {
      sentences.add(often());
      if (risesPastBand()) {
        sentences.add(pastBand());
      } else {
        water().filter(w -> tooLittleWater()).ifPresent(sentences::add);
      }
    }
    if (plant.cycling().timeBlocked() >= NOTABLE_BLOCK) {
      sentences.add(blocked());
    }
    starved().ifPresent(sentences::add);
    return sentences;
  }

  /** Whether the source switches on and off by itself, so that its starts mean something. */
  private boolean cycles() {
    return house.source().carrier() != Carrier.NONE;
  }

  /** Share of the heat that the backup heater makes [-]. */
  private double backupShare() {
    PlantFigures plant = result.plant();
    return plant.sourceHeat() > 0 ? plant.backupHeat() / plant.sourceHeat() : 0;
  }

  private boolean startsOften() {
    double notable =
        house.source().carrier() == Carrier.ELECTRICITY ? WaterNeeded.OFTEN : NOTABLE_BOILER_STARTS;
    CyclingFigures cycling = result.plant().cycling();
    return cycles()
        && (cycling.startsPerHour() >= notable || cycling.mostStartsInAnHour() > 1.5 * notable);
  }

  private String often() {
    CyclingFigures cycling = result.plant().cycling();
    return say(
        "{} cycles: {} starts a day, up to {} within an hour{}.",
        Sentences.capitalised(named()),
        Quantities.number(cycling.startsPerDay(), 0),
        cycling.mostStartsInAnHour(),
        cycling.shortestRun().isPresent()
            ? say(
                ", the shortest run {} long",
                Quantities.duration(cycling.shortestRun().getAsDouble()))
            : "");
  }

  private boolean tooLittleWater() {
    CyclingFigures cycling = result.plant().cycling();
    return cycling.waterNeeded().orElse(0) > cycling.waterVolume();
  }

  /** Whether the water in circulation is enough for the shortest run; empty if none is asked. */
  public Optional<String> water() {
    CyclingFigures cycling = result.plant().cycling();
    if (cycling.waterNeeded().isEmpty()) {
      return Optional.empty();
    }
    double needed = cycling.waterNeeded().getAsDouble();
    String run =
        "the shortest run"
            + (house.source().carrier() == Carrier.ELECTRICITY
                ? say(
                    " of {} in mild weather ({})",
                    Quantities.duration(house.source().minimumOnTime()),
                    Quantities.setting(WaterNeeded.MILD))
                : "");
    String has = "Water in circulation: " + Quantities.litres(cycling.waterVolume()) + "; ";
    if (!tooLittleWater()) {
      return Optional.of(
          has + "enough, since " + run + " needs " + Quantities.litres(needed) + ".");
    }
    return Optional.of(
        has
            + run
            + " needs "
            + Quantities.litres(needed)
            + ": "
            + Quantities.litres(needed - cycling.waterVolume())
            + " more"
            + remedy()
            + ".");
  }

  /**
   * By how much a heat pump at its least output warms the water that passes it, mean over the time
   * it ran at about that [K]; not a number if it never did.
   */
  private double riseAtLeastOutput() {
    Source pump = house.source();
    if (pump.carrier() != Carrier.ELECTRICITY) {
      return Double.NaN;
    }
    Trace trace = result.trace();
    double[] time = trace.time();
    double[] heat = trace.column(HouseColumn.SOURCE_HEAT);
    double[] outdoor = trace.column(HouseColumn.OUTDOOR);
    double[] leaving = trace.column(HouseColumn.SOURCE_FLOW);
    double[] flow = trace.column(HouseColumn.MASS_FLOW);
    Optional<Buffer> parallel =
        house.buffer().filter(b -> b.placement() == Buffer.Placement.PARALLEL);
    double rise = 0;
    double length = 0;
    for (int i = 1; i < time.length; i++) {
      double passing = parallel.isPresent() ? parallel.get().sourceFlow() : flow[i];
      double least = pump.minimumPower(outdoor[i], leaving[i]);
      if (passing > 0 && heat[i] > 0.9 * least && heat[i] < 1.1 * least) {
        double step = time[i] - time[i - 1];
        rise += step * least / (passing * house.water().specificHeat());
        length += step;
      }
    }
    return rise / length;
  }

  /**
   * Whether the least output warms what passes by more than the switching band: then the source
   * switches off however much water stands in series.
   */
  private boolean risesPastBand() {
    return riseAtLeastOutput() > 2 * house.source().switchingBand();
  }

  private String pastBand() {
    return say(
        "So little water passes it that even its least output warms it by {}, more than the {} between on and off: more water in series does not help; a parallel buffer with a pump of its own does, or more open emitters.",
        Quantities.difference(riseAtLeastOutput()),
        Quantities.tolerance(2 * house.source().switchingBand()));
  }

  private String remedy() {
    if (risesPastBand()) {
      return ", though volume alone does not help while so little passes the source";
    }
    return ", such as a volumiser in the return"
        + (house.buffer().isPresent() ? ", or a larger buffer" : "");
  }

  private String blocked() {
    return say(
        "For {} heat was called for but {} did not run, since too little water flowed: leave some emitters without a valve, or fit a bypass or a parallel buffer.",
        Quantities.duration(result.plant().cycling().timeBlocked()),
        named());
  }

  /** Says that an arrangement is not balanced where that starves a branch. */
  private Optional<String> starved() {
    Balance balance = result.balance();
    int least = -1;
    int most = -1;
    for (int b = 0; b < balance.branches().size(); b++) {
      least = least < 0 || share(b) < share(least) ? b : least;
      most = most < 0 || share(b) > share(most) ? b : most;
    }
    if (least < 0 || !isStarved(share(least))) {
      return Optional.empty();
    }
    String who = room(least) + " gets " + Quantities.share(share(least)) + " of its design flow";
    String others =
        most == least || share(most) <= 1
            ? ""
            : " while " + room(most) + " gets " + Quantities.share(share(most));
    return Optional.of(
        balance.balanced()
            ? "Even balanced, " + who + " with every valve open: the pump is too weak for it."
            : "Not balanced: with every valve open " + who + others + ".");
  }

  /** Flow of a branch as it is run over its design flow [-]. */
  private double share(int branch) {
    BranchBalance b = result.balance().branches().get(branch);
    return b.flow() / b.designFlow();
  }

  private String room(int branch) {
    return result.arrangement().place(branch);
  }

  private String named() {
    return "the " + house.source().kind();
  }
}
