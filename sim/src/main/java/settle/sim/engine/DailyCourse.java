package settle.sim.engine;

import java.util.Arrays;

/** What the means of rooms do from day to day: whether they still drift, and what they come to. */
final class DailyCourse {

  /** How far a day's mean may be from that of the day before [K]. */
  static final double DRIFT = 0.005;

  /**
   * Of a swing, what the mean of a day that does not hold whole cycles may differ from the next
   * day's [-]. A plain mean leaves up to 1/(pi N) of it with N cycles in the day, one weighted by
   * sin² 1/(pi N (N² - 1)): of three cycles and a half a hundredth.
   */
  static final double UNEVEN = 0.01;

  /**
   * How far a day's mean may be from that of the day before where it goes up one day and down
   * another [K]. Cycles of source and heads that beat against each other never repeat exactly; what
   * they leave of a day's mean is no drift, which keeps its direction.
   */
  static final double WOBBLE = 0.05;

  /** Days over which a mean that wobbles is taken. */
  static final int WOBBLY_DAYS = 4;

  /** Changes from day to day that have to go one way to be a drift. */
  private static final int ONE_WAY = 3;

  private final double[][] means;
  private final double[] change;
  private final int[] sinceTurn;
  private final boolean[] wobbles;
  private int days;
  private boolean drifts = true;

  /**
   * @param rooms how many
   */
  DailyCourse(int rooms) {
    means = new double[WOBBLY_DAYS][rooms];
    change = new double[rooms];
    sinceTurn = new int[rooms];
    wobbles = new boolean[rooms];
    Arrays.fill(sinceTurn, ONE_WAY);
  }

  /**
   * Adds a day.
   *
   * @param mean of each room [°C]; not modified
   * @param swing from the lowest to the highest of each room [K]; not modified
   */
  void add(double[] mean, double[] swing) {
    double[] before = means[Math.floorMod(days - 1, WOBBLY_DAYS)];
    double[] now = means[days % WOBBLY_DAYS];
    drifts = days == 0;
    for (int r = 0; r < now.length; r++) {
      double moved = mean[r] - before[r];
      now[r] = mean[r];
      if (days > 0) {
        sinceTurn[r] = moved * change[r] < 0 ? 1 : sinceTurn[r] + 1;
        change[r] = moved;
        double size = Math.abs(moved);
        boolean stays = size <= Math.max(DRIFT, UNEVEN * swing[r]);
        wobbles[r] = !stays && size <= WOBBLE && sinceTurn[r] < ONE_WAY && days + 1 >= WOBBLY_DAYS;
        drifts |= !stays && !wobbles[r];
      }
    }
    days++;
  }

  /** Number of days added. */
  int days() {
    return days;
  }

  /** Whether some room's mean still moves, or too few days are known. */
  boolean drifts() {
    return drifts;
  }

  /** Whether the last day answers what is asked, no mean having moved by more than a wobble. */
  boolean answers(HeldRun.Asker asker, double[] least) {
    double[] moved = new double[change.length];
    Arrays.setAll(moved, r -> Math.abs(change[r]));
    return days > 1
        && lastChange() <= WOBBLE
        && asker.isAnswered(means[(days - 1) % WOBBLY_DAYS], least, moved);
  }

  /** Mean of the last day, or of several where it wobbles [°C]. */
  double mean(int room) {
    return wobbles[room]
        ? Arrays.stream(means).mapToDouble(m -> m[room]).average().orElseThrow()
        : means[(days - 1) % WOBBLY_DAYS][room];
  }

  /** Largest change from the day before to the last one [K]. */
  double lastChange() {
    return Arrays.stream(change).map(Math::abs).max().orElse(0);
  }
}
