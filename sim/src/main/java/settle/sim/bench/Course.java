package settle.sim.bench;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import settle.sim.units.Times;

/**
 * What a room and its valve did when something changed, as a run of the whole house has it.
 *
 * @param disturbance what changed
 * @param detail name of the room a door was opened to; empty otherwise
 * @param time since the change, before it negative [s]
 * @param operative operative temperature of the room [°C]
 * @param opening of the valve in the step before, K_v/K_vs [-]
 * @param want of the room at the end [°C]
 * @param atRest temperature at which the house, solved at rest, settles after the change [°C]
 */
public record Course(
    Disturbance disturbance,
    String detail,
    double[] time,
    double[] operative,
    double[] opening,
    double want,
    double atRest) {

  /** How close to where it ends up a room counts as settled [K]. */
  public static final double SETTLED_WITHIN = 0.1;

  /** Mean temperature over the day before the change [°C]. */
  public double before() {
    return mean(-Times.DAY, 0);
  }

  /** Mean temperature over the last day [°C]. */
  public double after() {
    return mean(end() - Times.DAY, end());
  }

  /** How far below want it is after the change, mean of the last day [K]; above it, below zero. */
  public double droop() {
    return want - after();
  }

  /** Peak to peak over the last day [K]. */
  public double swing() {
    return most(end() - Times.DAY) - least(end() - Times.DAY);
  }

  /** How far it went, after the change, above both where it had been and where it ended [K]. */
  public double above() {
    return Math.max(most(0) - Math.max(before(), after()), 0);
  }

  /** How far it went below both [K]. */
  public double below() {
    return Math.max(Math.min(before(), after()) - least(0), 0);
  }

  /**
   * Time after the change from which on it stays close to where it ends up [s]; infinite if it
   * still swings wider than that.
   */
  public double settlingTime() {
    if (swing() > 2 * SETTLED_WITHIN) {
      return Double.POSITIVE_INFINITY;
    }
    double there = after();
    int i = time.length - 1;
    while (i > 0 && time[i] > 0 && Math.abs(operative[i] - there) <= SETTLED_WITHIN) {
      i--;
    }
    return Math.max(time[i], 0);
  }

  /**
   * How far the room swings within a time if it goes to and fro there, three ways or more [K]; 0 if
   * it only drifts, or goes one way and back.
   *
   * @param from after the change [s]
   * @param to after the change [s]
   */
  public double hunting(double from, double to) {
    int ways = 0;
    double widest = 0;
    double turn = Double.NaN;
    double furthest = Double.NaN;
    for (int i = 0; i < time.length; i++) {
      if (time[i] < from || time[i] > to) {
        continue;
      }
      double now = operative[i];
      if (Double.isNaN(turn)) {
        turn = now;
        furthest = now;
      } else if ((now - furthest) * (furthest - turn) >= 0) {
        furthest = now;
      } else if (Math.abs(now - furthest) > 2 * SETTLED_WITHIN) {
        // Turned round for good: one way is done.
        double way = Math.abs(furthest - turn);
        if (way > 2 * SETTLED_WITHIN) {
          ways++;
          widest = Math.max(widest, way);
        }
        turn = furthest;
        furthest = now;
      }
    }
    return ways >= 3 ? widest : 0;
  }

  private double end() {
    return time[time.length - 1];
  }

  /** Trapezoids between the steps' ends. */
  private double mean(double from, double to) {
    double sum = 0;
    double span = 0;
    for (int i = 1; i < time.length; i++) {
      if (time[i - 1] >= from - 1e-6 && time[i] <= to + 1e-6) {
        double length = time[i] - time[i - 1];
        sum += (operative[i - 1] + operative[i]) / 2 * length;
        span += length;
      }
    }
    return sum / span;
  }

  private DoubleStream since(double from) {
    return IntStream.range(0, time.length)
        .filter(i -> time[i] >= from)
        .mapToDouble(i -> operative[i]);
  }

  private double most(double from) {
    return since(from).max().orElse(Double.NEGATIVE_INFINITY);
  }

  private double least(double from) {
    return since(from).min().orElse(Double.POSITIVE_INFINITY);
  }
}
