package settle.sim.commissioning;

import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import settle.sim.control.Control;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.control.Timetable;
import settle.sim.engine.HouseRun;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.model.HouseModel;
import settle.sim.room.Room;
import settle.sim.weather.Weather;

/** The first hour of a heating that is started from cold, and what is read in it. */
public final class CommissioningRun {

  /**
   * What is read is the mean over so long [s]: nobody reads a house at one instant, and where a
   * source starts and stops its water goes up and down within minutes.
   */
  private static final double LOOK = 240;

  /** Samples within a look. */
  private static final int SAMPLES = 5;

  /**
   * Steps [s]: with them readings are within 0.03 K of those in steps of 2.5 to 10 s, a twentieth
   * of what a thermometer may be off.
   */
  private static final double SHORTEST_STEP = 60;

  private static final double LONGEST_STEP = 240;

  private static final Timetable NONE = Timetable.constant(0);

  private CommissioningRun() {}

  /**
   * What was taken down.
   *
   * @param readings temperature at each point that was asked for [°C]
   * @param heat mean output of each branch while the last of them is read [W]
   * @param massFlow mean flow through each branch then [kg/s]
   */
  public record Taken(double[] readings, double[] heat, double[] massFlow) {}

  /**
   * A house as it is on commissioning day: every valve open, no programme, thermostat or gain in
   * the way. Its fabric is shared.
   *
   * @param asRun the house, lockshields and pump as they are set
   * @param day the day
   */
  public static HouseModel onTheDay(HouseModel asRun, CommissioningDay day) {
    House house = asRun.house();
    Control control = house.control();
    House opened =
        house
            .withWeather(new Weather.Constant(day.outdoor()))
            .withHotWater(NONE)
            .withRooms(house.rooms().stream().map(CommissioningRun::quiet).toList())
            .withControl(
                new Control(
                    control.setback(),
                    control.referenceRoom(),
                    control.differential(),
                    new Thermostat.None(),
                    day.flow().isPresent() ? Optional.empty() : control.flowCurve(),
                    new OptimumStart.None(),
                    false));
    if (day.flow().isPresent()) {
      double flow = Math.min(day.flow().getAsDouble(), house.source().highestFlow());
      opened = opened.withSource(house.source().setTo(flow));
    }
    Arrangement arrangement = asRun.arrangement().asSet();
    List<Branch> branches = arrangement.branches().stream().map(CommissioningRun::open).toList();
    return asRun.like(opened, arrangement.withBranches(branches));
  }

  private static Room quiet(Room room) {
    return room.withGains(NONE, NONE).withWant(Timetable.constant(room.want().maximum()));
  }

  private static Branch open(Branch branch) {
    return branch.withValve(branch.valve().wideOpen());
  }

  /**
   * Starts the house and reads it.
   *
   * @param model the house as it is on the day
   * @param start temperature of everything at the start [°C]
   * @param points what is read, at least one
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static Taken read(HouseModel model, double start, List<Point> points) {
    TreeSet<Double> instants = new TreeSet<>();
    for (Point point : points) {
      for (int i = 0; i < SAMPLES; i++) {
        instants.add(sample(point, i));
      }
    }
    RunSettings settings =
        new RunSettings(start, 0, instants.last(), SHORTEST_STEP, LONGEST_STEP, List.of());
    HouseRun run = new HouseRun(model, settings);
    double[] readings = new double[points.size()];
    double[] heat = new double[model.branches()];
    double[] flow = new double[heat.length];
    double lookedFrom = instants.last() - LOOK - 1e-6;
    int looks = instants.tailSet(lookedFrom).size();
    for (double instant : instants) {
      run.goOnTo(instant);
      for (int p = 0; p < readings.length; p++) {
        Point point = points.get(p);
        if (instant >= sample(point, 0) && instant <= sample(point, SAMPLES - 1)) {
          readings[p] += at(run, point) / samplesWithin(instants, point);
        }
      }
      for (int b = 0; b < heat.length && instant >= lookedFrom; b++) {
        heat[b] += run.heat(b) / looks;
        flow[b] += run.massFlow(b) / looks;
      }
    }
    return new Taken(readings, heat, flow);
  }

  private static double sample(Point point, int i) {
    return point.time() + LOOK * (i / (SAMPLES - 1.0) - 0.5);
  }

  private static int samplesWithin(NavigableSet<Double> instants, Point point) {
    return instants.subSet(sample(point, 0), true, sample(point, SAMPLES - 1), true).size();
  }

  private static double at(HouseRun run, Point point) {
    return switch (point.kind()) {
      case INLET -> run.entering(point.which());
      case RETURN -> run.leaving(point.which());
      case FAR_END -> run.face(point.which(), 1);
      case AIR -> run.air(point.which());
      case FLOW -> run.flowTemperature();
    };
  }
}
