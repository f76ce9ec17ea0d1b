package settle.sim.atrest;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import settle.sim.emitter.EmitterStepper;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.BranchFlow;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.model.HouseModel;
import settle.sim.room.SteadyRooms;
import settle.sim.valve.RoomSensing;

/**
 * Rooms, emitters, valves, pipes and flows at rest on water of one temperature: swept branch by
 * branch, each emitter brought into agreement with its room as a root of a falling function, then
 * pressures and pipes, until none moves.
 */
final class RestSweep {

  /**
   * Agreement asked of each emitter's heat from one sweep to the next [W]: some 1e-5 K of a room.
   */
  static final double HEAT_AGREEMENT = 0.01;

  /**
   * Agreement asked of emitter and room within a sweep [W]. An actuator at its set-point opens from
   * shut to open for some tenths of a watt; with less agreement its flow would never come to rest.
   */
  private static final double BRANCH_AGREEMENT = 1e-6;

  /** Agreement asked of a valve with where it would stand, as a share of K_vs [-]. */
  private static final double KV_AGREEMENT = 1e-9;

  /** Agreement asked of the pressure at each branch, as a share of the pump's head [-]. */
  private static final double PRESSURE_AGREEMENT = 1e-7;

  private static final int MOST_SWEEPS = 40;

  /** Sweeps that are taken as they come: most houses need no more. */
  private static final int PLAIN_SWEEPS = 12;

  private static final int MOST_ROUNDS = 40;

  private static final int HALVINGS = 6;

  /** Agreement asked of each valve where all are found at once [K]. */
  private static final double LACKING_AGREEMENT = 1e-5;

  /** Agreement asked of heats then [W]: small against that in any room. */
  private static final double HEAT_AGREEMENT_BY_OPENINGS = 1e-5;

  /** By how much a nearly shut valve is opened to see what that changes [-]. */
  private static final double NUDGE = 1e-5;

  /** Least slope taken for what a valve lacks over its opening [K]. */
  private static final double LEAST_SLOPE = 1e-3;

  /** Heat that counts as much as a pressure of the whole head where sweeps are sped up [W]. */
  private static final double HEAT_PER_HEAD = 10_000;

  private static final int REMEMBERED = 6;

  private final HouseModel model;
  private final SteadyRooms rooms;
  private final EmitterStepper[] emitters;
  private final BranchFlow[] flows;
  private final double capacityPerFlow;
  private final RootSearch search = new RootSearch();
  private final RootSearch inner = new RootSearch();
  private final Anderson anderson;

  final NetworkFlow network;
  final PipesAtRest pipes;
  final ValvesAtRest valves;

  /** Heat inputs of the rooms: of each branch's emitter, then of pipes [W]. */
  final double[] heat;

  final double[] kv;
  final double[] massFlow;

  /** How far above its set-point an actuator holds its room [K]. */
  final double[] switchesAt;

  /** K_v at which a valve is held whatever its room does; not a number where it is not. */
  final double[] heldAt;

  private double flowShare = 1;

  private final double[] pressure;

  // One round
  private final double[] before;
  private final double[] after;

  private final double pressureScale;
  private double moved;

  RestSweep(HouseModel model, SteadyRooms rooms) {
    this.model = model;
    this.rooms = rooms;
    House house = model.house();
    emitters = model.emitterSteppers(20);
    flows = model.branchFlows();
    network = model.networkFlow();
    int branches = emitters.length;
    heat = new double[model.heatInputs()];
    kv = new double[branches];
    pressure = new double[branches];
    massFlow = new double[branches];
    switchesAt = new double[branches];
    heldAt = new double[branches];
    Arrays.fill(heldAt, Double.NaN);
    pipes = new PipesAtRest(model, network);
    valves = new ValvesAtRest(pipes);
    capacityPerFlow = house.water().specificHeat();
    before = new double[heat.length + branches];
    after = new double[before.length];
    anderson = new Anderson(before.length, REMEMBERED);
    for (int b = 0; b < branches; b++) {
      kv[b] = model.arrangement().branches().get(b).valve().kvMaximum();
    }
    network.solve(kv, true);
    for (int b = 0; b < branches; b++) {
      pressure[b] = network.branchPressure(b);
    }
    pressureScale = HEAT_PER_HEAD / Math.max(network.head(), 1);
  }

  /**
   * Lets a share of the flow go round all the time, instead of all of it for a share of the time.
   *
   * @param share [-]; 1 as it is
   */
  void carry(double share) {
    flowShare = share;
    pipes.carry(share);
  }

  /** Heats and pressures, to come back to. */
  double[] kept() {
    double[] copy = new double[before.length];
    keep(copy);
    return copy;
  }

  /** Comes back to heats and pressures once {@link #kept}. */
  void comeBack(double[] kept) {
    take(kept);
  }

  private void keep(double[] x) {
    System.arraycopy(heat, 0, x, 0, heat.length);
    for (int b = 0; b < pressure.length; b++) {
      x[heat.length + b] = pressure[b] * pressureScale;
    }
  }

  private void take(double[] x) {
    System.arraycopy(x, 0, heat, 0, heat.length);
    for (int b = 0; b < pressure.length; b++) {
      pressure[b] = Math.max(x[heat.length + b] / pressureScale, 0);
    }
  }

  /**
   * Sweeps until nothing moves.
   *
   * @param flow temperature of the water that goes into the mains [°C]
   * @return heat the water takes [W]
   */
  double at(double flow) {
    double total = swept(flow);
    if (!found()) {
      total = byOpenings(flow);
    }
    return total;
  }

  /**
   * Finds all openings at once, where sweeping goes to and fro: a trickle through mains and pipe
   * that warm the room which shuts the valve, two heads that share a room. Newton's method on what
   * each valve lacks in kelvin, openings kept between shut and open; given the openings, flows
   * follow exactly and heats without trouble.
   */
  private double byOpenings(double flow) {
    int n = kv.length;
    double[] x = new double[n];
    for (int b = 0; b < n; b++) {
      double most = kvMaximum(b);
      x[b] = most > 0 && (moves(b) || !Double.isNaN(heldAt[b])) ? kv[b] / most : 1;
    }
    double[] lacks = new double[n];
    double total = lacking(flow, x, lacks);
    double worst = worst(x, lacks);
    for (int round = 0; round < MOST_ROUNDS && worst > LACKING_AGREEMENT; round++) {
      double[] step = newtonStep(flow, x, lacks);
      double[] tried = new double[n];
      double[] triedLacks = new double[n];
      double share = 1;
      double better = worst;
      for (int k = 0; k < HALVINGS; k++, share /= 2) {
        for (int b = 0; b < n; b++) {
          tried[b] = Math.min(Math.max(x[b] + share * step[b], 0), 1);
        }
        total = lacking(flow, tried, triedLacks);
        better = worst(tried, triedLacks);
        if (better < worst * (1 - share / 4)) {
          break;
        }
      }
      x = tried;
      lacks = triedLacks;
      worst = better;
    }
    moved = worst <= LACKING_AGREEMENT ? 0 : worst / LACKING_AGREEMENT * HEAT_AGREEMENT;
    return total;
  }

  private double kvMaximum(int b) {
    return model.arrangement().branches().get(b).valve().kvMaximum();
  }

  /** Whether a branch's valve follows its room. */
  private boolean moves(int b) {
    return model.arrangement().branches().get(b).valve().hasHead()
        && Double.isNaN(heldAt[b])
        && kvMaximum(b) > 0;
  }

  /** What the worst valve lacks, one that rests shut or open and should counting nothing [K]. */
  private double worst(double[] x, double[] lacks) {
    double worst = 0;
    for (int b = 0; b < x.length; b++) {
      boolean held = (x[b] == 0 && lacks[b] <= 0) || (x[b] == 1 && lacks[b] >= 0);
      worst = held ? worst : Math.max(worst, Math.abs(lacks[b]));
    }
    return worst;
  }

  private double[] newtonStep(double flow, double[] x, double[] lacks) {
    int n = x.length;
    int[] free = new int[n];
    int count = 0;
    for (int b = 0; b < n; b++) {
      boolean held = (x[b] == 0 && lacks[b] <= 0) || (x[b] == 1 && lacks[b] >= 0);
      if (moves(b) && !held) {
        free[count++] = b;
      }
    }
    double[][] slopes = new double[count][count];
    double[] nudged = x.clone();
    double[] there = new double[n];
    for (int j = 0; j < count; j++) {
      double nudge = Math.max(NUDGE, NUDGE * 100 * x[free[j]]);
      nudge = x[free[j]] + nudge > 1 ? -nudge : nudge;
      nudged[free[j]] = x[free[j]] + nudge;
      lacking(flow, nudged, there);
      for (int i = 0; i < count; i++) {
        slopes[i][j] = (there[free[i]] - lacks[free[i]]) / nudge;
      }
      nudged[free[j]] = x[free[j]];
    }
    double[] step = new double[n];
    double[] right = new double[count];
    for (int i = 0; i < count; i++) {
      right[i] = -lacks[free[i]];
      // A valve that hardly answers, its flow being nothing or all there is, must not stop the
      // rest.
      slopes[i][i] -= LEAST_SLOPE;
    }
    DecompositionSolver solver =
        new LUDecomposition(new Array2DRowRealMatrix(slopes, false), 0).getSolver();
    if (count > 0 && solver.isNonSingular()) {
      double[] found = solver.solve(new ArrayRealVector(right, false)).toArray();
      for (int i = 0; i < count; i++) {
        step[free[i]] = found[i];
      }
    }
    return step;
  }

  /**
   * Sets all valves and finds flows, heats and what each valve lacks; returns the whole heat [W].
   */
  private double lacking(double flow, double[] x, double[] lacks) {
    for (int b = 0; b < x.length; b++) {
      kv[b] = x[b] * kvMaximum(b);
    }
    network.solve(kv, true);
    for (int b = 0; b < x.length; b++) {
      pressure[b] = network.branchPressure(b);
    }
    double total = 0;
    for (int k = 0; k < MOST_SWEEPS; k++) {
      pipes.outwards(flow, this::air);
      moved = 0;
      for (int b = 0; b < x.length; b++) {
        double was = heat[b];
        begin(b, pipes.arriving(b));
        massFlow[b] = pass(kv[b]);
        finish();
        moved = Math.max(moved, Math.abs(heat[b] - was));
      }
      total = valves.duty * pipes.back(massFlow, heat, valves.duty, this::air) + emitted();
      moved = Math.max(moved, pipes.give(heat, 1));
      if (moved < HEAT_AGREEMENT_BY_OPENINGS) {
        break;
      }
    }
    for (int b = 0; b < x.length; b++) {
      Branch at = model.arrangement().branches().get(b);
      int r = model.branchRoom(b);
      double air = rooms.air(r, heat);
      double inlet = pipes.cooled(at.pipe(), massFlow[b], pipes.arriving(b), around(b));
      flows[b].solve(kv[b], pressure[b]);
      lacks[b] =
          moves(b)
              ? at.valve()
                  .lacking(
                      kv[b],
                      valves.at(
                          air,
                          rooms.star(r, heat),
                          massFlow[b],
                          flows[b].valveDrop(),
                          inlet,
                          switchesAt[b]))
              : 0;
    }
    return total;
  }

  private double swept(double flow) {
    double total = 0;
    anderson.begin();
    moved = Double.POSITIVE_INFINITY;
    for (int k = 0; k < MOST_SWEEPS; k++) {
      boolean sped = k >= PLAIN_SWEEPS;
      if (sped) {
        keep(before);
      }
      double share = 1;
      total = sweep(flow, share);
      if (moved < HEAT_AGREEMENT) {
        break;
      }
      if (sped) {
        keep(after);
        anderson.go(before, after);
        take(before);
      }
    }
    return total;
  }

  /** One sweep; {@link #moved} is then what moved most. */
  private double sweep(double flow, double share) {
    moved = 0;
    pipes.outwards(flow, this::air);
    for (int b = 0; b < emitters.length; b++) {
      double was = heat[b];
      solveBranch(b, pipes.arriving(b));
      double change = heat[b] - was;
      heat[b] = was + share * change;
      moved = Math.max(moved, Math.abs(change));
    }
    network.solve(kv, true);
    double strained = 0;
    for (int b = 0; b < emitters.length; b++) {
      double change = network.branchPressure(b) - pressure[b];
      pressure[b] += share * change;
      strained = Math.max(strained, Math.abs(change));
    }
    double total = valves.duty * pipes.back(massFlow, heat, valves.duty, this::air) + emitted();
    moved = Math.max(moved, pipes.give(heat, share));
    if (strained > PRESSURE_AGREEMENT * network.head()) {
      moved = Math.max(moved, HEAT_AGREEMENT);
    }
    return total;
  }

  /** Whether the last sweeps ended with nothing that moves. */
  boolean found() {
    return moved < HEAT_AGREEMENT;
  }

  /** What still moved in the last sweep [W]. */
  double moved() {
    return moved;
  }

  private double emitted() {
    double sum = 0;
    for (int b = 0; b < emitters.length; b++) {
      sum += heat[b];
    }
    return sum;
  }

  double air(int room) {
    return rooms.air(room, heat);
  }

  double operative(int room) {
    return (rooms.air(room, heat) + rooms.star(room, heat)) / 2;
  }

  /** What an electric valve of a branch feels there [°C]. */
  double felt(int branch, RoomSensing sensing) {
    int r = model.branchRoom(branch);
    return sensing.of(rooms.air(r, heat), rooms.star(r, heat));
  }

  /** The house with pump and source at rest: no heat but what comes without them. */
  void withoutWater() {
    Arrays.fill(heat, 0);
    Arrays.fill(massFlow, 0);
    moved = 0;
  }

  /**
   * Solves one branch, everything else staying as it is: the K_v that its valve chooses once it is
   * set to it, and with that the heats of its emitter and its pipe. The further open, the warmer
   * room and head and the less the valve would open: there is one.
   */
  private void solveBranch(int b, double water) {
    Branch branch = model.arrangement().branches().get(b);
    begin(b, water);
    double most = branch.valve().kvMaximum();
    double set = kv[b];
    if (!Double.isNaN(heldAt[b])) {
      set = heldAt[b];
    } else if (!branch.valve().hasHead() || most == 0) {
      set = most;
    } else {
      double now = unset(branch, set);
      double agreement = KV_AGREEMENT * most;
      if (Math.abs(now) > agreement) {
        double low = now > 0 ? set : 0;
        double high = now > 0 ? most : set;
        double other = unset(branch, now > 0 ? high : low);
        search.from(
            set + now / 2 > low && set + now / 2 < high ? set + now / 2 : (low + high) / 2,
            k -> unset(branch, k),
            low,
            now > 0 ? now : other,
            high,
            now > 0 ? other : now,
            agreement,
            agreement);
        set = search.root();
      }
    }
    pass(set);
    kv[b] = set;
    massFlow[b] = flowShare * flows[b].solve(set, pressure[b]);
    finish();
  }

  // The branch being solved: its room without it, and what its heats do to that

  private int branch;
  private int pipeInput;
  private double entering;
  private double airFree;
  private double starFree;

  /** Temperature about its pipe where that runs elsewhere [°C]. */
  private double aroundElse;

  private double airPerHeat;
  private double starPerHeat;
  private double airPerPipe;
  private double starPerPipe;

  // As it stands at the K_v last tried
  private double emitterHeat;
  private double pipeHeat;
  private double airThere;
  private double starThere;

  private void begin(int b, double water) {
    branch = b;
    entering = water;
    // While all heats are there: the emitter warms the room next door too.
    aroundElse = around(b);
    int r = model.branchRoom(b);
    Pipe pipe = model.arrangement().branches().get(b).pipe();
    boolean inRoom = pipe.delays() && model.pipeRoom(b) == r;
    pipeInput = inRoom ? model.pipeHeatInput(r) : -1;
    emitterHeat = heat[b];
    heat[b] = 0;
    airPerHeat = rooms.airPer(b, r);
    starPerHeat = rooms.starPer(b, r);
    airPerPipe = 0;
    starPerPipe = 0;
    if (pipeInput >= 0) {
      heat[pipeInput] -= pipes.branchHeat[b];
      airPerPipe = rooms.airPer(pipeInput, r);
      starPerPipe = rooms.starPer(pipeInput, r);
    }
    airFree = rooms.air(r, heat);
    starFree = rooms.star(r, heat);
  }

  /** Temperature about a branch's pipe as rooms are [°C]. */
  private double around(int b) {
    int in = model.pipeRoom(b);
    return pipes.around(b, in >= 0 ? rooms.air(in, heat) : 0);
  }

  /** Temperature about the pipe of the branch being solved, its own room warmed by it [°C]. */
  private double aroundThere() {
    return pipeInput >= 0 ? airThere : aroundElse;
  }

  private void finish() {
    heat[branch] = emitterHeat;
    if (pipeInput >= 0) {
      pipes.branchHeat[branch] = pipeHeat;
      heat[pipeInput] += pipeHeat;
    }
  }

  /** By how much the valve would open further than it is set [m³/h at 1 bar]. */
  private double unset(Branch what, double k) {
    double massFlow = pass(k);
    double inlet = pipes.cooled(what.pipe(), massFlow, entering, aroundThere());
    return what.valve()
            .kvAtRest(
                valves.at(
                    airThere,
                    starThere,
                    massFlow,
                    flows[branch].valveDrop(),
                    inlet,
                    switchesAt[branch]))
        - k;
  }

  /** Finds the heats at a K_v; returns the flow [kg/s]. */
  private double pass(double k) {
    double massFlow = flowShare * flows[branch].solve(k, pressure[branch]);
    double capacityFlow = massFlow * capacityPerFlow;
    if (capacityFlow == 0) {
      emitterHeat = 0;
      warmed(0, 0, 0);
      return 0;
    }
    double left = pipes.cooled(model.arrangement().branches().get(branch).pipe(), massFlow, 1, 0);
    double now = surplus(emitterHeat, capacityFlow, left);
    if (Math.abs(now) > BRANCH_AGREEMENT) {
      // The surplus falls at least as fast as the heat rises, so the root is no further than it is.
      double was = emitterHeat;
      double other = surplus(was + now, capacityFlow, left);
      inner.from(
          was + now / 2,
          q -> surplus(q, capacityFlow, left),
          was,
          now,
          was + now,
          other,
          1e-9,
          BRANCH_AGREEMENT);
      emitterHeat = inner.root();
    }
    warmed(emitterHeat, capacityFlow, left);
    return massFlow;
  }

  /**
   * What the emitter would give more than a heat in a room that this heat warms, on average [W].
   *
   * @param q the heat [W]
   * @param capacityFlow m c of its water [W/K]
   * @param left of the water's excess over the room, what one of its pair of pipes leaves [-]
   */
  private double surplus(double q, double capacityFlow, double left) {
    warmed(q, capacityFlow, left);
    double f = model.radiantFraction(branch);
    double reference = f * starThere + (1 - f) * airThere;
    double around = aroundThere();
    double inlet = around + (entering - around) * left;
    return valves.duty * emitters[branch].atRest(capacityFlow, inlet, reference) - q;
  }

  /**
   * The room with a heat of the emitter and what the pipe then gives. Of flow and return, each
   * leaving the share e of the excess over the air, p = (1 - e)(m c (1 + e)(T - T_a) - q), and the
   * air follows p in turn.
   */
  private void warmed(double q, double capacityFlow, double left) {
    double air = airFree + airPerHeat * q;
    pipeHeat = 0;
    if (pipeInput >= 0 && left < 1 && capacityFlow > 0) {
      double perKelvin = valves.duty * capacityFlow * (1 + left);
      pipeHeat =
          (1 - left)
              * (perKelvin * (entering - air) - q)
              / (1 + (1 - left) * perKelvin * airPerPipe);
    }
    airThere = air + airPerPipe * pipeHeat;
    starThere = starFree + starPerHeat * q + starPerPipe * pipeHeat;
  }

  /** Opens a branch's valve as it stands in the room as it is; what its emitter then gives [W]. */
  private double emission(int b, double water) {
    Branch at = model.arrangement().branches().get(b);
    int r = model.branchRoom(b);
    double air = rooms.air(r, heat);
    double star = rooms.star(r, heat);
    double f = model.radiantFraction(b);
    double around = around(b);
    kv[b] = valves.kv(at, flows[b], pressure[b], water, around, air, star, switchesAt[b]);
    massFlow[b] = flowShare * flows[b].solve(kv[b], pressure[b]);
    double inlet = pipes.cooled(at.pipe(), massFlow[b], water, around);
    double reference = f * star + (1 - f) * air;
    return valves.duty * emitters[b].atRest(massFlow[b] * capacityPerFlow, inlet, reference);
  }

  /** Operative temperature of a branch's room were its emitter to give such a heat [W] [°C]. */
  double operativeWith(int branch, double watts) {
    double settled = heat[branch];
    heat[branch] = watts;
    double there = operative(model.branchRoom(branch));
    heat[branch] = settled;
    return there;
  }

  /** What a branch's emitter would give in a room warmed by such a heat [W]. */
  double heatOffered(int branch, double watts) {
    double settled = heat[branch];
    heat[branch] = watts;
    double offered = emission(branch, pipes.arriving(branch));
    heat[branch] = settled;
    emission(branch, pipes.arriving(branch));
    return offered;
  }
}
