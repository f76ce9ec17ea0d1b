package settle.sim.atrest;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Loops;
import settle.sim.model.HouseModel;
import settle.sim.room.SteadyRooms;

/**
 * What each branch has to carry in design weather: the heat that holds every heated room at its
 * want, without sun and other gains, and the flow that brings it with the design drop.
 *
 * <p>Rooms without an emitter settle where they will. Emitters of one room share its heat as their
 * rated outputs; one that is shut takes no share where another can.
 */
public final class DesignFlows {

  /**
   * Least heat a branch is laid out for, as a share of its rated output [-]: a room warmed by its
   * neighbours still needs water to warm up.
   */
  private static final double LEAST_SHARE = 0.05;

  private final double[] load;
  private final double[] heat;
  private final double[] flow;
  private final Loops loops;

  /**
   * @param model the prepared house
   */
  public DesignFlows(HouseModel model) {
    this(model, model.house().designOutdoor());
  }

  /**
   * Works them out for other weather than design weather.
   *
   * @param model the prepared house
   * @param outdoor outdoor temperature [°C]
   */
  public DesignFlows(HouseModel model, double outdoor) {
    House house = model.house();
    List<Branch> branches = model.arrangement().branches();
    int rooms = house.rooms().size();
    double[] none = new double[rooms];
    SteadyRooms steady = new SteadyRooms(model.steadyResponse(), outdoor, none, none);
    boolean[] shut = model.arrangement().shut();
    double[] had = loads(model, shut, steady);
    load = new double[rooms];
    heat = new double[branches.size()];
    flow = new double[branches.size()];
    loops = model.arrangement().loops();
    double perFlow = house.water().specificHeat() * house.distribution().designDrop();
    for (int b = 0; b < heat.length; b++) {
      Branch branch = branches.get(b);
      double least = LEAST_SHARE * branch.emitter().ratedOutput();
      double given = steady.heatFor(b, had[model.branchRoom(b)] * share(model, shut, b));
      load[model.branchRoom(b)] += given;
      heat[b] = Math.max(given, least);
      flow[b] = branch.designFlow().orElse(heat[b] / perFlow);
    }
    joinLoops(model.arrangement(), shut, perFlow);
  }

  /** One flow brings the heat of all emitters of a loop, with the design drop over all of it. */
  private void joinLoops(Arrangement arrangement, boolean[] shut, double perFlow) {
    for (int b = 0; loops.any() && b < flow.length; b++) {
      if (loops.has(b) && loops.after(b) < 0) {
        double sum = 0;
        for (int member : loops.members(b)) {
          sum += shut[member] ? 0 : heat[member];
        }
        double given = sum > 0 ? sum : heat[b];
        double round = arrangement.branches().get(b).designFlow().orElse(given / perFlow);
        for (int member : loops.members(b)) {
          flow[member] = round;
        }
      }
    }
  }

  /** Share of its room's heat that a branch's emitter is to give [-]. */
  private static double share(HouseModel model, boolean[] shut, int branch) {
    List<Branch> branches = model.arrangement().branches();
    double all = 0;
    double open = 0;
    for (int b = 0; b < branches.size(); b++) {
      if (model.branchRoom(b) == model.branchRoom(branch)) {
        double rated = branches.get(b).emitter().ratedOutput();
        all += rated;
        open += shut[b] ? 0 : rated;
      }
    }
    double own = branches.get(branch).emitter().ratedOutput();
    if (open == 0) {
      return own / all;
    }
    return shut[branch] ? 0 : own / open;
  }

  /**
   * Heat each room has to have of its emitters [W], what they lose behind them left out; 0 for a
   * room that has none.
   */
  private static double[] loads(HouseModel model, boolean[] shut, SteadyRooms steady) {
    House house = model.house();
    List<Branch> branches = model.arrangement().branches();
    int rooms = house.rooms().size();
    double[] none = new double[model.heatInputs()];
    int[] heated = model.heatedRooms();
    int n = heated.length;
    double[][] rise = new double[n][n];
    double[] lacking = new double[n];
    for (int i = 0; i < n; i++) {
      int r = heated[i];
      lacking[i] = house.rooms().get(r).want().maximum() - operative(steady, r, none);
    }
    for (int j = 0; j < n; j++) {
      for (int b = 0; b < branches.size(); b++) {
        if (model.branchRoom(b) == heated[j]) {
          for (int i = 0; i < n; i++) {
            double per = steady.airPer(b, heated[i]) + steady.starPer(b, heated[i]);
            rise[i][j] += share(model, shut, b) * per / 2;
          }
        }
      }
    }
    RealVector solved =
        new LUDecomposition(new Array2DRowRealMatrix(rise, false))
            .getSolver()
            .solve(new ArrayRealVector(lacking, false));
    double[] load = new double[rooms];
    for (int i = 0; i < n; i++) {
      load[heated[i]] = solved.getEntry(i);
    }
    return load;
  }

  private static double operative(SteadyRooms steady, int room, double[] heats) {
    return (steady.air(room, heats) + steady.star(room, heats)) / 2;
  }

  /**
   * Heat a room needs from its emitters [W]; 0 for a room that has none, below 0 for one that its
   * neighbours keep too warm.
   */
  public double load(int room) {
    return load[room];
  }

  /** Heat a branch's emitter has to give [W]. */
  double heat(int branch) {
    return heat[branch];
  }

  /** Flow of a branch, of one in a loop that round it [kg/s]. */
  double flow(int branch) {
    return flow[branch];
  }

  /** Flow of all branches together, that of a loop counted once [kg/s]. */
  public double total() {
    double sum = 0;
    for (int b = 0; b < flow.length; b++) {
      sum += loops.after(b) < 0 ? flow[b] : 0;
    }
    return sum;
  }
}
