package settle.sim.commissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;
import settle.sim.model.HouseModel;
import settle.sim.study.Workers;

/**
 * What a thermometer reads in a house where nothing is wrong, how that scatters, and what each
 * fault makes of it.
 *
 * <p>Everything is simulated once, in short runs that do not depend on each other: the house as it
 * was designed, each unknown a standard deviation to both sides, each fault at three levels. Of the
 * unknowns, means of both sides give a Jacobian, and what is left of them a curvature which adds to
 * mean and scatter:
 *
 * <pre>
 *   J = (f(+s) - f(-s))/2     H = f(+s) + f(-s) - 2 f(0)
 *   mean = f(0) + sum H/2     covariance = sum J J' + sum H H'/2 + instruments
 * </pre>
 */
public final class ReadingModel {

  /** Levels at which each fault is simulated. */
  static final int LEVELS = 3;

  private final HouseModel model;
  private final List<Point> points;
  private final List<Fault> faults;
  private final double[] mean;
  private final double[][] covariance;

  /** What the fault adds, by fault and level [K]. */
  private final double[][][] moves;

  /** What share of the worst room's heat it takes or adds, by fault and level [-]. */
  private final double[][] heatMoves;

  /** Position of that room's first branch, by fault. */
  private final int[] movedBranch;

  private final int runs;

  private ReadingModel(HouseModel model, List<Point> points, Simulated all, Scatter scatter) {
    this.model = model;
    this.points = List.copyOf(points);
    faults = all.faults;
    mean = scatter.mean;
    covariance = scatter.covariance;
    runs = all.taken.size();
    double[] nothing = all.taken.get(0).readings();
    moves = new double[faults.size()][LEVELS][];
    heatMoves = new double[faults.size()][LEVELS];
    movedBranch = new int[faults.size()];
    for (int f = 0; f < moves.length; f++) {
      for (int level = 0; level < LEVELS; level++) {
        CommissioningRun.Taken taken = all.ofFault(f, level);
        moves[f][level] = less(taken.readings(), nothing);
        movedBranch[f] = mostMoved(taken.heat(), all.taken.get(0).heat());
        heatMoves[f][level] =
            roomHeat(taken.heat(), movedBranch[f])
                    / roomHeat(all.taken.get(0).heat(), movedBranch[f])
                - 1;
      }
    }
  }

  /**
   * Simulates what may be read.
   *
   * @param asRun the house as it was designed, lockshields and pump as they are set
   * @param day the day
   * @param points what is read, or might be
   * @param spreads how far all is believed to scatter
   * @param workers who runs the house
   * @param progress given the share that is done [-], by the threads that do it
   * @throws ArithmeticException if the house as it was designed could not be solved
   */
  public static ReadingModel of(
      HouseModel asRun,
      CommissioningDay day,
      List<Point> points,
      CommissioningSpreads spreads,
      Workers workers,
      DoubleConsumer progress) {
    HouseModel opened = CommissioningRun.onTheDay(asRun, day);
    Condition designed = Condition.of(opened, day);
    List<Unknown> unknowns = Unknown.all(opened);
    List<Fault> faults = Fault.possible(opened);
    List<Condition> conditions = conditions(designed, unknowns, faults, spreads.house());
    AtomicInteger done = new AtomicInteger();
    // Prepared before many ask for it at once.
    opened.fabric();
    List<CommissioningRun.Taken> taken =
        workers.all(
            conditions,
            condition -> {
              CommissioningRun.Taken one = condition.read(opened, points);
              progress.accept(done.incrementAndGet() / (double) conditions.size());
              return one;
            });
    Simulated all = new Simulated(unknowns, faults, taken);
    return new ReadingModel(
        opened, points, all, new Scatter(opened, points, all, spreads.instruments()));
  }

  /** All that is run: the house as designed, unknowns to both sides, faults. */
  private static List<Condition> conditions(
      Condition designed,
      List<Unknown> unknowns,
      List<Fault> faults,
      CommissioningSpreads.OfHouse spreads) {
    List<Condition> conditions = new ArrayList<>();
    conditions.add(designed);
    for (Unknown unknown : unknowns) {
      double spread = unknown.spread(spreads);
      conditions.add(unknown.in(designed, spread));
      conditions.add(unknown.in(designed, -spread));
    }
    for (Fault fault : faults) {
      for (int level = 1; level <= (fault.kind().hasLevels() ? LEVELS : 1); level++) {
        conditions.add(fault.in(designed, level));
      }
    }
    return conditions;
  }

  /** All that was run: the house as designed, unknowns to both sides, faults. */
  private record Simulated(
      List<Unknown> unknowns, List<Fault> faults, List<CommissioningRun.Taken> taken) {

    double[] above(int unknown) {
      return taken.get(1 + 2 * unknown).readings();
    }

    double[] below(int unknown) {
      return taken.get(2 + 2 * unknown).readings();
    }

    CommissioningRun.Taken ofFault(int fault, int level) {
      int at = 1 + 2 * unknowns.size();
      for (int f = 0; f < fault; f++) {
        at += faults.get(f).kind().hasLevels() ? LEVELS : 1;
      }
      return taken.get(at + (faults.get(fault).kind().hasLevels() ? level : 0));
    }
  }

  /** Mean and covariance of the readings with nothing wrong. */
  private static final class Scatter {
    private final double[] mean;
    private final double[][] covariance;

    Scatter(
        HouseModel model,
        List<Point> points,
        Simulated all,
        CommissioningSpreads.Instruments instruments) {
      double[] nothing = all.taken.get(0).readings();
      mean = nothing.clone();
      covariance = new double[mean.length][mean.length];
      double[] slope = new double[mean.length];
      double[] bend = new double[mean.length];
      for (int u = 0; u < all.unknowns.size(); u++) {
        for (int p = 0; p < slope.length; p++) {
          double above = all.above(u)[p];
          double below = all.below(u)[p];
          slope[p] = (above - below) / 2;
          bend[p] = (above + below - 2 * nothing[p]) / Math.sqrt(2);
          mean[p] += bend[p] / Math.sqrt(2);
        }
        add(slope);
        add(bend);
      }
      double[] common = new double[mean.length];
      double[] clamp = new double[mean.length];
      for (int p = 0; p < common.length; p++) {
        Point point = points.get(p);
        boolean air = point.kind() == Point.Kind.AIR;
        common[p] = air ? 0 : instruments.common();
        clamp[p] =
            point.kind().byClamp()
                ? instruments.clamp() * (nothing[p] - around(model, points, nothing, point))
                : 0;
        double own = own(instruments, point.kind());
        covariance[p][p] += own * own;
      }
      add(common);
      add(clamp);
    }

    private void add(double[] column) {
      for (int p = 0; p < column.length; p++) {
        for (int q = 0; q < column.length; q++) {
          covariance[p][q] += column[p] * column[q];
        }
      }
    }

    private static double own(CommissioningSpreads.Instruments instruments, Point.Kind kind) {
      return switch (kind) {
        case AIR -> instruments.air();
        case FAR_END -> instruments.face();
        case INLET, RETURN, FLOW -> instruments.pipe();
      };
    }
  }

  /** Air about a pipe that is read: that of its room; at the source that of the first room. */
  static double around(HouseModel model, List<Point> points, double[] readings, Point point) {
    int room = point.kind() == Point.Kind.FLOW ? -1 : model.branchRoom(point.which());
    for (int p = 0; p < readings.length; p++) {
      Point other = points.get(p);
      if (other.kind() == Point.Kind.AIR && (room < 0 || other.which() == room)) {
        return readings[p];
      }
    }
    throw new IllegalStateException("the air of room " + room + " is not among the points");
  }

  private static double[] less(double[] one, double[] other) {
    double[] difference = one.clone();
    for (int i = 0; i < difference.length; i++) {
      difference[i] -= other[i];
    }
    return difference;
  }

  private int mostMoved(double[] heat, double[] before) {
    int most = 0;
    double largest = -1;
    for (int b = 0; b < heat.length; b++) {
      double was = roomHeat(before, b);
      double moved = was > 0 ? Math.abs(roomHeat(heat, b) / was - 1) : 0;
      if (moved > largest) {
        largest = moved;
        most = b;
      }
    }
    return most;
  }

  /** Heat of all emitters of the room that a branch is in [W]. */
  private double roomHeat(double[] heat, int branch) {
    double sum = 0;
    for (int b = 0; b < heat.length; b++) {
      sum += model.branchRoom(b) == model.branchRoom(branch) ? heat[b] : 0;
    }
    return sum;
  }

  /** The house as it was designed, every valve open. */
  public HouseModel model() {
    return model;
  }

  /** What is read, or might be. */
  public List<Point> points() {
    return points;
  }

  /** What may be wrong. */
  public List<Fault> faults() {
    return faults;
  }

  /** How many runs it took. */
  public int runs() {
    return runs;
  }

  /** What is read on average at a point if nothing is wrong [°C]. */
  public double expected(int point) {
    return mean[point];
  }

  /** How far that scatters: its standard deviation [K]. */
  public double spread(int point) {
    return Math.sqrt(covariance[point][point]);
  }

  double covariance(int one, int other) {
    return covariance[one][other];
  }

  /**
   * What a fault adds to a reading [K].
   *
   * @param fault its position
   * @param level how bad it is, 0 to 3
   * @param point which reading
   */
  double move(int fault, double level, int point) {
    double[][] at = moves[fault];
    return between(level, at[0][point], at[1][point], at[2][point]);
  }

  /**
   * By what share a fault moves the heat of the room that it moves most [-], below 0 for less heat.
   *
   * @param fault its position
   * @param level how bad it is, 0 to 3
   */
  public double heatMove(int fault, double level) {
    double[] at = heatMoves[fault];
    return between(level, at[0], at[1], at[2]);
  }

  /** A branch of the room whose heat a fault moves most. */
  public int movedBranch(int fault) {
    return movedBranch[fault];
  }

  /** The cubic through 0 at level 0 and values at levels 1, 2 and 3. */
  private static double between(double x, double one, double two, double three) {
    return one * x * (2 - x) * (3 - x) / 2
        - two * x * (1 - x) * (3 - x) / 2
        + three * x * (1 - x) * (2 - x) / 6;
  }
}
