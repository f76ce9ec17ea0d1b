package settle.sim.commissioning;

import java.util.Arrays;
import java.util.Optional;
import settle.sim.commissioning.Venting.Stages;
import settle.sim.engine.HouseRun;

/**
 * Temperatures from the source to the far end of one emitter, watched while hot water comes.
 *
 * <p>A temperature is there when it lacks no more than {@link Venting#CLOSE} of where it stands in
 * the end beside the one before it on the water's way: a source that goes on rising, or starts and
 * stops, delays nothing behind it.
 */
final class Watched {

  /** How often temperatures are looked at [s]: minutes are what is asked for. */
  static final double LOOK = 20;

  /** How often from {@link #FINELY} on [s]. */
  private static final double LATER_LOOK = 60;

  /** Up to when they are looked at that often [s]. */
  private static final double FINELY = 1200;

  /** Over how much of the end a temperature's last place is taken [s]: sources start and stop. */
  private static final double END = 900;

  /** Rise below which no hot water came [K]. */
  private static final double LEAST_RISE = 6;

  private final double start;
  private final double[] time;
  private final double[] source;
  private final double[] inlet;
  private final double[] far;
  private final double[] back;

  /**
   * Watches.
   *
   * @param run goes on from an instant to {@link Venting#LONGEST} later
   * @param from the instant [s]
   * @param branch the emitter
   * @param start temperature of all that is cold [°C]
   */
  Watched(HouseRun run, double from, int branch, double start) {
    this.start = start;
    int looks = (int) Math.round(FINELY / LOOK + (Venting.LONGEST - FINELY) / LATER_LOOK);
    time = new double[looks];
    source = new double[looks];
    inlet = new double[looks];
    far = new double[looks];
    back = new double[looks];
    double at = 0;
    for (int i = 0; i < looks; i++) {
      at += at < FINELY ? LOOK : LATER_LOOK;
      run.goOnTo(from + at);
      time[i] = at;
      source[i] = run.flowTemperature();
      inlet[i] = run.entering(branch);
      far[i] = run.face(branch, 1);
      back[i] = run.leaving(branch);
    }
  }

  /**
   * What takes how long.
   *
   * @param asked flow temperature that the source is asked for [°C]
   * @return empty where hot water does not come
   */
  Optional<Stages> stages(double asked) {
    if (end(inlet) < start + LEAST_RISE) {
      return Optional.empty();
    }
    double level = Math.min(asked, end(source)) - Venting.CLOSE;
    int hot = 0;
    while (source[hot] < level) {
      hot++;
    }
    int entered = arrival(inlet, source, hot);
    int through = Math.max(arrival(far, inlet, entered), arrival(back, inlet, entered));
    if (through == time.length) {
      return Optional.empty();
    }
    return Optional.of(
        new Stages(time[hot], time[entered] - time[hot], time[through] - time[entered]));
  }

  /** First look from another on at which a temperature is there; their number if there is none. */
  private int arrival(double[] of, double[] before, int from) {
    double gap = end(before) - end(of) + Venting.CLOSE;
    double sum = 0;
    for (int i = from; i < of.length; i++) {
      sum += before[i];
      if (of[i] >= sum / (i - from + 1) - gap) {
        return i;
      }
    }
    return of.length;
  }

  private double end(double[] of) {
    int from = 0;
    while (time[from] <= Venting.LONGEST - END) {
      from++;
    }
    return Arrays.stream(of, from, of.length).average().orElseThrow();
  }
}
