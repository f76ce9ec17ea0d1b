package settle.sim.control;

/**
 * Time-proportional switching: at each cycle's beginning the share of it to be on is fixed, share =
 * clamp(1/2 + (want - sensed)/band, 0, 1); it is on first, then off.
 */
final class CycleTimer {

  /** Instants closer than this are one [s]. */
  private static final double SAME_INSTANT = 1e-6;

  private final double cycle;
  private final double band;
  private double end = Double.NaN;
  private double onUntil;

  CycleTimer(Thermostat.TimeProportional settings) {
    cycle = settings.cycle();
    band = settings.band();
  }

  static double share(double want, double sensed, double band) {
    return Math.min(Math.max(0.5 + (want - sensed) / band, 0), 1);
  }

  /** Begins a new cycle if the last is over, and says whether it is on now. */
  boolean update(double time, double want, double sensed) {
    if (!(time < end - SAME_INSTANT)) {
      onUntil = time + cycle * share(want, sensed, band);
      end = time + cycle;
    }
    return time < onUntil - SAME_INSTANT;
  }

  /** Out of force: the next update begins a new cycle. */
  void stop() {
    end = Double.NaN;
  }

  /** Next instant at which it may change [s]; infinite when out of force. */
  double nextSwitch(double time) {
    if (Double.isNaN(end)) {
      return Double.POSITIVE_INFINITY;
    }
    return time < onUntil - SAME_INSTANT ? onUntil : end;
  }
}
