package settle.sim.study;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;
import settle.sim.measure.Measure;
import settle.sim.measure.Measure.Kind;

/**
 * One kind of measure from the least to the furthest, rung by rung as it can be set, bought or
 * fitted.
 *
 * @param kind what is changed
 * @param room for which room; empty for the whole house
 * @param rungs what can be done, least first; at least one
 * @param limit furthest that it goes, in the kind's unit; not a number where there is none
 * @param rises whether every rung warms the cold rooms more than the one before
 */
record Ladder(Kind kind, String room, List<Measure> rungs, double limit, boolean rises) {

  /** What is as near to a multiple as that is one, as a share of the unit [-]. */
  private static final double NEXT = 1e-6;

  Ladder {
    rungs = List.copyOf(rungs);
  }

  /** One that rises, if it has any rung. */
  static List<Ladder> rising(Kind kind, String room, List<Measure> rungs, double limit) {
    return rungs.isEmpty() ? List.of() : List.of(new Ladder(kind, room, rungs, limit, true));
  }

  /** One that rises at multiples of a unit, from beyond what is there to a limit. */
  static List<Ladder> rising(
      Kind kind, String room, double from, double unit, double limit, DoubleFunction<Measure> at) {
    return rising(kind, room, rungs(from, unit, limit, at), limit);
  }

  /** Rungs at multiples of a unit, from beyond what is there to a limit. */
  static <T> List<T> rungs(double from, double unit, double limit, DoubleFunction<T> at) {
    List<T> rungs = new ArrayList<>();
    boolean rises = limit >= from;
    long step =
        rises
            ? (long) Math.floor(from / unit + NEXT) + 1
            : (long) Math.ceil(from / unit - NEXT) - 1;
    while (rises
        ? multiple(step, unit) <= limit + unit * NEXT
        : multiple(step, unit) >= limit - unit * NEXT) {
      rungs.add(at.apply(multiple(step, unit)));
      step += rises ? 1 : -1;
    }
    return rungs;
  }

  /** A multiple that reads as it is written: 0.15, not 0.15000000000000002. */
  private static double multiple(long step, double unit) {
    return BigDecimal.valueOf(unit).multiply(BigDecimal.valueOf(step)).doubleValue();
  }

  Measure furthest() {
    return rungs.get(rungs.size() - 1);
  }

  /**
   * The lowest rung that does it, where the furthest does and every rung does more than the one
   * before.
   *
   * @param from position of the first rung that is looked at
   */
  int lowest(int from, Predicate<Measure> does) {
    int low = from;
    int high = rungs.size() - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (does.test(rungs.get(middle))) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }
}
