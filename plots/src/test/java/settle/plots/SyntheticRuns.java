package settle.plots;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.control.Control;
import settle.sim.control.Timetable;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.PanelEmitter;
import settle.sim.emitter.PerimeterEmitter;
import settle.sim.house.Aims;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.Building;
import settle.sim.house.Distribution;
import settle.sim.house.Heating;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.house.WaterProperties;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Pipe;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.CyclingFigures;
import settle.sim.result.EnergyLedger;
import settle.sim.result.LastDay;
import settle.sim.result.PlantFigures;
import settle.sim.result.Profile;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.room.Room;
import settle.sim.source.Boiler;
import settle.sim.source.BoilerEfficiency;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.WaxValve;
import settle.sim.weather.Weather;

/**
 * Runs that nobody simulated: smooth invented curves in the shape of results, so that charts and
 * words can be tested without the physics. Not plausible enough to learn anything from.
 */
public final class SyntheticRuns {

  private static final double HOUR = 3600;
  private static final double CALL = 6 * HOUR;

  private SyntheticRuns() {}

  /** A boiler house; the first room's name is a trap for escaping. */
  public static House house(int rooms, double hours) {
    List<Room> list = new ArrayList<>();
    for (int r = 0; r < rooms; r++) {
      list.add(room(r));
    }
    return new House(
        "Invented terrace",
        -2,
        new Weather.DesignDay(0, 4, 6 * HOUR),
        new Building(list, List.of(), List.of()),
        List.of(arrangement("skirting", list, true, 1), arrangement("radiators", list, false, 1)),
        new Heating(
            WaterProperties.AT_50,
            Distribution.direct(new ConstantPump(20_000, 0.3)),
            boiler(),
            Optional.empty(),
            Control.byHeads()),
        Aims.within(0.5),
        new RunSettings(16, 0, hours * HOUR, 10, 640, RunSettings.DEFAULT_PROFILE_TIMES));
  }

  /** The same house with radiators of another size. */
  public static House unfairHouse(int rooms, double hours) {
    House fair = house(rooms, hours);
    return new House(
        fair.title(),
        fair.designOutdoor(),
        fair.weather(),
        new Building(fair.rooms(), fair.partitions(), fair.airExchanges()),
        List.of(fair.arrangements().get(0), arrangement("radiators", fair.rooms(), false, 1.3)),
        new Heating(
            fair.water(), fair.distribution(), fair.source(), fair.buffer(), fair.control()),
        fair.aims(),
        fair.run());
  }

  /** One result per arrangement; in the second the last room never gets warm if {@code cold}. */
  public static List<RunResult> results(House house, boolean cold) {
    List<RunResult> results = new ArrayList<>();
    for (int a = 0; a < house.arrangements().size(); a++) {
      results.add(result(house, a, cold && a == 1));
    }
    return results;
  }

  private static Room room(int r) {
    String[] names = {
      "living & dining",
      "kitchen",
      "bedroom 1",
      "bedroom 2",
      "bathroom",
      "hall",
      "study",
      "box room"
    };
    double want = r == 4 ? 22 : r == 0 ? 21 : 19;
    return new Room(
        names[r % names.length] + (r < names.length ? "" : " " + r),
        16,
        14,
        40,
        0.8,
        4,
        List.of(),
        List.of(),
        new Timetable(86_400, new double[] {6 * HOUR, 22 * HOUR}, new double[] {want, want - 4}),
        Timetable.constant(0),
        Timetable.constant(0));
  }

  private static Boiler boiler() {
    return new Boiler(
        "invented boiler",
        18_000,
        4000,
        70,
        5,
        20_000,
        60,
        180,
        300,
        3,
        new BoilerEfficiency(
            new double[] {30, 55, 80},
            new double[] {0.2, 1},
            new double[][] {{.97, .96}, {.89, .89}, {.87, .87}},
            55));
  }

  private static Arrangement arrangement(
      String name, List<Room> rooms, boolean perimeter, double size) {
    List<Branch> branches = new ArrayList<>();
    for (int r = 0; r < rooms.size(); r++) {
      double length = 8 + r;
      Emitter emitter =
          perimeter
              ? new PerimeterEmitter(
                  "skirting " + (r + 1),
                  length,
                  130,
                  1.3,
                  0.35e-3,
                  700,
                  0.3,
                  0,
                  List.of(),
                  new PerimeterEmitter.Face(0.14, 0.03, 0.05, 0.1))
              : new PanelEmitter(
                  "panel " + (r + 1), 130 * length * size, 1.3, 5e-3, 9000, 0.3, 0, List.of(), 5);
      branches.add(
          new Branch(
              rooms.get(r).name(),
              emitter,
              new WaxValve(
                  "head",
                  rooms.get(r).want().maximum(),
                  2,
                  0.4,
                  new WaxValve.Lags(1200, 0, 0),
                  0.02,
                  0,
                  0.5,
                  0.4,
                  0.8,
                  RoomSensing.OPERATIVE),
              new Lockshield("lockshield", 2, 0.6),
              Pipe.withoutDelay("15 mm", 0.0136, 1.5e-6, 10, 5),
              null,
              OptionalDouble.empty()));
    }
    return new Arrangement(name, branches, false);
  }

  private static RunResult result(House house, int a, boolean cold) {
    int rooms = house.rooms().size();
    Arrangement arrangement = house.arrangements().get(a);
    int n = (int) (house.run().length() / 300) + 1;
    double[] time = new double[n];
    for (int i = 0; i < n; i++) {
      time[i] = 300.0 * i;
    }
    double[][] columns = new double[Trace.columnCount(rooms, rooms, 0)][n];
    double speed = a == 0 ? 1.2 : 2.0;
    double total = 0;
    List<RoomFigures> figures = new ArrayList<>();
    for (int r = 0; r < rooms; r++) {
      double want = house.rooms().get(r).want().maximum();
      double reach = cold && r == rooms - 1 ? want - 1.5 : want + 0.4 - 0.1 * a;
      double tau = HOUR * speed * (1 + 0.15 * r);
      double warmUp = -1;
      double t = want - 4;
      for (int i = 0; i < n; i++) {
        double inForce = house.rooms().get(r).want().valueAt(time[i]);
        double goal = inForce == want ? reach : want - 4;
        double pace = inForce == want ? tau : 8 * HOUR;
        t += (goal - t) * 300 / pace;
        if (warmUp < 0 && time[i] >= CALL && t >= want - 0.5) {
          warmUp = time[i] - CALL;
        }
        double heat =
            inForce == want ? 350 + 900 * Math.exp(-((time[i] % 86_400) - CALL) / tau) : 60;
        set(columns, RoomColumn.AIR, r, i, t + 0.2);
        set(columns, RoomColumn.RADIANT, r, i, t - 0.2);
        set(columns, RoomColumn.OPERATIVE, r, i, t);
        set(columns, RoomColumn.WANT, r, i, i == 0 ? Double.NaN : inForce);
        set(columns, RoomColumn.HEAT, r, i, i == 0 ? Double.NaN : heat);
        set(columns, RoomColumn.PIPE_HEAT, r, i, i == 0 ? Double.NaN : 40);
        double sensed = t - 0.8 * Math.exp(-Math.max(0, (time[i] % 86_400) - CALL) / 4000);
        columns[Trace.index(BranchColumn.SENSED, r, rooms)][i] = sensed;
        columns[Trace.index(BranchColumn.OPENING, r, rooms)][i] =
            i == 0 ? Double.NaN : Math.min(1, Math.max(0, (inForce + 2 - sensed) / 4));
        columns[Trace.index(BranchColumn.MASS_FLOW, r, rooms)][i] = 0.01;
        columns[Trace.index(BranchColumn.INLET, r, rooms)][i] = 65;
        columns[Trace.index(BranchColumn.RETURN, r, rooms)][i] = 50;
        columns[Trace.index(BranchColumn.HEAT, r, rooms)][i] = heat;
      }
      total += 5 + r;
      figures.add(
          new RoomFigures(
              house.rooms().get(r).name(),
              want,
              warmUp < 0 ? OptionalDouble.empty() : OptionalDouble.of(warmUp),
              warmUp < 0 ? 0 : 0.4 - 0.1 * a + 0.1 * r,
              3.5,
              new LastDay(!cold, true, reach, reach + 0.1, reach - 0.6, reach + 0.2, 0, 400, 40),
              warmUp < 0 ? 12.5 : 2,
              0,
              0.2,
              new RoomFigures.Heat(
                  arrangement.ratedOutput(house.rooms().get(r).name()),
                  1250,
                  (5 + r + a) * 3.6e6,
                  0.5 * 3.6e6)));
    }
    for (int i = 0; i < n; i++) {
      double hour = time[i] / HOUR % 24;
      boolean call = hour >= 6 && hour < 22;
      double wave = 3 * Math.sin(time[i] / 700 + a);
      set(
          columns,
          HouseColumn.OUTDOOR,
          i,
          i == 0 ? Double.NaN : house.weather().outdoorAt(time[i]));
      set(columns, HouseColumn.FLOW, i, call ? 67 + wave : Double.NaN);
      set(columns, HouseColumn.RETURN, i, call ? 47 + 6 * a + wave : Double.NaN);
      set(columns, HouseColumn.SOURCE_RETURN, i, call ? 48 + 5 * a + wave : Double.NaN);
      set(
          columns,
          HouseColumn.SOURCE_HEAT,
          i,
          i == 0 ? Double.NaN : call ? 4000 + 5000 * Math.exp(-(hour - 6)) : 0);
      set(columns, HouseColumn.CALL, i, call ? 1 : 0);
    }
    Arrays.fill(columns[Trace.index(HouseColumn.MASS_FLOW)], 0.1);
    Arrays.fill(columns[Trace.index(HouseColumn.SOURCE_INPUT)], 4400);
    Trace trace =
        new Trace(
            house.rooms().stream().map(Room::name).toList(),
            arrangement.branches().stream().map(b -> b.room() + ": " + b.emitter().name()).toList(),
            List.of(),
            time,
            columns);
    return new RunResult(
        arrangement,
        trace,
        figures,
        new PlantFigures(
            66.8,
            47.1 + 6 * a,
            52.4 + 6 * a,
            Optional.of(
                new PlantFigures.BurnerFigures(0.21 - 0.1 * a, 0.93 - 0.2 * a, 48.3 + 5 * a)),
            new CyclingFigures(
                50, 1.1, 4, OptionalDouble.of(240), 3600, 0, 0, 0.05, OptionalDouble.empty()),
            total * 3.6e6,
            0,
            total * 4e6,
            0.3e6,
            0,
            OptionalDouble.empty()),
        new Balance(false, 0, 0, 0, List.of(), List.of()),
        new EnergyLedger(
            total * 3.6e6, 0, total * 3.5e6, 0, 0, 0, 0, total * 0.1e6, 0, 0, total * 3.6e6),
        profiles(house, arrangement),
        CALL,
        !cold,
        n,
        0,
        List.of());
  }

  private static List<Profile> profiles(House house, Arrangement arrangement) {
    List<Profile> profiles = new ArrayList<>();
    for (int b = 0; b < arrangement.branches().size(); b++) {
      Emitter emitter = arrangement.branches().get(b).emitter();
      for (double at : house.run().profileTimes()) {
        double[] x = new double[41];
        double[] t = new double[41];
        boolean perimeter = emitter.run().isPresent();
        double length = emitter.run().map(Emitter.Run::length).orElse(1.0);
        double front = perimeter ? at * 0.06 : length;
        for (int k = 0; k < x.length; k++) {
          x[k] = length * k / 40;
          double hot = 18 + 49 * Math.exp(-x[k] / length * 0.35);
          double mixed = 18 + (hot - 18) * (1 - Math.exp(-at / 400));
          t[k] = perimeter ? 18 + (hot - 18) / (1 + Math.exp((x[k] - front) / 0.15)) : mixed;
        }
        profiles.add(new Profile(b, at, x, t));
      }
    }
    return profiles;
  }

  private static void set(double[][] columns, RoomColumn column, int room, int i, double value) {
    columns[Trace.index(column, room)][i] = value;
  }

  private static void set(double[][] columns, HouseColumn column, int i, double value) {
    columns[Trace.index(column)][i] = value;
  }
}
