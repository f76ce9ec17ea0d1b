package settle.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.control.Control;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.Building;
import settle.sim.house.Distribution;
import settle.sim.house.Heating;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.Balance.BranchBalance;
import settle.sim.hydraulics.Bypass;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.hydraulics.LockshieldScale;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.Pipe;
import settle.sim.notice.Code;
import settle.sim.notice.Notice;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.MainColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.CyclingFigures;
import settle.sim.result.PlantFigures;
import settle.sim.result.RunResult;
import settle.sim.source.BackupHeater;
import settle.sim.source.Buffer;
import settle.sim.source.CarnotPerformance;
import settle.sim.source.Defrost;
import settle.sim.source.HeatPump;

/**
 * The invented runs with a tree of mains and a heat pump that starts and stops: as little to learn
 * from, but every column filled. The first arrangement is balanced, the second is not.
 */
public final class SyntheticPlant {

  private static final double HOUR = 3600;

  private SyntheticPlant() {}

  /** A heat pump house with mains in three levels; at least three rooms. */
  public static House house(int rooms, double hours) {
    Pipe pipe = Pipe.withoutDelay("22 mm", 0.0202, 1.5e-6, 8, 3);
    List<Main> tree =
        List.of(
            new Main("trunk", null, pipe, null, 15),
            new Main("ground", "trunk", pipe, null, 15),
            new Main("upstairs", "trunk", pipe, null, 15),
            new Main("loft", "upstairs", pipe, null, 15));
    return house(rooms, hours, tree, Optional.of(new Bypass("upstairs", 22_000, 5000, 1.2)));
  }

  /** The same fed by one manifold, with no bypass. */
  public static House manifoldHouse(int rooms, double hours) {
    Pipe pipe = Pipe.withoutDelay("28 mm", 0.0262, 1.5e-6, 6, 3);
    return house(
        rooms, hours, List.of(new Main("manifold", null, pipe, null, 15)), Optional.empty());
  }

  private static House house(int rooms, double hours, List<Main> mains, Optional<Bypass> bypass) {
    House plain = SyntheticRuns.house(rooms, hours);
    List<Arrangement> arrangements = new ArrayList<>();
    for (Arrangement a : plain.arrangements()) {
      List<Branch> branches = new ArrayList<>();
      for (int b = 0; b < rooms; b++) {
        branches.add(fed(a.branches().get(b), feeding(mains, b, rooms)));
      }
      arrangements.add(new Arrangement(a.name(), branches, arrangements.isEmpty()));
    }
    return new House(
        plain.title(),
        plain.designOutdoor(),
        plain.weather(),
        new Building(plain.rooms(), List.of(), List.of()),
        arrangements,
        new Heating(
            plain.water(),
            new Distribution(
                new ConstantPump(25_000, 0.3), mains, bypass, 7, LockshieldScale.TYPICAL),
            heatPump(),
            Optional.of(new Buffer(Buffer.Placement.RETURN, 0.05, 1.2, 18, 0)),
            Control.byHeads()),
        plain.aims(),
        plain.run());
  }

  private static String feeding(List<Main> mains, int branch, int rooms) {
    if (mains.size() == 1) {
      return mains.get(0).name();
    }
    int third = (rooms + 2) / 3;
    return branch < third ? "ground" : branch < 2 * third ? "upstairs" : "loft";
  }

  private static Branch fed(Branch b, String main) {
    return new Branch(
        b.room(), b.emitter(), b.valve(), b.lockshield(), b.pipe(), main, OptionalDouble.of(0.012));
  }

  private static HeatPump heatPump() {
    return new HeatPump(
        "invented heat pump",
        new CarnotPerformance(0.4, 6000, 80),
        0.3,
        45,
        new HeatPump.Limits(3, 60, 0.15, 600, 300),
        60,
        40_000,
        120,
        30,
        Optional.of(new Defrost(-7, 5, 3000, 360, 4000, 1500)),
        Optional.of(new BackupHeater(3000, -5)));
  }

  /** One result per arrangement. The last branch is shut, and its room warm without it. */
  public static List<RunResult> results(House house) {
    return results(house, 3);
  }

  /**
   * The same with a source that starts as often as given.
   *
   * @param everySteps steps of five minutes from one start to the next
   */
  public static List<RunResult> results(House house, int everySteps) {
    List<RunResult> results = new ArrayList<>();
    for (RunResult plain : SyntheticRuns.results(house, false)) {
      results.add(result(house, plain, everySteps));
    }
    return results;
  }

  private static RunResult result(House house, RunResult plain, int everySteps) {
    Trace trace = trace(house, plain, everySteps);
    double[] starts = trace.column(HouseColumn.STARTS);
    int count = (int) starts[starts.length - 1];
    PlantFigures p = plain.plant();
    double hours = house.run().length() / HOUR;
    return new RunResult(
        plain.arrangement(),
        trace,
        plain.rooms(),
        new PlantFigures(
            43.5,
            38.2,
            41.0,
            Optional.empty(),
            new CyclingFigures(
                count,
                count / hours,
                5,
                OptionalDouble.of(390),
                10 * HOUR,
                4,
                700,
                0.046,
                OptionalDouble.of(0.061)),
            p.sourceHeat(),
            0.05 * p.sourceHeat(),
            p.sourceHeat() / 3.1,
            0.5e6,
            1.5e6,
            OptionalDouble.of(3.1)),
        balance(plain.arrangement()),
        plain.ledger(),
        plain.profiles(),
        plain.firstCall(),
        plain.keepsUp(),
        plain.steps(),
        plain.stepsUnagreed(),
        List.of());
  }

  private static Balance balance(Arrangement arrangement) {
    List<BranchBalance> branches = new ArrayList<>();
    int n = arrangement.branches().size();
    for (int b = 0; b < n; b++) {
      Branch branch = arrangement.branches().get(b);
      double asGiven = 0.012 * (1.6 - 1.2 * b / (n - 1));
      branches.add(
          new BranchBalance(
              branch.room() + ": " + branch.emitter().name(),
              0.012,
              asGiven,
              arrangement.balanced() ? 0.012 : asGiven,
              LockshieldScale.TYPICAL.atTurns(0.5 + 0.2 * b),
              0.18,
              24_000 - 1000 * b,
              0.55 - 0.05 * b));
    }
    List<Notice> notices =
        arrangement.balanced()
            ? List.of()
            : List.of(Notice.about("ground", Code.NOISY_MAINS, 1.04));
    return new Balance(arrangement.balanced(), n - 1, 17_000, 25_000, branches, notices);
  }

  private static Trace trace(House house, RunResult plain, int everySteps) {
    Trace old = plain.trace();
    List<Main> mains = house.distribution().mains();
    int rooms = old.rooms().size();
    int branches = old.branches().size();
    int n = old.size();
    double[][] columns = new double[Trace.columnCount(rooms, branches, mains.size())][n];
    for (HouseColumn c : HouseColumn.values()) {
      columns[Trace.index(c)] = old.column(c);
    }
    for (int r = 0; r < rooms; r++) {
      for (RoomColumn c : RoomColumn.values()) {
        columns[Trace.index(c, r)] = old.column(c, r);
      }
    }
    double[] total = new double[n];
    for (int b = 0; b < branches; b++) {
      for (BranchColumn c : BranchColumn.values()) {
        columns[Trace.index(c, b, rooms)] = old.column(c, b);
      }
      boolean shut = b == branches - 1;
      double share = plain.arrangement().balanced() ? 1 : 1.6 - 1.2 * b / (branches - 1);
      double[] opening = columns[Trace.index(BranchColumn.OPENING, b, rooms)];
      for (int i = 0; i < n; i++) {
        boolean call = called(old, i);
        opening[i] = shut ? 0 : opening[i];
        double flow = call && !shut ? 0.012 * share * Math.sqrt(at(opening, i)) : 0;
        total[i] += flow;
        set(columns, BranchColumn.MASS_FLOW, b, rooms, i, flow);
        set(columns, BranchColumn.INLET, b, rooms, i, flow > 0 ? 44.2 - 0.1 * b : Double.NaN);
        set(columns, BranchColumn.RETURN, b, rooms, i, flow > 0 ? 38 - 0.2 * b : Double.NaN);
        set(columns, BranchColumn.PRESSURE, b, rooms, i, call ? 24_000 - 1000 * b : 0);
      }
    }
    for (int m = 0; m < mains.size(); m++) {
      for (int i = 0; i < n; i++) {
        double flow = 0;
        for (int b = 0; b < branches; b++) {
          if (feeds(house, m, plain.arrangement().branches().get(b).fedFrom())) {
            flow += columns[Trace.index(BranchColumn.MASS_FLOW, b, rooms)][i];
          }
        }
        columns[Trace.index(MainColumn.MASS_FLOW, m, rooms, branches)][i] = flow;
        columns[Trace.index(MainColumn.FLOW, m, rooms, branches)][i] = 44.6 - 0.2 * m;
        columns[Trace.index(MainColumn.RETURN, m, rooms, branches)][i] = 38.1 - 0.2 * m;
        columns[Trace.index(MainColumn.PRESSURE, m, rooms, branches)][i] = 24_000;
      }
    }
    source(columns, old, total, everySteps);
    return new Trace(
        old.rooms(), old.branches(), mains.stream().map(Main::name).toList(), old.time(), columns);
  }

  /** Runs all steps of a cycle but the last; every fourth run ends in a defrost. */
  private static void source(double[][] columns, Trace old, double[] total, int everySteps) {
    double count = 0;
    for (int i = 0; i < old.size(); i++) {
      int phase = i % everySteps;
      boolean running = called(old, i) && phase < everySteps - 1;
      boolean defrost = called(old, i) && i % (4 * everySteps) == 4 * everySteps - 1;
      count += called(old, i) && phase == 0 ? 1 : 0;
      double heat = running ? 4500 : defrost ? -3000 : 0;
      boolean known = i > 0;
      set(columns, HouseColumn.SET_POINT, i, known ? 45 : Double.NaN);
      set(columns, HouseColumn.SOURCE_FLOW, i, known ? running ? 46.5 : 41 : Double.NaN);
      set(columns, HouseColumn.FLOW, i, total[i] > 0 ? running ? 46.5 : 41 : Double.NaN);
      set(columns, HouseColumn.RETURN, i, total[i] > 0 ? running ? 39 : 37.5 : Double.NaN);
      set(columns, HouseColumn.SOURCE_HEAT, i, known ? heat : Double.NaN);
      set(columns, HouseColumn.SOURCE_INPUT, i, known ? Math.abs(heat) / 3 + 30 : Double.NaN);
      set(columns, HouseColumn.BACKUP_HEAT, i, known ? running ? 500 : 0 : Double.NaN);
      set(columns, HouseColumn.STARTS, i, count);
      set(columns, HouseColumn.MASS_FLOW, i, total[i]);
      set(columns, HouseColumn.PUMP_HEAD, i, called(old, i) ? 25_000 : 0);
      set(columns, HouseColumn.PUMP_POWER, i, called(old, i) ? 20 : 0);
      set(columns, HouseColumn.BYPASS_FLOW, i, called(old, i) && !running ? 0.02 : 0);
      set(columns, HouseColumn.PIPE_LOSS, i, 60);
    }
  }

  private static boolean called(Trace trace, int i) {
    return trace.column(HouseColumn.CALL)[i] > 0;
  }

  private static double at(double[] opening, int i) {
    return Double.isNaN(opening[i]) ? 0 : opening[i];
  }

  /** Whether water for a branch passes mains. */
  private static boolean feeds(House house, int main, String fedFrom) {
    int m = house.distribution().mainIndex(fedFrom);
    while (m >= 0) {
      if (m == main) {
        return true;
      }
      m = house.distribution().mainIndex(house.distribution().mains().get(m).fedFrom());
    }
    return false;
  }

  private static void set(double[][] columns, HouseColumn column, int i, double value) {
    columns[Trace.index(column)][i] = value;
  }

  private static void set(
      double[][] columns, BranchColumn column, int branch, int rooms, int i, double value) {
    columns[Trace.index(column, branch, rooms)][i] = value;
  }
}
