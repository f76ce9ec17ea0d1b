package settle.sim.result;

import java.util.OptionalDouble;
import settle.sim.control.Timetable;

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

  /**
   * Degree-hours below want less tolerance, after the first warm-up or, without one, from the first
   * call [K h].
   */
  double shortfall() {
    double from = warmUp.isPresent() ? warmFrom() : firstCall;
    double sum = 0;
    for (int i = 1; i < time.length; i++) {
      if (time[i - 1] >= from) {
        double shortBefore = Math.max(want[i] - tolerance - operative[i - 1], 0);
        double shortAfter = Math.max(want[i] - tolerance - operative[i], 0);
        sum += (shortBefore + shortAfter) / 2 * (time[i] - time[i - 1]);
      }
    }
    return sum / 3600;
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
