package settle.sim.testhouses;

import java.util.Locale;
import settle.sim.atrest.Balancing;
import settle.sim.atrest.RestStatus;
import settle.sim.atrest.SettledHouse;
import settle.sim.engine.HeldRun;
import settle.sim.model.HouseModel;

/**
 * A house at rest beside the same house held in the same weather by a run.
 *
 * @param drawn the house
 * @param status what the rest says of itself
 * @param run the last day of the run
 * @param found operative temperature of each room at rest [°C]
 * @param lowest of each room, heads at one end of their play [°C]
 * @param highest of each room, heads at the other [°C]
 * @param restTime what the rest cost [s]
 */
public record RestAgainstRun(
    PlausibleHouse drawn,
    RestStatus status,
    HeldRun.Day run,
    double[] found,
    double[] lowest,
    double[] highest,
    double restTime) {

  /** Asks both. */
  public static RestAgainstRun of(PlausibleHouse drawn) {
    HouseModel model = Balancing.asRun(drawn.house(), drawn.arrangement());
    int rooms = drawn.house().rooms().size();
    double[] none = new double[rooms];
    long before = System.nanoTime();
    SettledHouse rest = new SettledHouse(model, drawn.outdoor(), none, none).asControlled();
    RestStatus status = rest.status();
    double time = (System.nanoTime() - before) / 1e9;
    double[] found = new double[rooms];
    double[] lowest = new double[rooms];
    double[] highest = new double[rooms];
    for (int r = 0; r < rooms; r++) {
      found[r] = rest.operative(r);
      lowest[r] = rest.lowest(r);
      highest[r] = rest.highest(r);
    }
    HeldRun.Day run = HeldRun.of(drawn.house(), drawn.arrangement(), drawn.outdoor());
    return new RestAgainstRun(drawn, status, run, found, lowest, highest, time);
  }

  /** Largest difference of a room's mean in the run from what the rest found [K]. */
  public double off() {
    double worst = 0;
    for (int r = 0; r < found.length; r++) {
      worst = Math.max(worst, Math.abs(run.operative()[r] - found[r]));
    }
    return worst;
  }

  /** How far a room's mean in the run is outside the range that the rest gives it [K]. */
  public double outside() {
    double worst = 0;
    for (int r = 0; r < found.length; r++) {
      double there = run.operative()[r];
      worst = Math.max(worst, Math.max(there - highest[r], lowest[r] - there));
    }
    return worst;
  }

  /**
   * How far the run contradicts the rest [K]: 0 where the rest says that it does not hold, for
   * another reason than that heads have play.
   */
  public double disagreement() {
    if (status.holds()) {
      return off();
    }
    return range() ? outside() : 0;
  }

  /** Whether heads anywhere in their play are all that keeps the rest from one state. */
  public boolean range() {
    return !status.holds()
        && status.reasons().stream()
            .allMatch(
                r -> r.kind() == RestStatus.Kind.PLAY || r.kind() == RestStatus.Kind.NEVER_RUNS);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(drawn.toString());
    text.append(
        String.format(
            Locale.ROOT,
            " | off %.3f, outside %.3f, uncertain %.3f, %s, drift %.3f, rest %.2f s, blocked %.2f |",
            off(),
            outside(),
            status.uncertainty(),
            run.ending(),
            run.drift(),
            restTime,
            run.supply().blocked()));
    for (RestStatus.Reason r : status.reasons()) {
      text.append(
          String.format(
              Locale.ROOT, " %s %s %.4g %.4g;", r.kind(), r.room(), r.value(), r.limit()));
    }
    return text.toString();
  }
}
