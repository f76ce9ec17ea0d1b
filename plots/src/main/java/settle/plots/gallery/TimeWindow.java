package settle.plots.gallery;

import java.time.LocalDate;
import java.util.Optional;
import settle.plots.chart.Axis;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;
import settle.sim.units.Times;

/**
 * A stretch of time.
 *
 * @param from its beginning [s]
 * @param to its end [s], > from
 */
record TimeWindow(double from, double to) {

  /** Intervals over which means are taken [s]. */
  private static final double[] INTERVALS = {
    60, 120, 300, 600, 900, 1800, 3600, 7200, 21_600, Times.DAY
  };

  /** More intervals than this cannot be told apart on a panel. */
  private static final int MOST_INTERVALS = 100;

  TimeWindow {
    if (!(to > from)) {
      throw new IllegalArgumentException("a window from " + from + " s to " + to + " s is empty");
    }
  }

  /** All of a run. */
  static TimeWindow whole(RunResult result) {
    Trace trace = result.trace();
    return new TimeWindow(trace.time()[0], trace.time()[trace.size() - 1]);
  }

  /** All of a short run; of a long one, the day of the first call for heat and the day after. */
  static TimeWindow twoDays(RunResult result) {
    return days(result, 2);
  }

  /** All of a short run; of a long one, the day of the first call for heat. */
  static TimeWindow oneDay(RunResult result) {
    return days(result, 1);
  }

  /** All of a short run; of a long one, the day of the first call for heat and two more. */
  static TimeWindow threeDays(RunResult result) {
    return days(result, 3);
  }

  private static TimeWindow days(RunResult result, int days) {
    TimeWindow whole = whole(result);
    if (whole.length() <= days * Times.DAY + 3600) {
      return whole;
    }
    double call = Double.isNaN(result.firstCall()) ? whole.from : result.firstCall();
    double from = Math.max(whole.from, Times.DAY * Math.floor(call / Times.DAY));
    if (from >= whole.to) {
      // A call as the run ends begins a day of which nothing is left.
      from = whole.to - Times.DAY;
    }
    return new TimeWindow(from, Math.min(whole.to, from + days * Times.DAY));
  }

  /** Whether days are too many to tell apart by their hours: what is shown then is each day. */
  boolean isSeason() {
    return length() >= 14 * Times.DAY;
  }

  /** Whether it is less than all of a run. */
  boolean isPartOf(RunResult result) {
    return !equals(whole(result));
  }

  /**
   * The interval over which to take means where a burner's starts would make a comb of the line
   * [s].
   */
  double readableInterval() {
    for (double interval : INTERVALS) {
      if (length() / interval <= MOST_INTERVALS) {
        return interval;
      }
    }
    return Times.DAY * Math.ceil(length() / Times.DAY / MOST_INTERVALS);
  }

  /** Its duration [s]. */
  double length() {
    return to - from;
  }

  /** The axis of its hours. */
  Axis axis() {
    return axis(Optional.empty());
  }

  /**
   * The axis of its hours, or of its months where the season's days are known.
   *
   * @param firstDay the day at whose midnight time is 0
   */
  Axis axis(Optional<LocalDate> firstDay) {
    return Axis.time(from / 3600, to / 3600, firstDay);
  }
}
