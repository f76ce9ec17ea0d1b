package settle.sim.hydraulics;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Flows and pressures of a tree of mains with its branches, bypass and pump.
 *
 * <p>Unknown are the flows m of the branches; those of the mains are sums of them, so that mass is
 * balanced at every node by construction. With h the pressure each part takes at its flow and H the
 * pump's head, every branch must satisfy
 *
 * <pre>
 *   H(M) = sum of h_j(M_j) over the mains on its way + h(m)
 * </pre>
 *
 * <p>Solved by Newton's method. Since the network is a tree, its linear system is solved exactly by
 * one sweep from the leaves to the source, in which the flow into each pair of mains comes out as a
 * linear function of the pressure at its beginning, and one back; the cost rises in proportion to
 * the number of parts. Pressures rise with the flow, more than in proportion, so the method
 * converges from any flows above 0. The bypass is one more leaf, once the pressure at its place is
 * above its set pressure.
 *
 * <p>A loop that passes several emitters is one leaf ({@link LoopFlow}): its flow stands at the
 * first of its branches, and none at the others.
 */
public final class NetworkFlow {

  private static final int SOURCE = 0;
  private static final int MOST_ROUNDS = 200;

  /** Rounds after which steps are halved, should they go to and fro about a kink of a curve. */
  private static final int PATIENCE = 20;

  /**
   * Relative change of a flow below which a round is the last; the method being quadratic, the
   * error left is of the order of its square.
   */
  private static final double LAST_CHANGE = 1e-8;

  /** That change [-] where steps are halved or a rise of the head is not followed. */
  private static final double LAST_SLOW_CHANGE = 1e-12;

  /** Agreement asked of a head found by bisection, as a share of it [-]. */
  private static final double HEAD_AGREEMENT = 1e-12;

  /**
   * A head that rises with the flow is followed only while the flow it causes is less than this
   * share of its cause [-]; near a solution it is a quarter at most.
   */
  private static final double STEEPEST_RISE = 0.5;

  /** Least flow a change is measured against, and a newly opened branch begins with [kg/s]. */
  static final double LEAST_FLOW = 1e-6;

  // Model: node 0 is the source, node i + 1 the end of mains i
  private final Pump pump;
  private final BypassFlow bypass;
  private final int bypassNode;
  private final double density;
  private final int branches;
  private final int mains;
  private final int[] branchNode;
  private final int[] parent;
  private final PipeResistance[] branchPipe;
  private final PipeResistance[] mainPipe;
  private final double[] lockshieldKv;

  /** The loop each branch is in, null for one in none; itself null where there are no loops. */
  private final LoopFlow[] loop;

  private final int[] first;

  // Last solution
  private final double[] kv;
  private boolean pumping;
  private final double[] flow;
  private final double[] nodeFlow;
  private final double[] pressure;
  private int rounds;

  /** Head held while it is found by bisection [Pa]; not a number otherwise. */
  private double heldHead = Double.NaN;

  // Scratch of a round: the change of flow into a node is gain P - offset
  private final double[] gain;
  private final double[] offset;
  private final double[] valveResistance;
  private final double[] branchDrop;
  private final double[] branchSlope;

  // How they answer to one valve
  private final double[] flowRise;

  private final double[] leafRise;
  private final double[] nodeFlowRise;
  private final double[] pressureRise;

  /** What a branch needs of the network. */
  public interface Leaf {

    /** Its pipe, flow and return. */
    Pipe pipe();

    /** What its water passes beside pipe and valves, as a pipe. */
    default Optional<Pipe> within() {
      return Optional.empty();
    }

    /** Its lockshield. */
    Lockshield lockshield();

    /** Name of the mains it begins at; null at the source. */
    String fedFrom();

    /** Where it stands in a loop. */
    default InLoop loop() {
      return InLoop.NONE;
    }
  }

  /**
   * @param pump the circulator
   * @param mains the tree, each after the one it is fed from
   * @param bypass automatic bypass; null if there is none
   * @param leaves the branches
   * @param density of the water [kg/m³]
   * @param viscosity dynamic viscosity of the water [Pa s]
   */
  public NetworkFlow(
      Pump pump,
      List<Main> mains,
      Bypass bypass,
      List<? extends Leaf> leaves,
      double density,
      double viscosity) {
    this.pump = pump;
    this.bypass = new BypassFlow(bypass, density);
    this.density = density;
    this.mains = mains.size();
    branches = leaves.size();
    List<String> names = mains.stream().map(Main::name).toList();
    bypassNode = bypass == null ? SOURCE : node(names, bypass.fedFrom());
    parent = new int[this.mains + 1];
    mainPipe = resistances(mains, density, viscosity);
    for (int i = 0; i < this.mains; i++) {
      parent[i + 1] = node(names, mains.get(i).fedFrom());
    }
    branchNode = new int[branches];
    branchPipe = new PipeResistance[branches];
    lockshieldKv = new double[branches];
    for (int b = 0; b < branches; b++) {
      Leaf leaf = leaves.get(b);
      branchNode[b] = node(names, leaf.fedFrom());
      branchPipe[b] = new PipeResistance(leaf.pipe(), leaf.within(), density, viscosity);
      lockshieldKv[b] = leaf.lockshield().kv();
    }
    Loops loops = new Loops(leaves);
    first = loops.firsts();
    loop = LoopFlow.all(loops, leaves, density, viscosity);
    kv = notYetSet(branches);
    flow = new double[branches];
    valveResistance = new double[branches];
    branchDrop = new double[branches];
    branchSlope = new double[branches];
    nodeFlow = new double[this.mains + 1];
    pressure = new double[this.mains + 1];
    gain = new double[this.mains + 1];
    offset = new double[this.mains + 1];
    flowRise = new double[branches];
    leafRise = new double[branches];
    nodeFlowRise = new double[this.mains + 1];
    pressureRise = new double[this.mains + 1];
  }

  private static PipeResistance[] resistances(List<Main> mains, double density, double viscosity) {
    PipeResistance[] all = new PipeResistance[mains.size() + 1];
    for (int i = 0; i < mains.size(); i++) {
      all[i + 1] = new PipeResistance(mains.get(i).pipe(), density, viscosity);
    }
    return all;
  }

  private static double[] notYetSet(int valves) {
    double[] kv = new double[valves];
    Arrays.fill(kv, Double.NaN);
    return kv;
  }

  private static int node(List<String> names, String fedFrom) {
    if (fedFrom == null) {
      return SOURCE;
    }
    int index = names.indexOf(fedFrom);
    if (index < 0) {
      throw new IllegalArgumentException("no mains are called '" + fedFrom + "'");
    }
    return index + 1;
  }

  /**
   * Solves for all flows and pressures.
   *
   * @param valveKv flow coefficient of each branch's valve [m³/h at 1 bar]; not modified
   * @param on whether the pump runs; a resting pump passes nothing
   * @throws ArithmeticException if no solution is found, which no network of this kind should cause
   */
  public void solve(double[] valveKv, boolean on) {
    if (on == pumping && Arrays.equals(valveKv, kv)) {
      return;
    }
    System.arraycopy(valveKv, 0, kv, 0, branches);
    pumping = on;
    rounds = 0;
    if (!on) {
      rest();
      return;
    }
    begin();
    heldHead = Double.NaN;
    if (!converge()) {
      holdHead();
    }
    settleLoops();
  }

  /** Lets each loop be as at the flow that was found. */
  private void settleLoops() {
    for (int b = 0; loop != null && b < branches; b++) {
      if (flow[b] > 0 && isInLoop(b)) {
        loop[b].at(flow[b]);
      }
    }
  }

  /**
   * Goes on until flows stay and the bypass is as its pressure says; false if that takes too long.
   */
  private boolean converge() {
    int begun = rounds;
    do {
      while (!round()) {
        if (++rounds - begun > MOST_ROUNDS) {
          return false;
        }
      }
    } while (bypassOpens());
    return true;
  }

  /**
   * For a head that rises with the flow while a bypass opens, where each drives the other: the head
   * is held and found by bisection, h = H(M(h)).
   */
  private void holdHead() {
    double low = 0;
    double high = pump.mostHead();
    while (high - low > HEAD_AGREEMENT * high) {
      heldHead = (low + high) / 2;
      if (!converge()) {
        throw new ArithmeticException("no flows found for the pipe network");
      }
      if (pump.head(nodeFlow[SOURCE], density) > heldHead) {
        low = heldHead;
      } else {
        high = heldHead;
      }
    }
  }

  /** Opens the bypass where the pressure found is above its set pressure. */
  private boolean bypassOpens() {
    boolean opens = bypass.opens(pressure[bypassNode]);
    if (opens) {
      sumFlows();
    }
    return opens;
  }

  private void rest() {
    Arrays.fill(flow, 0);
    Arrays.fill(nodeFlow, 0);
    Arrays.fill(pressure, 0);
    bypass.shut();
    for (int b = 0; loop != null && b < branches; b++) {
      if (loop[b] != null) {
        loop[b].rest();
      }
    }
  }

  /** Resistances of valves, and a flow above 0 in every open branch. */
  private void begin() {
    for (int b = 0; b < branches; b++) {
      if (isInLoop(b)) {
        beginLoop(b);
        continue;
      }
      double series = FlowCoefficient.series(kv[b], lockshieldKv[b]);
      if (series == 0) {
        flow[b] = 0;
        valveResistance[b] = Double.POSITIVE_INFINITY;
      } else {
        valveResistance[b] = FlowCoefficient.pressureDrop(1, series, density);
        flow[b] = Math.max(flow[b], LEAST_FLOW);
      }
    }
    sumFlows();
  }

  private boolean isInLoop(int b) {
    return loop != null && loop[b] != null;
  }

  private void beginLoop(int b) {
    if (first[b] != b) {
      return;
    }
    if (loop[b].set(kv)) {
      flow[b] = Math.max(flow[b], LEAST_FLOW);
    } else {
      flow[b] = 0;
      loop[b].rest();
    }
  }

  private void sumFlows() {
    Arrays.fill(nodeFlow, 0);
    for (int b = 0; b < branches; b++) {
      nodeFlow[branchNode[b]] += flow[b];
    }
    nodeFlow[bypassNode] += bypass.flow();
    for (int i = mains; i > 0; i--) {
      nodeFlow[parent[i]] += nodeFlow[i];
    }
  }

  /**
   * One round of Newton's method; true if it was the last.
   *
   * <p>Branch: P = h + h' d, so d = (P - h)/h'. Mains: P_end = P - h - h' D with D = gain P_end -
   * offset, so D = (gain (P - h) - offset)/(1 + gain h'). Source: P = H + H' D.
   */
  private boolean round() {
    gatherLeaves();
    gatherMains();
    boolean held = !Double.isNaN(heldHead);
    double head = held ? heldHead : pump.head(nodeFlow[SOURCE], density);
    double fall = held ? 0 : pump.slope(nodeFlow[SOURCE], density);
    boolean whole = fall * gain[SOURCE] <= STEEPEST_RISE;
    if (!whole) {
      fall = 0;
    }
    pressure[SOURCE] = (head - fall * offset[SOURCE]) / (1 - fall * gain[SOURCE]);
    for (int i = 1; i <= mains; i++) {
      double before = pressure[parent[i]];
      double slope = mainPipe[i].slope();
      double change = (gain[i] * (before - mainPipe[i].drop()) - offset[i]) / (1 + gain[i] * slope);
      pressure[i] = before - mainPipe[i].drop() - slope * change;
    }
    return follow(whole && rounds < PATIENCE);
  }

  /** Branches and bypass: d = (P - h)/h'. */
  private void gatherLeaves() {
    Arrays.fill(gain, 0);
    Arrays.fill(offset, 0);
    for (int b = 0; b < branches; b++) {
      if (flow[b] > 0) {
        if (isInLoop(b)) {
          gatherLoop(b);
          continue;
        }
        branchPipe[b].at(flow[b]);
        branchDrop[b] = branchPipe[b].drop() + valveResistance[b] * flow[b] * flow[b];
        branchSlope[b] = branchPipe[b].slope() + 2 * valveResistance[b] * flow[b];
        gain[branchNode[b]] += 1 / branchSlope[b];
        offset[branchNode[b]] += branchDrop[b] / branchSlope[b];
      }
    }
    if (bypass.flow() > 0) {
      bypass.look();
      gain[bypassNode] += 1 / bypass.slope();
      offset[bypassNode] += bypass.drop() / bypass.slope();
    }
  }

  private void gatherLoop(int b) {
    loop[b].at(flow[b]);
    branchDrop[b] = loop[b].drop();
    branchSlope[b] = loop[b].slope();
    gain[branchNode[b]] += 1 / branchSlope[b];
    offset[branchNode[b]] += branchDrop[b] / branchSlope[b];
  }

  /** Mains, from the leaves to the source: D = (gain (P - h) - offset)/(1 + gain h'). */
  private void gatherMains() {
    for (int i = mains; i > 0; i--) {
      mainPipe[i].at(nodeFlow[i]);
      double stiff = 1 + gain[i] * mainPipe[i].slope();
      gain[parent[i]] += gain[i] / stiff;
      offset[parent[i]] += (gain[i] * mainPipe[i].drop() + offset[i]) / stiff;
    }
  }

  /**
   * Lets flows follow the pressures just found.
   *
   * @param quadratic whether the round was one of Newton's in full
   */
  private boolean follow(boolean quadratic) {
    double share = rounds < PATIENCE ? 1 : 0.5;
    double least = quadratic ? LAST_CHANGE : LAST_SLOW_CHANGE;
    boolean last = true;
    for (int b = 0; b < branches; b++) {
      if (flow[b] > 0) {
        double change = (pressure[branchNode[b]] - branchDrop[b]) / branchSlope[b];
        last &= Math.abs(change) <= least * flow[b] + rounding(branchDrop[b]) / branchSlope[b];
        // Never to 0 or below: the pressure a part takes says nothing there.
        flow[b] = Math.max(flow[b] + share * change, flow[b] / 10);
      }
    }
    if (bypass.flow() > 0) {
      last &= bypass.follow(pressure[bypassNode], share, least);
    }
    sumFlows();
    return last;
  }

  /**
   * By how much a pressure can be off for being a number of so many digits [Pa]: a bypass that has
   * just opened follows that by more of its flow than is asked for.
   */
  static double rounding(double pressure) {
    return 2 * Math.ulp(pressure);
  }

  /**
   * Works out how flows and pressures answer to the valve of one branch, as they were last solved;
   * to be read from {@link #flowRise}, {@link #mainFlowRise}, {@link #bypassFlowRise} and {@link
   * #pressureRise}. The linear system is that of a round, whose only cause is that the branch takes
   * less pressure: -2 p_v/K_v at the flow there is.
   *
   * @param branch whose valve is opened; not one that is shut
   */
  public void respondTo(int branch) {
    int leaf = first[branch];
    boolean flows = flow(branch) > 0;
    double own = flows ? -2 * valveDrop(branch) / kv[branch] : 0;
    double less = isInLoop(branch) ? own * loop[branch].perLoop(branch) : own;
    double cause = flows ? less / branchSlope[leaf] : 0;
    Arrays.fill(offset, 0);
    for (int i = branchNode[branch]; i != SOURCE; i = parent[i]) {
      offset[i] = cause;
      cause /= 1 + gain[i] * mainPipe[i].slope();
    }
    offset[SOURCE] = cause;
    double fall = pump.slope(nodeFlow[SOURCE], density);
    boolean followed = Double.isNaN(heldHead) && fall * gain[SOURCE] <= STEEPEST_RISE;
    pressureRise[SOURCE] = followed ? -fall * offset[SOURCE] / (1 - fall * gain[SOURCE]) : 0;
    for (int i = 1; i <= mains; i++) {
      double before = pressureRise[parent[i]];
      double slope = mainPipe[i].slope();
      nodeFlowRise[i] = (gain[i] * before - offset[i]) / (1 + gain[i] * slope);
      pressureRise[i] = before - slope * nodeFlowRise[i];
    }
    for (int b = 0; b < branches; b++) {
      double cheaper = b == leaf ? less : 0;
      leafRise[b] = flow[b] > 0 ? (pressureRise[branchNode[b]] - cheaper) / branchSlope[b] : 0;
    }
    for (int b = 0; b < branches; b++) {
      flowRise[b] = leafRise[b];
      if (isInLoop(b)) {
        double beside = b == branch ? own * loop[b].perPressure(b) : 0;
        flowRise[b] = leafRise[first[b]] * loop[b].perLoop(b) - beside;
      }
    }
  }

  /** How the flow of a branch rises with the K_v that {@link #respondTo} opened [kg/s per m³/h]. */
  public double flowRise(int branch) {
    return flowRise[branch];
  }

  /** How the flow round a branch's loop does; that of the branch where it is in none. */
  public double loopFlowRise(int branch) {
    return leafRise[first[branch]];
  }

  /** How that of mains does. */
  public double mainFlowRise(int main) {
    return nodeFlowRise[main + 1];
  }

  /** How that of the bypass does. */
  public double bypassFlowRise() {
    return bypass.flow() > 0 ? pressureRise[bypassNode] / bypass.slope() : 0;
  }

  /** How the pressure where a branch is connected does [Pa per m³/h]. */
  public double pressureRise(int branch) {
    return pressureRise[branchNode[branch]];
  }

  /** Mass flow through a branch's valve and emitter [kg/s]. */
  public double flow(int branch) {
    if (!isInLoop(branch)) {
      return flow[branch];
    }
    double round = flow[first[branch]];
    return loop[branch].isPassedBy(branch) ? loop[branch].flow(branch) : round;
  }

  /**
   * Mass flow through its pipe, which is that round its loop [kg/s]; the same as {@link #flow}
   * where nothing passes the emitter by.
   */
  public double loopFlow(int branch) {
    return flow[first[branch]];
  }

  /** Mass flow through mains [kg/s]. */
  public double mainFlow(int main) {
    return nodeFlow[main + 1];
  }

  /** Mass flow through the pump, bypass counted [kg/s]. */
  public double totalFlow() {
    return nodeFlow[SOURCE];
  }

  /** Mass flow through the bypass [kg/s]. */
  public double bypassFlow() {
    return bypass.flow();
  }

  /** Differential pressure over the pump [Pa]; 0 while it rests. */
  public double head() {
    return pressure[SOURCE];
  }

  /** Differential pressure at the end of mains [Pa]. */
  public double mainPressure(int main) {
    return pressure[main + 1];
  }

  /** Differential pressure where a branch is connected [Pa]. */
  public double branchPressure(int branch) {
    return pressure[branchNode[branch]];
  }

  /**
   * Differential pressure between the ends of a branch [Pa]: where it is connected, of one in a
   * loop what the others leave it, of one with a by-pass what that takes.
   */
  public double pressureOver(int branch) {
    double all = pressure[branchNode[branch]];
    return isInLoop(branch) ? loop[branch].pressureOver(branch, all) : all;
  }

  /** Differential pressure across a branch's valve [Pa]; all there is where the valve is shut. */
  public double valveDrop(int branch) {
    if (kv[branch] == 0) {
      return pressureOver(branch);
    }
    return FlowCoefficient.pressureDrop(flow(branch), kv[branch], density);
  }

  /**
   * By what share a branch's flow follows the opening of a valve of its loop, the pressure where
   * the loop begins staying as it is [-].
   *
   * @param branch which, in a loop
   * @param valve the branch, in the same loop, whose valve opens
   */
  public double follows(int branch, int valve) {
    LoopFlow of = loop[branch];
    double m = flow(branch);
    if (!(m > 0) || kv[valve] == 0) {
      return 0;
    }
    double less = 2 * valveDrop(valve);
    double round = less * of.perLoop(valve) / branchSlope[first[branch]];
    double beside = branch == valve ? less * of.perPressure(branch) : 0;
    return (of.perLoop(branch) * round + beside) / m;
  }

  /** Rounds that the last solution took. */
  public int rounds() {
    return rounds;
  }
}
