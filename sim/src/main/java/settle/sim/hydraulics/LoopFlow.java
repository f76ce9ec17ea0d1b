package settle.sim.hydraulics;

import java.util.List;
import settle.sim.hydraulics.NetworkFlow.Leaf;

/**
 * Pressure that one loop takes at a flow, and how it rises: pipes, valves and emitters one after
 * the other.
 *
 * <pre>
 *   P(m) = sum of p_k(m) + p_e(m_k),   p_e(m_k) = p_b(m - m_k) where emitter k has a by-pass b
 * </pre>
 *
 * <p>Pressures rise with their flow, so that there is one m_k between none and all of m; it is
 * found by Newton's method between bounds. What all is to the loop, dP/dm, follows from both
 * slopes: 1/(1/p_e' + 1/p_b').
 */
public final class LoopFlow {

  private static final int MOST_STEPS = 80;

  /** Change of an emitter's flow, as a share of it, below which it is found [-]. */
  private static final double LAST_CHANGE = 1e-14;

  /** More than a loop of a house carries [kg/s]. */
  private static final double MOST_FLOW = 100;

  /** Accuracy that a flow has at least once it counts as found, as a share of it [-]. */
  private static final double FOUND_WITHIN = 1e-9;

  // Model
  private final int[] members;
  private final PipeResistance[] pipe;
  private final PipeResistance[] within;
  private final PipeResistance[] byPass;
  private final double[] lockshieldResistance;
  private final double density;

  // Last solution
  private final double[] valveResistance;
  private final double[] flow;
  private double drop;
  private double slope;

  /** How each emitter's flow rises with the loop's [-]; less than all where there is a by-pass. */
  private final double[] perLoop;

  /** How its flow rises with a pressure that its own valve takes less [kg/(s Pa)]. */
  private final double[] perPressure;

  private final double[] circuitDrop;
  private final double[] pipeDrop;

  // Scratch
  private double circuit;
  private double circuitSlope;

  /**
   * @param members positions of its branches, as the water passes them
   * @param leaves all branches
   * @param density of the water [kg/m³]
   * @param viscosity dynamic viscosity of the water [Pa s]
   */
  public LoopFlow(int[] members, List<? extends Leaf> leaves, double density, double viscosity) {
    this.members = members;
    this.density = density;
    int n = members.length;
    pipe = new PipeResistance[n];
    within = new PipeResistance[n];
    byPass = new PipeResistance[n];
    lockshieldResistance = new double[n];
    for (int k = 0; k < n; k++) {
      Leaf leaf = leaves.get(members[k]);
      pipe[k] = new PipeResistance(leaf.pipe(), density, viscosity);
      within[k] = leaf.within().map(p -> new PipeResistance(p, density, viscosity)).orElse(null);
      byPass[k] =
          leaf.loop().byPass().map(p -> new PipeResistance(p, density, viscosity)).orElse(null);
      lockshieldResistance[k] = resistance(leaf.lockshield().kv());
    }
    valveResistance = new double[n];
    flow = new double[n];
    perLoop = new double[n];
    perPressure = new double[n];
    circuitDrop = new double[n];
    pipeDrop = new double[n];
  }

  /** Of each branch its loop, null where it is in none; itself null where there are no loops. */
  static LoopFlow[] all(
      Loops loops, List<? extends Leaf> leaves, double density, double viscosity) {
    if (!loops.any()) {
      return null;
    }
    LoopFlow[] all = new LoopFlow[leaves.size()];
    for (int b = 0; b < all.length; b++) {
      if (loops.has(b) && loops.after(b) < 0) {
        LoopFlow loop = new LoopFlow(loops.members(b), leaves, density, viscosity);
        for (int member : loops.members(b)) {
          all[member] = loop;
        }
      }
    }
    return all;
  }

  private double resistance(double kv) {
    return kv == 0 ? Double.POSITIVE_INFINITY : FlowCoefficient.pressureDrop(1, kv, density);
  }

  /**
   * Sets its valves.
   *
   * @param kv of every branch [m³/h at 1 bar]; not modified
   * @return whether water can flow
   */
  public boolean set(double[] kv) {
    boolean open = true;
    for (int k = 0; k < members.length; k++) {
      valveResistance[k] = resistance(kv[members[k]]) + lockshieldResistance[k];
      open &= byPass[k] != null || valveResistance[k] < Double.POSITIVE_INFINITY;
    }
    return open;
  }

  /** No water flows. */
  void rest() {
    for (int k = 0; k < members.length; k++) {
      flow[k] = 0;
      circuitDrop[k] = 0;
      pipeDrop[k] = 0;
      perLoop[k] = 0;
      perPressure[k] = 0;
    }
    drop = 0;
  }

  /**
   * Works out pressure and slope, to be read from {@link #drop()} and {@link #slope()}.
   *
   * @param m mass flow of the loop [kg/s], > 0
   */
  public void at(double m) {
    drop = 0;
    slope = 0;
    for (int k = 0; k < members.length; k++) {
      pipe[k].at(m);
      pipeDrop[k] = pipe[k].drop();
      if (byPass[k] == null) {
        pass(k, m);
        flow[k] = m;
        perLoop[k] = 1;
        perPressure[k] = 0;
        slope += circuitSlope;
      } else {
        share(k, m);
      }
      circuitDrop[k] = circuit;
      drop += pipe[k].drop() + circuit;
      slope += pipe[k].slope();
    }
  }

  /**
   * Flow of the loop under a pressure, its valves as they were set [kg/s].
   *
   * @param pressure where it begins and ends [Pa]
   */
  public double under(double pressure) {
    double least = 0;
    double most = MOST_FLOW;
    while (most - least > FOUND_WITHIN * most) {
      double m = (least + most) / 2;
      at(m);
      if (drop > pressure) {
        most = m;
      } else {
        least = m;
      }
    }
    return least;
  }

  /** Emitter, valve and lockshield at a flow. */
  private void pass(int k, double m) {
    circuit = valveResistance[k] * m * m;
    circuitSlope = 2 * valveResistance[k] * m;
    if (within[k] != null) {
      within[k].at(m);
      circuit += within[k].drop();
      circuitSlope += within[k].slope();
    }
  }

  /** Finds what part of the water passes the emitter. */
  private void share(int k, double m) {
    byPass[k].at(m);
    // The valves alone would let no more pass, all of the by-pass' pressure on them.
    double most = Math.min(Math.sqrt(byPass[k].drop() / valveResistance[k]), m);
    if (most == 0) {
      flow[k] = 0;
      circuit = byPass[k].drop();
      slope += byPass[k].slope();
      perLoop[k] = 0;
      perPressure[k] = 0;
      return;
    }
    flow[k] = sought(k, m, most);
    double both = circuitSlope + byPass[k].slope();
    perLoop[k] = byPass[k].slope() / both;
    perPressure[k] = 1 / both;
    slope += circuitSlope * perLoop[k];
  }

  /**
   * Where emitter and by-pass take the same pressure, both at which are left as they are there.
   *
   * @param m mass flow of the loop [kg/s]
   * @param highest flow that the emitter cannot exceed [kg/s]
   */
  private double sought(int k, double m, double highest) {
    double most = highest;
    double least = 0;
    double x = flow[k] > 0 && flow[k] < most ? flow[k] : most;
    double change = x;
    for (int i = 0; i < MOST_STEPS; i++) {
      pass(k, x);
      byPass[k].at(m - x);
      double excess = circuit - byPass[k].drop();
      if (excess > 0) {
        most = x;
      } else {
        least = x;
      }
      double to = x - excess / (circuitSlope + byPass[k].slope());
      change = Math.abs(to - x);
      if (change <= LAST_CHANGE * x) {
        break;
      }
      x = to > least && to < most ? to : (least + most) / 2;
    }
    if (change > FOUND_WITHIN * x) {
      throw new ArithmeticException(
          "no share of " + m + " kg/s found that passes an emitter beside its by-pass");
    }
    return x;
  }

  /** Pressure at the last flow asked for [Pa]. */
  public double drop() {
    return drop;
  }

  /** Its rise with the flow [Pa s/kg]. */
  double slope() {
    return slope;
  }

  private int place(int branch) {
    int k = 0;
    while (members[k] != branch) {
      k++;
    }
    return k;
  }

  /** Mass flow through the emitter of one of its branches [kg/s]. */
  public double flow(int branch) {
    return flow[place(branch)];
  }

  /**
   * By how much less pressure the loop takes where one of its valves takes so much less [Pa/Pa].
   */
  double perLoop(int branch) {
    return perLoop[place(branch)];
  }

  /** How an emitter's flow rises with a pressure that its valve takes less [kg/(s Pa)]. */
  double perPressure(int branch) {
    return perPressure[place(branch)];
  }

  /** Whether an emitter has a by-pass. */
  boolean isPassedBy(int branch) {
    return byPass[place(branch)] != null;
  }

  /**
   * Pressure over emitter, valve and lockshield of one of its branches, of one without a by-pass
   * over its pipe too [Pa]: where that one alone stops the loop, all there is.
   *
   * @param all pressure where the loop begins and ends [Pa]
   */
  double pressureOver(int branch, double all) {
    int k = place(branch);
    if (byPass[k] != null || drop > 0) {
      return byPass[k] != null ? circuitDrop[k] : circuitDrop[k] + pipeDrop[k];
    }
    boolean alone = valveResistance[k] == Double.POSITIVE_INFINITY;
    for (int j = 0; j < members.length; j++) {
      alone &= j == k || byPass[j] != null || valveResistance[j] < Double.POSITIVE_INFINITY;
    }
    return alone ? all : 0;
  }
}
