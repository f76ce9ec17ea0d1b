package settle.sim.result;

import java.util.OptionalDouble;
import settle.sim.control.Timetable;
import settle.sim.units.Times;

/**
 * Reads one room's figures off a course of temperatures.
 *
 * <p>A day period is a stretch in which the want in force is at its day value, the highest of the
 * programme. Warm-up, overshoot and keeping up refer to day periods; shortfall refers to the want
 * in force, whatever it is.
 */
final class RoomReading {

  private final double[] time;
  private final double[] operative;
  private final double[] want;
  private final double tolerance;
  private final double dayWant;
  private final double firstCall;
  private final OptionalDouble warmUp;

  /**
   * @param time ends of steps [s], ascending
   * @param operative operative temperature then [°C]
   * @param want want in force during the step that ends then [°C]
   * @param programme the room's programme
   * @param tolerance how far below want still counts as warm [K]
   * @param firstCall when the first day period begins [s]; infinite if never
   */
  RoomReading(
      double[] time,
      double[] operative,
      double[] want,
      Timetable programme,
      double tolerance,
      double firstCall) {
    this.time = time;
    this.operative = operative;
    this.want = want;
    this.tolerance = tolerance;
    dayWant = programme.maximum();
    this.firstCall = firstCall;
    warmUp = findWarmUp();
  }

  double dayWant() {
    return dayWant;
  }

  OptionalDouble warmUp() {
    return warmUp;
  }

  private boolean day(int step) {
    return want[step] >= dayWant;
  }

  private OptionalDouble findWarmUp() {
    double level = dayWant - tolerance;
    for (int i = 1; i < time.length; i++) {
      if (time[i] <= firstCall || !day(i) || operative[i] < level) {
        continue;
      }
      double from = Math.max(time[i - 1], firstCall);
      if (operative[i - 1] >= level) {
        return OptionalDouble.of(from - firstCall);
      }
      double share = (level - operative[i - 1]) / (operative[i] - operative[i - 1]);
      double at = time[i - 1] + share * (time[i] - time[i - 1]);
      return OptionalDouble.of(Math.max(at, from) - firstCall);
    }
    return OptionalDouble.empty();
  }

  private double warmFrom() {
    return warmUp.isPresent() ? firstCall + warmUp.getAsDouble() : Double.POSITIVE_INFINITY;
  }

  double overshoot() {
    double most = 0;
    for (int i = 1; i < time.length; i++) {
      if (day(i) && time[i] >= warmFrom()) {
        most = Math.max(most, operative[i] - want[i]);
      }
    }
    return most;
  }

  double undershoot() {
    double most = 0;
    for (int i = 1; i + 1 < time.length; i++) {
      if (!day(i) && day(i + 1)) {
        most = Math.max(most, dayWant - operative[i]);
      }
    }
    return most;
  }

  /** Degree-hours below want less tolerance from the first call on [K h]. */
  double shortfall() {
    return shortfallFrom(firstCall);
  }

  /** Of them, those after the first warm-up [K h]; 0 without one. */
  double shortfallOnceWarm() {
    return shortfallFrom(warmFrom());
  }

  private double shortfallFrom(double from) {
    double sum = 0;
    for (int i = 1; i < time.length; i++) {
      if (time[i] > from) {
        double before = Math.max(want[i] - tolerance - at(from, operative, i), 0);
        double after = Math.max(want[i] - tolerance - operative[i], 0);
        sum += (before + after) / 2 * (time[i] - Math.max(time[i - 1], from));
      }
    }
    return sum / 3600;
  }

  /**
   * Where the room has come to in the end.
   *
   * @param air air temperature at the ends of steps [°C]
   * @param emitterHeat mean output of its emitters during them [W]
   * @param pipeHeat mean heat from pipes during them [W]
   * @param restLeast lowest operative temperature by solving the house at rest [°C]; not a number
   *     where none was found
   * @param restMost highest [°C]
   * @param held whether nothing changes from outside all the last day
   */
  LastDay lastDay(
      double[] air,
      double[] emitterHeat,
      double[] pipeHeat,
      double restLeast,
      double restMost,
      boolean held) {
    double end = time[time.length - 1];
    double from = end - (held ? LastDay.LONG_ENOUGH : Times.DAY);
    if (staysAtRest(from, restLeast, restMost)) {
      return over(from, false, air, emitterHeat, pipeHeat, true, 0);
    }
    double warm = warmUp.isPresent() ? warmFrom() : firstCall;
    double begin = Math.max(end - Times.DAY, warm);
    boolean wanted = isWantedAfter(begin);
    return over(
        wanted ? begin : end - Times.DAY,
        wanted,
        air,
        emitterHeat,
        pipeHeat,
        false,
        held ? drift() : 0);
  }

  /** How much warmer it is over the second half of the last hours than over the first [K]. */
  private double drift() {
    double end = time[time.length - 1];
    double half = LastDay.LONG_ENOUGH / 2;
    return end - 2 * half < time[0] - 1e-6
        ? 0
        : mean(end - half, end) - mean(end - 2 * half, end - half);
  }

  /** Mean operative temperature over an interval [°C]. */
  private double mean(double from, double to) {
    double sum = 0;
    double all = 0;
    for (int i = 1; i < time.length; i++) {
      double h = Math.min(time[i], to) - Math.max(time[i - 1], from);
      if (h > 0) {
        sum += (operative[i - 1] + operative[i]) / 2 * h;
        all += h;
      }
    }
    return sum / all;
  }

  /** Whether the room keeps still, and is never further from rest than counts as agreement. */
  private boolean staysAtRest(double from, double least, double most) {
    if (from < time[0] - 1e-6) {
      return false;
    }
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = time.length - 1; i >= 0 && time[i] >= from - 1e-6; i--) {
      low = Math.min(low, operative[i]);
      high = Math.max(high, operative[i]);
    }
    return high - low <= 2 * LastDay.AGREEMENT
        && low >= least - LastDay.AGREEMENT
        && high <= most + LastDay.AGREEMENT;
  }

  private boolean isWantedAfter(double instant) {
    for (int i = time.length - 1; i > 0 && time[i] > instant; i--) {
      if (day(i)) {
        return true;
      }
    }
    return false;
  }

  /** Means and extremes from an instant on, over day periods only or over all of the time. */
  private LastDay over(
      double from,
      boolean dayOnly,
      double[] air,
      double[] emitterHeat,
      double[] pipeHeat,
      boolean settles,
      double drift) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    double all = 0;
    double operativeSum = 0;
    double airSum = 0;
    double emitted = 0;
    double piped = 0;
    for (int i = 1; i < time.length; i++) {
      if (time[i] <= from || (dayOnly && !day(i))) {
        continue;
      }
      double h = time[i] - Math.max(time[i - 1], from);
      double before = at(from, operative, i);
      all += h;
      operativeSum += (before + operative[i]) / 2 * h;
      airSum += (at(from, air, i) + air[i]) / 2 * h;
      emitted += emitterHeat[i] * h;
      piped += pipeHeat[i] * h;
      least = Math.min(least, Math.min(before, operative[i]));
      most = Math.max(most, Math.max(before, operative[i]));
    }
    return new LastDay(
        settles,
        settles || dayOnly,
        operativeSum / all,
        airSum / all,
        least,
        most,
        drift,
        emitted / all,
        piped / all);
  }

  /** A state at the beginning of what is looked at of a step. */
  private double at(double from, double[] states, int step) {
    double length = time[step] - time[step - 1];
    double skipped = Math.max(from - time[step - 1], 0);
    return states[step - 1] + (states[step] - states[step - 1]) * skipped / length;
  }

  /** Peak-to-peak operative temperature over the last hour of the last day period [K]. */
  double swing() {
    int last = time.length - 1;
    while (last > 0 && !day(last)) {
      last--;
    }
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = last; i > 0 && day(i) && time[i] >= time[last] - 3600; i--) {
      low = Math.min(low, operative[i]);
      high = Math.max(high, operative[i]);
    }
    return high >= low ? high - low : 0;
  }

  /**
   * Whether the room comes within tolerance of want in every day period and then stays there. A
   * last period that the run cuts off counts once it is as long as the first warm-up.
   *
   * @param slack how far below counts as still there [K]
   */
  boolean keepsUp(double slack) {
    if (warmUp.isEmpty()) {
      return false;
    }
    double level = dayWant - tolerance;
    boolean warm = false;
    double periodStart = Double.NaN;
    for (int i = 1; i < time.length; i++) {
      if (time[i] <= firstCall) {
        continue;
      }
      if (!day(i)) {
        if (!Double.isNaN(periodStart) && !warm) {
          return false;
        }
        periodStart = Double.NaN;
        warm = false;
        continue;
      }
      if (Double.isNaN(periodStart)) {
        periodStart = time[i - 1];
      }
      if (operative[i] >= level) {
        warm = true;
      } else if (warm && operative[i] < level - slack) {
        return false;
      }
    }
    boolean cutOff = !Double.isNaN(periodStart) && !warm;
    return !(cutOff && time[time.length - 1] - periodStart > warmUp.getAsDouble());
  }
}
