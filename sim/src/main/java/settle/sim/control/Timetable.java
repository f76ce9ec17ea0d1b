package settle.sim.control;

import java.util.Arrays;
import settle.sim.units.Times;

/** A value that is constant between instants and repeats: a day's or a week's programme. */
public final class Timetable {

  private final double period;
  private final double[] starts;
  private final double[] values;

  /**
   * @param period after how long it repeats [s], > 0
   * @param starts when each value begins [s], strictly ascending, within [0, period); not modified
   * @param values the values, same length; before the first start the last one holds
   */
  public Timetable(double period, double[] starts, double[] values) {
    if (!(period > 0)) {
      throw new IllegalArgumentException("period " + period + " s must be > 0");
    }
    if (starts.length == 0 || starts.length != values.length) {
      throw new IllegalArgumentException(
          starts.length + " starts against " + values.length + " values");
    }
    for (int i = 0; i < starts.length; i++) {
      if (!(starts[i] >= (i == 0 ? 0 : Math.nextUp(starts[i - 1])) && starts[i] < period)) {
        throw new IllegalArgumentException(
            "start " + starts[i] + " s must ascend within 0.." + period + " s");
      }
    }
    this.period = period;
    this.starts = starts.clone();
    this.values = values.clone();
  }

  /** One value at all times. */
  public static Timetable constant(double value) {
    return new Timetable(Times.DAY, new double[] {0}, new double[] {value});
  }

  /** Value in force at an instant; at a change, the new one. */
  public double valueAt(double time) {
    double inPeriod = time - period * Math.floor(time / period);
    int index = starts.length - 1;
    while (index >= 0 && starts[index] > inPeriod + 1e-6) {
      index--;
    }
    return values[index >= 0 ? index : values.length - 1];
  }

  /**
   * First instant after {@code time} [s] at which the value changes; positive infinity if never.
   */
  public double nextChange(double time) {
    if (isConstant()) {
      return Double.POSITIVE_INFINITY;
    }
    double base = period * Math.floor(time / period);
    double previous = valueAt(time);
    for (int lap = 0; lap <= 2; lap++) {
      for (int i = 0; i < starts.length; i++) {
        double at = base + lap * period + starts[i];
        if (at > time + 1e-6 && values[i] != previous) {
          return at;
        }
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Whether one value holds for ever. */
  public boolean isConstant() {
    for (double value : values) {
      if (value != values[0]) {
        return false;
      }
    }
    return true;
  }

  /** Whether every day is like every other. */
  public boolean repeatsDaily() {
    for (double start : starts) {
      // Both sides of a day's shift change at starts, or at starts less a day.
      if (valueAt(start) != valueAt(start + Times.DAY)
          || valueAt(start - Times.DAY) != valueAt(start)) {
        return false;
      }
    }
    return true;
  }

  /** Largest value. */
  public double maximum() {
    return Arrays.stream(values).max().orElseThrow();
  }

  /** Smallest value. */
  public double minimum() {
    return Arrays.stream(values).min().orElseThrow();
  }

  /** Time-weighted mean over one period. */
  public double mean() {
    double sum = 0;
    for (int i = 0; i < starts.length; i++) {
      double end = i + 1 < starts.length ? starts[i + 1] : period + starts[0];
      sum += values[i] * (end - starts[i]);
    }
    return sum / period;
  }

  /** This timetable with every value so much higher. */
  public Timetable raised(double by) {
    return new Timetable(period, starts, Arrays.stream(values).map(v -> v + by).toArray());
  }
}
