package settle.sim.atrest;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import settle.sim.hydraulics.NetworkFlow;

/**
 * Finds all openings at once, where sweeping goes to and fro: a trickle through mains and pipe that
 * warm the room which shuts the valve, two heads that share a room. Newton's method on what each
 * valve lacks in kelvin, openings kept between shut and open; given the openings, flows follow
 * exactly and heats without trouble.
 */
final class OpeningsAtRest {

  private static final int MOST_ROUNDS = 40;

  private static final int HALVINGS = 6;

  private static final int MOST_SWEEPS = 40;

  /** Agreement asked of each valve [K]. */
  private static final double LACKING_AGREEMENT = 1e-5;

  /** Agreement asked of heats [W]: small against that in any room. */
  private static final double HEAT_AGREEMENT = 1e-5;

  /** By how much a nearly shut valve is opened to see what that changes [-]. */
  private static final double NUDGE = 1e-5;

  /** Least slope taken for what a valve lacks over its opening [K]. */
  private static final double LEAST_SLOPE = 1e-3;

  private final NetworkFlow network;
  private final PipesAtRest pipes;
  private final BranchAtRest branch;
  private final RestState state;

  private double flow;
  private double total;
  private double worst;

  OpeningsAtRest(NetworkFlow network, PipesAtRest pipes, BranchAtRest branch, RestState state) {
    this.network = network;
    this.pipes = pipes;
    this.branch = branch;
    this.state = state;
  }

  /**
   * Finds them.
   *
   * @param flow temperature of the water that goes into the mains [°C]
   * @return heat the water takes [W]
   */
  double find(double flow) {
    this.flow = flow;
    double[] x = begun();
    double[] lacks = new double[x.length];
    lacking(x, lacks);
    worst = worst(x, lacks);
    for (int round = 0; round < MOST_ROUNDS && worst > LACKING_AGREEMENT; round++) {
      double[] step = newtonStep(x, lacks);
      double[] tried = new double[x.length];
      double[] triedLacks = new double[x.length];
      double share = 1;
      double better = worst;
      for (int k = 0; k < HALVINGS; k++, share /= 2) {
        for (int b = 0; b < x.length; b++) {
          tried[b] = Math.min(Math.max(x[b] + share * step[b], 0), 1);
        }
        lacking(tried, triedLacks);
        better = worst(tried, triedLacks);
        if (better < worst * (1 - share / 4)) {
          break;
        }
      }
      x = tried;
      lacks = triedLacks;
      worst = better;
    }
    return total;
  }

  /** How far the worst valve is from agreement, in times of what is asked; 0 where all agree. */
  double off() {
    return worst <= LACKING_AGREEMENT ? 0 : worst / LACKING_AGREEMENT;
  }

  /** Openings as they stand, K_v/K_vs [-]. */
  private double[] begun() {
    double[] x = new double[state.kv.length];
    for (int b = 0; b < x.length; b++) {
      double most = branch.kvMaximum(b);
      boolean follows = branch.moves(b) || !Double.isNaN(state.heldAt[b]);
      x[b] = most > 0 && follows ? state.kv[b] / most : 1;
    }
    return x;
  }

  /** Whether a valve rests shut or open and should: it counts nothing. */
  private static boolean atAnEnd(double x, double lacks) {
    return (x == 0 && lacks <= 0) || (x == 1 && lacks >= 0);
  }

  /** What the worst valve lacks [K]. */
  private static double worst(double[] x, double[] lacks) {
    double worst = 0;
    for (int b = 0; b < x.length; b++) {
      worst = atAnEnd(x[b], lacks[b]) ? worst : Math.max(worst, Math.abs(lacks[b]));
    }
    return worst;
  }

  /** Step of all openings that are free to move: J dx = -lacks. */
  private double[] newtonStep(double[] x, double[] lacks) {
    int[] free = new int[x.length];
    int count = 0;
    for (int b = 0; b < x.length; b++) {
      if (branch.moves(b) && !atAnEnd(x[b], lacks[b])) {
        free[count++] = b;
      }
    }
    double[] step = new double[x.length];
    DecompositionSolver solver =
        new LUDecomposition(new Array2DRowRealMatrix(slopes(x, lacks, free, count), false), 0)
            .getSolver();
    if (count > 0 && solver.isNonSingular()) {
      double[] right = new double[count];
      for (int i = 0; i < count; i++) {
        right[i] = -lacks[free[i]];
      }
      double[] found = solver.solve(new ArrayRealVector(right, false)).toArray();
      for (int i = 0; i < count; i++) {
        step[free[i]] = found[i];
      }
    }
    return step;
  }

  /** J: what each free valve lacks more as each of them is nudged [K]. */
  private double[][] slopes(double[] x, double[] lacks, int[] free, int count) {
    double[][] slopes = new double[count][count];
    double[] nudged = x.clone();
    double[] there = new double[x.length];
    for (int j = 0; j < count; j++) {
      double nudge = Math.max(NUDGE, NUDGE * 100 * x[free[j]]);
      nudge = x[free[j]] + nudge > 1 ? -nudge : nudge;
      nudged[free[j]] = x[free[j]] + nudge;
      double before = total;
      lacking(nudged, there);
      total = before;
      for (int i = 0; i < count; i++) {
        slopes[i][j] = (there[free[i]] - lacks[free[i]]) / nudge;
      }
      nudged[free[j]] = x[free[j]];
    }
    for (int i = 0; i < count; i++) {
      // A valve that hardly answers, its flow being nothing or all there is, must not stop the
      // rest.
      slopes[i][i] -= LEAST_SLOPE;
    }
    return slopes;
  }

  /** Sets all valves and finds flows, heats and what each valve lacks. */
  private void lacking(double[] x, double[] lacks) {
    for (int b = 0; b < x.length; b++) {
      state.kv[b] = x[b] * branch.kvMaximum(b);
    }
    network.solve(state.kv, true);
    for (int b = 0; b < x.length; b++) {
      state.pressure[b] = network.pressureOver(b);
    }
    settleHeats();
    for (int b = 0; b < x.length; b++) {
      lacks[b] = branch.lacks(b, pipes.arriving(b));
    }
  }

  /** Sweeps over emitters and pipes until none moves, valves as they are set. */
  private void settleHeats() {
    total = 0;
    for (int k = 0; k < MOST_SWEEPS; k++) {
      pipes.outwards(flow);
      double moved = 0;
      for (int b = 0; b < state.kv.length; b++) {
        moved = Math.max(moved, branch.solveSet(b, pipes.arriving(b)));
      }
      total = state.duty * pipes.back() + state.emitted();
      if (Math.max(moved, pipes.give()) < HEAT_AGREEMENT) {
        break;
      }
    }
  }
}
