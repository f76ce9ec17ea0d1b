package settle.plots.words;

import java.util.List;
import java.util.Locale;
import settle.sim.study.ErrorEstimate;

/** How exact the figures of runs are, in words. */
public final class Accuracy {

  private Accuracy() {}

  /**
   * How far the figures move at higher resolution.
   *
   * @param errors one per run, at least one
   */
  public static String of(List<ErrorEstimate> errors) {
    double settled = 0;
    double warmUp = 0;
    double returnMean = 0;
    for (ErrorEstimate error : errors) {
      returnMean = Math.max(returnMean, error.returnMean());
      for (ErrorEstimate.RoomError room : error.rooms()) {
        settled = Math.max(settled, room.lastOperative());
        warmUp = Math.max(warmUp, room.warmUp().orElse(0));
      }
    }
    return String.format(
        Locale.ROOT,
        "With time steps, convergence within them and parcels of water two and four times finer, and the fabric divided twice as fine, no room temperature at the end moves by more than %.3f K,"
            + " no warm-up time by more than %.1f min and no mean return temperature by more than %.3f K.",
        settled,
        warmUp / 60,
        returnMean);
  }
}
