package settle.sim.tuning;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import settle.sim.control.Timetable;
import settle.sim.engine.Simulation;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.weather.Weather;

/**
 * One day of a plant in still weather, as many days like it gone before that fabric and programme
 * have found each other; without sun, other gains as the house has them.
 *
 * @param outdoor how cold it is [°C]
 * @param run the day
 * @param deviation mean square distance from want over the programmes' periods, heated rooms alike,
 *     not counting rooms that want no day value on this day, nor warmth that comes while heating
 *     has yet to be wanted [K²]
 * @param lateness by room with an emitter: longest time after the beginning of a period until it is
 *     within tolerance of want [s]; the length of the period where it never is; 0 without periods
 */
public record Day(double outdoor, RunResult run, double deviation, Map<String, Double> lateness) {

  private static final double DAY = 86_400;

  /** Days gone before. */
  private static final int DAYS_BEFORE = 2;

  /**
   * How much longer the steps of a search are [-]: they move the objective by some thousandths, and
   * a search takes a third of the time.
   */
  private static final double COARSER = 6;

  public Day {
    lateness = Collections.unmodifiableMap(new LinkedHashMap<>(lateness));
  }

  /**
   * Lives through one as the house's own settings step it.
   *
   * @param plant house and heating
   * @param outdoor [°C]
   */
  static Day of(Plant plant, double outdoor) {
    return of(plant, outdoor, 1);
  }

  /** The same in longer steps, as a search needs many. */
  static Day searched(Plant plant, double outdoor) {
    return of(plant, outdoor, COARSER);
  }

  private static Day of(Plant plant, double outdoor, double coarser) {
    RunSettings as = plant.house().run();
    RunSettings settings =
        new RunSettings(
            as.startTemperature(),
            DAYS_BEFORE * DAY,
            DAY,
            coarser * as.shortestStep(),
            Math.max(as.longestStep(), coarser * as.shortestStep()),
            List.of());
    House house = plant.house().withWeather(new Weather.Constant(outdoor)).withRun(settings);
    RunResult run = Simulation.run(house, plant.arrangement());
    double sum = 0;
    Map<String, Double> late = new LinkedHashMap<>();
    int rooms = 0;
    for (int r = 0; r < house.rooms().size(); r++) {
      if (run.rooms().get(r).ratedOutput() > 0) {
        Wanted wanted = new Wanted(run.trace(), r, house.rooms().get(r).want());
        late.put(house.rooms().get(r).name(), wanted.lateness(house.wantTolerance()));
        if (wanted.ever()) {
          sum += wanted.deviation();
          rooms++;
        }
      }
    }
    return new Day(outdoor, run, rooms > 0 ? sum / rooms : 0, late);
  }

  /** Longest lateness of any room [s]. */
  public double longestLateness() {
    return lateness.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }

  /** Input of the source over the day [J]. */
  public double input() {
    return run.plant().input();
  }

  /** Figures of the rooms that have an emitter, in the house's order. */
  public List<RoomFigures> rooms() {
    return run.rooms().stream().filter(room -> room.ratedOutput() > 0).toList();
  }

  /** A room's temperature while its programme, not an early start, wants its day value. */
  private static final class Wanted {
    private final double[] time;
    private final double[] operative;
    private final Timetable want;

    Wanted(Trace trace, int room, Timetable want) {
      time = trace.time();
      operative = trace.column(RoomColumn.OPERATIVE, room);
      this.want = want;
    }

    private boolean wanted(int step) {
      return want.valueAt((time[step - 1] + time[step]) / 2) >= want.maximum();
    }

    /** Whether it is wanted on this day: a week's programme may want it on another one only. */
    boolean ever() {
      for (int i = 1; i < time.length; i++) {
        if (wanted(i)) {
          return true;
        }
      }
      return false;
    }

    double deviation() {
      double sum = 0;
      double all = 0;
      for (int i = 1; i < time.length; i++) {
        if (wanted(i)) {
          double h = time[i] - time[i - 1];
          double a = operative[i - 1] - want.maximum();
          double b = operative[i] - want.maximum();
          sum += h * (a * a + a * b + b * b) / 3;
          all += h;
        }
      }
      return sum / all;
    }

    double lateness(double tolerance) {
      double longest = 0;
      double began = Double.NaN;
      boolean warm = true;
      for (int i = 1; i < time.length; i++) {
        if (wanted(i) && i > 1 && !wanted(i - 1)) {
          began = time[i - 1];
          warm = false;
        }
        if (!wanted(i)) {
          warm = true;
        }
        if (!warm) {
          longest = Math.max(longest, time[i] - began);
          warm = operative[i] >= want.maximum() - tolerance;
        }
      }
      return longest;
    }
  }
}
