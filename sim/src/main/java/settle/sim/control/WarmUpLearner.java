package settle.sim.control;

/**
 * Learns how early to begin: lead = k (want - T). Each warm-up from T_0 that takes t until the room
 * counts as warm shows k = t/(want - T_0); the k in use goes half way there.
 */
final class WarmUpLearner {

  /** Share of the difference that each warm-up takes away [-]; common practice, no source. */
  static final double RELAXATION = 0.5;

  /** Warm-ups from closer to want than this say little about k [K]. */
  private static final double LEAST_RISE = 1;

  private final double longest;
  private double k;
  private double startedAt = Double.NaN;
  private double from;

  WarmUpLearner(OptimumStart.Learned settings) {
    longest = settings.longest();
    k = settings.firstGuess();
  }

  /** Lead for a rise [s]. */
  double lead(double rise) {
    return Math.min(k * Math.max(rise, 0), longest);
  }

  double k() {
    return k;
  }

  /** A warm-up begins. */
  void begin(double time, double temperature) {
    startedAt = time;
    from = temperature;
  }

  boolean learning() {
    return !Double.isNaN(startedAt);
  }

  /** The room is warm. */
  void reached(double time, double want) {
    learn((time - startedAt) / (want - from), want);
  }

  /** The day period has ended with the room still cold: k is at least what that took. */
  void neverReached(double time, double want) {
    learn(Math.max((time - startedAt) / (want - from), k), want);
  }

  private void learn(double shown, double want) {
    if (want - from >= LEAST_RISE) {
      k += RELAXATION * (shown - k);
    }
    startedAt = Double.NaN;
  }
}
