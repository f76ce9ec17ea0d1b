package settle.sim.tuning;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import settle.sim.control.Timetable;
import settle.sim.engine.DailySwing;
import settle.sim.engine.Simulation;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.house.Tariffs;
import settle.sim.model.HouseModel;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.room.Room;
import settle.sim.source.Carrier;
import settle.sim.units.Times;
import settle.sim.weather.Weather;

/**
 * A plant in still weather for a day, or for a whole week where its programmes differ between days;
 * days like it have gone before, so that fabric and programme have found each other. Without sun,
 * other gains as the house has them.
 *
 * @param outdoor how cold it is [°C]
 * @param days how long it lasts
 * @param run the time itself
 * @param deviation mean square distance from want over the programmes' periods, heated rooms alike,
 *     not counting warmth that comes while heating has yet to be wanted [K²]
 * @param warmth by room with an emitter
 */
public record Spell(
    double outdoor, int days, RunResult run, double deviation, Map<String, Warmth> warmth) {

  /** Days gone before. */
  private static final int DAYS_BEFORE = 4;

  /** Days gone before in a search. */
  private static final double FEWER_BEFORE = 1.5;

  /**
   * How long before a spell it begins where a daily swing is known [d]: heads and water have to
   * find their course, and a few tenths of a per cent of cost are left open, no more than by {@link
   * #FEWER_BEFORE}.
   */
  private static final double SWING_BEFORE = 0.25;

  private static final int WEEK = 7;

  /**
   * How much longer the steps of a search are [-]: they move cost by some thousandths and the
   * distance from want by some hundredths, and a search takes a third of the time.
   */
  private static final double COARSER = 12;

  public Spell {
    warmth = Collections.unmodifiableMap(new LinkedHashMap<>(warmth));
  }

  /**
   * How warm a room is when it is to be.
   *
   * @param lateness longest time after the beginning of a period until it is within tolerance of
   *     want [s]; the length of the period where it never is; 0 without periods
   * @param below how far below want it is from then on, as the mean over the rest of the period, or
   *     at best where it never gets within tolerance; the worst period counts [K], below 0 if
   *     warmer
   * @param periods whether its programme lets it cool in between
   */
  public record Warmth(double lateness, double below, boolean periods) {}

  /**
   * Lives through it as the house's own settings step it.
   *
   * @param plant house and heating
   * @param outdoor [°C]
   * @param like what is prepared already
   */
  static Spell of(Plant plant, double outdoor, HouseModel like) {
    HouseModel model = still(plant, outdoor, plant.house().run(), DAYS_BEFORE, like);
    return read(plant, outdoor, Simulation.runAsEver(model));
  }

  /** Lives through it in longer steps, since a search needs many. */
  static Spell searched(Plant plant, double outdoor, HouseModel like) {
    HouseModel model = still(plant, outdoor, coarser(plant), FEWER_BEFORE, like);
    return read(plant, outdoor, Simulation.runAsEver(model));
  }

  /** Lives through it likewise, from where days like it have brought a house set otherwise. */
  static Spell searched(Plant plant, double outdoor, HouseModel like, DailySwing swing) {
    HouseModel model = still(plant, outdoor, coarser(plant), 0, like);
    return read(plant, outdoor, Simulation.runAsEver(model, swing));
  }

  /** How such days make air and fabric swing, in the longer steps of a search. */
  static DailySwing swing(Plant plant, double outdoor, HouseModel like) {
    HouseModel model = still(plant, outdoor, coarser(plant), DAYS_BEFORE + SWING_BEFORE, like);
    return Simulation.swing(model, SWING_BEFORE * Times.DAY);
  }

  /** A run's settings with the longer steps of a search; a few rooms can do without. */
  static RunSettings coarser(Plant plant) {
    RunSettings as = plant.house().run();
    int branches = plant.arrangement().branches().size();
    double shortest = Math.min(Math.max(2 * (branches - 1), 1), COARSER) * as.shortestStep();
    return as.withSteps(shortest, Math.max(as.longestStep(), shortest));
  }

  /** The house in weather that stays, its run as long as the spell. */
  private static HouseModel still(
      Plant plant, double outdoor, RunSettings steps, double before, HouseModel like) {
    RunSettings settings =
        steps.lasting(steps.startTemperature(), before * Times.DAY, days(plant) * Times.DAY);
    House house = plant.house().withWeather(new Weather.Constant(outdoor)).withRun(settings);
    return like.like(house, plant.arrangement());
  }

  private static int days(Plant plant) {
    return everyDayAlike(plant.house()) ? 1 : WEEK;
  }

  private static Spell read(Plant plant, double outdoor, RunResult run) {
    House house = plant.house();
    double sum = 0;
    Map<String, Warmth> warmth = new LinkedHashMap<>();
    for (int r = 0; r < house.rooms().size(); r++) {
      if (run.rooms().get(r).isHeated()) {
        Wanted wanted = new Wanted(run.trace(), r, house.rooms().get(r).want());
        warmth.put(house.rooms().get(r).name(), wanted.warmth(house.wantTolerance()));
        sum += wanted.deviation();
      }
    }
    double deviation = warmth.isEmpty() ? 0 : sum / warmth.size();
    return new Spell(outdoor, days(plant), run, deviation, warmth);
  }

  /** Whether what is wanted in every room is the same on every day. */
  private static boolean everyDayAlike(House house) {
    return house.rooms().stream().map(Room::want).allMatch(Timetable::repeatsDaily);
  }

  /** Longest lateness of any room [s]. */
  public double longestLateness() {
    return warmth.values().stream().mapToDouble(Warmth::lateness).max().orElse(0);
  }

  /** How far from want the rooms are, as the root of the mean square [K]. */
  public double awayFromWant() {
    return Math.sqrt(deviation);
  }

  /** Input of the source in a day [J], less what it takes to warm the house from end to end. */
  public double inputPerDay() {
    return run.plant().input() * lasting() / days;
  }

  /**
   * Share of the source's heat that is lost again within the time [-]: a thermostat's cycles do not
   * end with the day, and what the house holds more at its end is no use of heat.
   */
  private double lasting() {
    double made = run.plant().sourceHeat();
    return made > 0 ? Math.max(1 - run.ledger().stored() / made, 0) : 1;
  }

  /**
   * What source and pump take in a day by the house's tariffs [currency]; the heat of an ideal
   * source is priced as gas.
   */
  public double costPerDay(House house) {
    Tariffs tariffs = house.aims().tariffs();
    Carrier carrier = house.source().carrier();
    double joules = carrier == Carrier.NONE ? run.plant().sourceHeat() : run.plant().input();
    return (joules * lasting() * tariffs.price(carrier)
            + run.plant().pumpElectricity() * tariffs.electricityPrice())
        / Times.KILOWATT_HOUR
        / days;
  }

  /** Figures of the rooms that have an emitter, in the house's order. */
  public List<RoomFigures> rooms() {
    return run.rooms().stream().filter(RoomFigures::isHeated).toList();
  }

  /** A room's temperature while its programme, not an early start, wants its day value. */
  private static final class Wanted {
    private final double[] time;
    private final double[] operative;
    private final Timetable want;
    private final double day;

    Wanted(Trace trace, int room, Timetable want) {
      time = trace.time();
      operative = trace.column(RoomColumn.OPERATIVE, room);
      this.want = want;
      day = want.maximum();
    }

    private boolean wanted(int step) {
      return want.valueAt((time[step - 1] + time[step]) / 2) >= day;
    }

    double deviation() {
      double sum = 0;
      double all = 0;
      for (int i = 1; i < time.length; i++) {
        if (wanted(i)) {
          double h = time[i] - time[i - 1];
          double a = operative[i - 1] - day;
          double b = operative[i] - day;
          sum += h * (a * a + a * b + b * b) / 3;
          all += h;
        }
      }
      return sum / all;
    }

    /**
     * Period by period. What is wanted repeats, so a period that lasts beyond the end goes on at
     * the beginning.
     */
    Warmth warmth(double tolerance) {
      int steps = time.length - 1;
      int first = 1;
      while (first <= steps && !(wanted(first) && !wanted(before(first)))) {
        first++;
      }
      boolean periods = first <= steps;
      Period period = new Period(day - tolerance);
      double lateness = 0;
      double below = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < steps; k++) {
        int i = periods ? 1 + (first - 1 + k) % steps : 1 + k;
        if (wanted(i)) {
          period.goOn(time[i] - time[i - 1], operative[i - 1], operative[i]);
        }
        boolean over = k == steps - 1 || !wanted(1 + i % steps);
        if (wanted(i) && over) {
          lateness = Math.max(lateness, periods ? period.lateness : 0);
          below = Math.max(below, day - period.level());
          period = new Period(day - tolerance);
        }
      }
      return new Warmth(lateness, below, periods);
    }

    private int before(int step) {
      return step > 1 ? step - 1 : time.length - 1;
    }
  }

  /** One period in which a room is to be warm. */
  private static final class Period {
    private final double enough;
    private boolean warm;
    private double lateness;
    private double sum;
    private double since;
    private double highest = Double.NEGATIVE_INFINITY;

    Period(double enough) {
      this.enough = enough;
    }

    void goOn(double length, double from, double to) {
      if (!warm && from >= enough) {
        warm = true;
      }
      if (!warm) {
        warm = to >= enough;
        lateness += warm ? length * (enough - from) / (to - from) : length;
      } else {
        sum += length * (from + to) / 2;
        since += length;
      }
      highest = Math.max(highest, Math.max(from, to));
    }

    /** Mean temperature since it became warm, or the highest where it did not [°C]. */
    double level() {
      return since > 0 ? sum / since : highest;
    }
  }
}
