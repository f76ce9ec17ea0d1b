package settle.plots.gallery;

import java.util.Arrays;
import java.util.List;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;
import settle.sim.units.Times;

/** When a source starts, and which stretch of a run shows it so that starts can be told apart. */
final class Starts {

  /** So many starts can be told apart across one picture. */
  static final int MOST = 40;

  /** Stretches to look at, longest first [h]. */
  private static final int[] STRETCHES = {24, 12, 6, 3, 2, 1};

  private Starts() {}

  /** Starts of a run within a window, each at the beginning of the step it happens in [s]. */
  static double[] within(RunResult result, TimeWindow window) {
    Trace trace = result.trace();
    double[] time = trace.time();
    double[] count = trace.column(HouseColumn.STARTS);
    double[] starts = new double[16];
    int found = 0;
    for (int i = 1; i < time.length; i++) {
      if (count[i] > count[i - 1] && time[i - 1] >= window.from() && time[i - 1] < window.to()) {
        starts = found == starts.length ? Arrays.copyOf(starts, 2 * found) : starts;
        starts[found++] = time[i - 1];
      }
    }
    return Arrays.copyOf(starts, found);
  }

  /**
   * The stretch to show: the busiest day if its starts can be told apart, otherwise the busiest
   * hours, as few of them as it takes. It begins at a full hour; a day begins at midnight.
   */
  static TimeWindow busiest(List<RunResult> results) {
    TimeWindow whole = TimeWindow.whole(results.get(0));
    TimeWindow best = whole;
    for (int hours : STRETCHES) {
      if (hours * Times.HOUR < whole.length() - Times.HOUR) {
        best = busiest(results, whole, hours * Times.HOUR);
      }
      TimeWindow shown = best;
      if (results.stream().allMatch(r -> within(r, shown).length <= MOST)) {
        break;
      }
    }
    return best;
  }

  /** Of equally busy stretches the first. */
  private static TimeWindow busiest(List<RunResult> results, TimeWindow whole, double length) {
    double step = length == Times.DAY ? Times.DAY : Times.HOUR;
    TimeWindow best = null;
    int most = -1;
    for (double from = step * Math.floor(whole.from() / step);
        from < whole.to() - length / 2;
        from += step) {
      TimeWindow window =
          new TimeWindow(Math.max(from, whole.from()), Math.min(from + length, whole.to()));
      int starts = results.stream().mapToInt(r -> within(r, window).length).sum();
      if (starts > most) {
        most = starts;
        best = window;
      }
    }
    return best;
  }
}
