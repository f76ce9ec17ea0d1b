package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import settle.sim.engine.HeldRun;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;

/**
 * How the source worked on a day run in weather that stays as it is.
 *
 * @param outdoor outdoor temperature [°C]
 * @param startsPerHour [1/h]
 * @param shortestRun shortest time it ran from start to stop [s]; empty if it did not start and
 *     stop within the day
 * @param blocked share of the day in which too little flow kept it off though heat was called for
 *     [-]
 */
public record SourceDay(
    double outdoor, double startsPerHour, OptionalDouble shortestRun, double blocked) {

  private static final double HOURS = 24;

  /** One per weather run, coldest first. */
  static List<SourceDay> of(Judgement judgement) {
    List<SourceDay> days = new ArrayList<>();
    for (Judgement.Weather weather : judgement.runs()) {
      HeldRun.Day day = weather.run().orElseThrow();
      days.add(
          new SourceDay(
              weather.outdoor(),
              day.supply().starts() / HOURS,
              shortestRun(day.trace()),
              day.supply().blocked()));
    }
    return days;
  }

  /** Heat taken from the water to defrost counts as running. */
  private static OptionalDouble shortestRun(Trace trace) {
    double[] time = trace.time();
    double[] heat = trace.column(HouseColumn.SOURCE_HEAT);
    double shortest = Double.POSITIVE_INFINITY;
    double started = Double.NaN;
    for (int i = 1; i < time.length; i++) {
      boolean runs = heat[i] != 0;
      if (runs && i > 1 && heat[i - 1] == 0) {
        started = time[i - 1];
      } else if (!runs && !Double.isNaN(started)) {
        shortest = Math.min(shortest, time[i - 1] - started);
        started = Double.NaN;
      }
    }
    return shortest < Double.POSITIVE_INFINITY
        ? OptionalDouble.of(shortest)
        : OptionalDouble.empty();
  }
}
