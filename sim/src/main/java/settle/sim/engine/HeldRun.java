package settle.sim.engine;

import java.util.Arrays;
import java.util.List;
import settle.sim.atrest.Balancing;
import settle.sim.atrest.SettledHouse;
import settle.sim.control.Timetable;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.model.HouseModel;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.room.Room;
import settle.sim.units.Times;
import settle.sim.weather.Weather;

/**
 * A house run in weather that stays as it is, every room wanting its day value all the time, no sun
 * and no other gains, hot water at its hours, until it rests or goes round and round: the judge of
 * what {@link SettledHouse} says of it at rest.
 *
 * <p>The fabric begins where it would rest by that, and its slow parts then go faster until no mean
 * of eight hours moves any more; so a heavy house needs no month. The last days are at its own
 * pace, two at least unless the first of a house that stays even is as those hours were, and the
 * last of them is what is read.
 */
public final class HeldRun {

  /** How a run ended. */
  public enum Ending {
    /** Every room stays within {@link #STILL}. */
    AT_REST,
    /** Temperatures go up and down about means that stay. */
    REPEATS,
    /** Means still moved, and left open what was asked, when {@link #MOST_DAYS} were over. */
    DRIFTS
  }

  /** Range within which a room counts as still [K]. */
  public static final double STILL = 0.02;

  /**
   * How much warmer than the warmest want water and heads begin [K]: heads that come from warm rest
   * at that end of their play at which they pass least.
   */
  private static final double FROM_WARM = 3;

  private static final int MOST_DAYS = 40;

  /** Range within which a room counts as even [K]: a hundredth of it is no error of a mean. */
  private static final double LITTLE_SWING = 0.2;

  /**
   * What is compared while slow parts go faster [s]: longer than most cycles of heads and source,
   * and with {@link HouseRun} bringing slow parts to six hours, what they still lack after two that
   * agree is a third of what they differ by.
   */
  private static final double FASTER_DAY = 8 * Times.HOUR;

  /** For how long so little is compared [s]; cycles of half a day would never let it end. */
  private static final double FASTER_DAYS = 3 * Times.DAY;

  private HeldRun() {}

  /**
   * One day, the last, of a house in held weather.
   *
   * @param ending how it ended
   * @param drift largest difference of a room's mean operative temperature from the day before [K]
   * @param operative mean operative temperature of each room [°C], in the house's order; of the
   *     last four days where it wobbles from day to day
   * @param least lowest of each room [°C]
   * @param most highest of each room [°C]
   * @param air mean air temperature of each room [°C]
   * @param heat mean output of each branch's emitter [W]
   * @param supply what source and water did
   * @param trace the day itself, at its own times
   */
  public record Day(
      Ending ending,
      double drift,
      double[] operative,
      double[] least,
      double[] most,
      double[] air,
      double[] heat,
      Supply supply,
      Trace trace) {}

  /**
   * What source and water did over that day.
   *
   * @param flow mean temperature of the water that went into the mains, by mass [°C]; not a number
   *     where none did
   * @param returning mean temperature of the water that came back, by mass [°C]; likewise
   * @param heat mean heat made by the source [W]
   * @param input mean fuel or electrical power taken by it [W]
   * @param called share of the day in which heat was called for [-]
   * @param blocked share of the day in which too little flow kept the called source from running
   *     [-]
   * @param starts of the source in the day [-]
   */
  public record Supply(
      double flow,
      double returning,
      double heat,
      double input,
      double called,
      double blocked,
      int starts) {

    /** Whether heat was called for and none was made. */
    public boolean neverRan() {
      return called > 0 && heat <= 0;
    }
  }

  /** Whoever knows whether days say enough though means still move. */
  @FunctionalInterface
  public interface Asker {

    /** Means have to stay. */
    Asker EXACT = (mean, least, moved) -> false;

    /**
     * Whether the last day says enough.
     *
     * @param mean mean operative temperature of each room in it [°C]; not modified
     * @param least lowest of each room [°C]; not modified
     * @param moved difference of each mean from the day before [K], none above {@link
     *     DailyCourse#WOBBLE}; not modified
     */
    boolean isAnswered(double[] mean, double[] least, double[] moved);
  }

  /**
   * Runs a house until it rests.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param outdoor outdoor temperature [°C]
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static Day of(House house, Arrangement arrangement, double outdoor) {
    return of(Balancing.asRun(house, arrangement), outdoor, Asker.EXACT);
  }

  /**
   * Runs a house until it rests, or its last days answer what is asked.
   *
   * @param prepared the house as it is run; its weather, gains and programme do not count
   * @param outdoor outdoor temperature [°C]
   * @param asker knows what is asked
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static Day of(HouseModel prepared, double outdoor, Asker asker) {
    House house = prepared.house();
    List<Room> steady = house.rooms().stream().map(HeldRun::steady).toList();
    double start =
        steady.stream().mapToDouble(r -> r.want().maximum()).max().orElseThrow() + FROM_WARM;
    RunSettings as = house.run();
    RunSettings settings =
        new RunSettings(
            start,
            MOST_DAYS * Times.DAY,
            Times.DAY,
            as.shortestStep(),
            as.longestStep(),
            List.of());
    House still =
        house.withRooms(steady).withWeather(new Weather.Constant(outdoor)).withRun(settings);
    HouseModel model = prepared.like(still, prepared.arrangement());
    double[] none = new double[steady.size()];
    SettledHouse rest = new SettledHouse(model, outdoor, none, none).asControlled();
    HouseRun run = new HouseRun(model, settings);
    run.beginAtRest(outdoor, rest.heats());
    return of(model, run, asker);
  }

  private static Room steady(Room room) {
    Timetable none = Timetable.constant(0);
    return room.withWant(Timetable.constant(room.want().maximum())).withGains(none, none);
  }

  private static Day of(HouseModel model, HouseRun run, Asker asker) {
    int rooms = model.house().rooms().size();
    boolean daily = !model.house().hotWater().isConstant();
    Watch today = new Watch(run, rooms, daily);
    run.hasten(true);
    DailyCourse faster = new DailyCourse(rooms);
    double begun = run.time();
    do {
      double length = !daily && run.time() < begun + FASTER_DAYS ? FASTER_DAY : Times.DAY;
      today.begin(length);
      run.goOnTo(run.time() + length, today::see);
      add(today, faster);
    } while (faster.drifts() && run.time() < begun + MOST_DAYS / 2 * Times.DAY - 1);
    run.hasten(false);
    DailyCourse own = new DailyCourse(rooms);
    if (!today.goesUpAndDown()) {
      add(today, own);
    }
    boolean open;
    do {
      today.begin(Times.DAY);
      run.recordTo(run.time() + Times.DAY, today::see);
      add(today, own);
      open = own.drifts() && !own.answers(asker, today.least);
    } while (open && run.time() < -Times.DAY - 1);
    return read(model, run, today, own, open);
  }

  private static void add(Watch day, DailyCourse course) {
    int rooms = day.sum.length;
    double[] mean = new double[rooms];
    double[] swing = new double[rooms];
    for (int r = 0; r < rooms; r++) {
      mean[r] = day.mean(r);
      swing[r] = day.swing(r);
    }
    course.add(mean, swing);
  }

  private static Day read(
      HouseModel model, HouseRun run, Watch today, DailyCourse course, boolean drifts) {
    int rooms = today.sum.length;
    double[] operative = new double[rooms];
    double[] air = new double[rooms];
    double swing = 0;
    for (int r = 0; r < rooms; r++) {
      operative[r] = course.mean(r);
      air[r] = today.airSum[r] / today.weight;
      swing = Math.max(swing, today.swing(r));
    }
    Ending ending = swing <= STILL ? Ending.AT_REST : Ending.REPEATS;
    if (drifts) {
      ending = Ending.DRIFTS;
    }
    return new Day(
        ending,
        course.lastChange(),
        operative,
        today.least.clone(),
        today.most.clone(),
        air,
        heats(run.trace(), model.branches()),
        supply(run),
        run.trace());
  }

  private static double[] heats(Trace trace, int branches) {
    double[] heat = new double[branches];
    for (int b = 0; b < heat.length; b++) {
      heat[b] = mean(trace.time(), trace.column(BranchColumn.HEAT, b));
    }
    return heat;
  }

  private static Supply supply(HouseRun run) {
    Trace trace = run.trace();
    double[] time = trace.time();
    double[] flowing = trace.column(HouseColumn.MASS_FLOW);
    return new Supply(
        meanOfFlow(time, flowing, trace.column(HouseColumn.FLOW)),
        meanOfFlow(time, flowing, trace.column(HouseColumn.RETURN)),
        mean(time, trace.column(HouseColumn.SOURCE_HEAT)),
        mean(time, trace.column(HouseColumn.SOURCE_INPUT)),
        mean(time, trace.column(HouseColumn.CALL)),
        run.sums().timeBlocked() / Times.DAY,
        run.starts());
  }

  private static double mean(double[] time, double[] values) {
    double sum = 0;
    for (int i = 1; i < time.length; i++) {
      sum += values[i] * (time[i] - time[i - 1]);
    }
    return sum / (time[time.length - 1] - time[0]);
  }

  /** Mean weighted by mass; not a number where nothing flows. */
  private static double meanOfFlow(double[] time, double[] flowing, double[] temperature) {
    double sum = 0;
    double mass = 0;
    for (int i = 1; i < time.length; i++) {
      if (flowing[i] > 0) {
        double passed = flowing[i] * (time[i] - time[i - 1]);
        sum += temperature[i] * passed;
        mass += passed;
      }
    }
    return mass > 0 ? sum / mass : Double.NaN;
  }

  /**
   * Means and extremes of every room over the day looked at. The middle of the day weighs most, by
   * sin²: where in its swing the day begins and ends then hardly matters. Where something happens
   * by the clock every hour counts alike.
   */
  private static final class Watch {
    private final HouseRun run;
    private final boolean daily;
    private final double[] lastOperative;
    private final double[] lastAir;
    private final double[] sum;
    private final double[] airSum;
    private final double[] least;
    private final double[] most;
    private double begun;
    private double length;
    private double weight;

    Watch(HouseRun run, int rooms, boolean daily) {
      this.run = run;
      this.daily = daily;
      lastOperative = new double[rooms];
      lastAir = new double[rooms];
      sum = new double[rooms];
      airSum = new double[rooms];
      least = new double[rooms];
      most = new double[rooms];
    }

    /** Forgets what was, and watches for so long [s]. */
    void begin(double forSoLong) {
      begun = run.time();
      length = forSoLong;
      weight = 0;
      Arrays.fill(sum, 0);
      Arrays.fill(airSum, 0);
      for (int r = 0; r < sum.length; r++) {
        lastOperative[r] = run.operative(r);
        lastAir[r] = run.air(r);
        least[r] = lastOperative[r];
        most[r] = lastOperative[r];
      }
    }

    void see() {
      double h = run.lastLength();
      double sine = Math.sin(Math.PI * (run.time() - h / 2 - begun) / length);
      double share = daily ? h : sine * sine * h;
      weight += share;
      for (int r = 0; r < sum.length; r++) {
        double operative = run.operative(r);
        double air = run.air(r);
        sum[r] += (lastOperative[r] + operative) / 2 * share;
        airSum[r] += (lastAir[r] + air) / 2 * share;
        lastOperative[r] = operative;
        lastAir[r] = air;
        least[r] = Math.min(least[r], operative);
        most[r] = Math.max(most[r], operative);
      }
    }

    double mean(int room) {
      return sum[room] / weight;
    }

    /** Whether some room swings, so that no mean of less than two whole days says enough. */
    boolean goesUpAndDown() {
      double widest = 0;
      for (int r = 0; r < sum.length; r++) {
        widest = Math.max(widest, swing(r));
      }
      return widest > LITTLE_SWING;
    }

    double swing(int room) {
      return most[room] - least[room];
    }
  }
}
