package settle.sim.atrest;

import settle.sim.emitter.EmitterStepper;
import settle.sim.house.Branch;
import settle.sim.hydraulics.BranchFlow;
import settle.sim.hydraulics.Loops;
import settle.sim.hydraulics.Pipe;
import settle.sim.model.HouseModel;
import settle.sim.room.SteadyRooms;
import settle.sim.valve.Valve;

/**
 * One branch at a time, all others staying as they are: its emitter, its pipe and its valve brought
 * into agreement with the room they warm, each as a root of a falling function.
 */
final class BranchAtRest {

  /**
   * Agreement asked of emitter and room [W]. An actuator at its set-point opens from shut to open
   * for some tenths of a watt; with less agreement its flow would never come to rest.
   */
  private static final double HEAT_AGREEMENT = 1e-6;

  /** Agreement asked of a valve with where it would stand, as a share of K_vs [-]. */
  private static final double KV_AGREEMENT = 1e-9;

  /** That of a head in a room that stays as it is [m³/h at 1 bar]. */
  private static final double LONE_KV_AGREEMENT = 1e-12;

  private static final Pipe NONE = Pipe.withoutDelay("none", 1, 0, 0, 0);

  // Model
  private final HouseModel model;
  private final SteadyRooms rooms;
  private final EmitterStepper[] emitters;
  private final BranchFlow[] flows;
  private final PipesAtRest pipes;
  private final Loops loops;
  private final double capacityPerFlow;

  // State
  private final RestState state;
  private final double[] heat;

  // The branch being solved: its room without it, and what its heats do to that
  private int branch;
  private Valve valve;
  private Pipe pipe;
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

  // Scratch
  private final RootSearch search = new RootSearch();
  private final RootSearch inner = new RootSearch();

  BranchAtRest(HouseModel model, SteadyRooms rooms, PipesAtRest pipes, RestState state) {
    this.model = model;
    this.rooms = rooms;
    this.pipes = pipes;
    loops = model.arrangement().loops();
    this.state = state;
    heat = state.heat;
    emitters = model.emitterSteppers(20);
    flows = model.branchFlows();
    capacityPerFlow = model.house().water().specificHeat();
  }

  /** Largest opening of a branch's valve [m³/h at 1 bar]. */
  double kvMaximum(int b) {
    return model.arrangement().branches().get(b).valve().kvMaximum();
  }

  /** What is asked for the heats. */
  EmitterStepper[] emitters() {
    return emitters;
  }

  /** Whether a branch's valve follows its room. */
  boolean moves(int b) {
    return model.arrangement().branches().get(b).valve().hasHead()
        && Double.isNaN(state.heldAt[b])
        && kvMaximum(b) > 0;
  }

  /**
   * Solves a branch: the K_v that its valve chooses once it is set to it, and with that the heats
   * of its emitter and its pipe.
   *
   * @param b which
   * @param water temperature at which water enters its pipe [°C]
   */
  void solve(int b, double water) {
    begin(b, water);
    double set = moves(b) ? chosen(state.kv[b]) : heldOpen(b);
    pass(set);
    state.kv[b] = set;
    state.massFlow[b] = state.flowShare * flows[b].solve(set, state.pressure[b]);
    finish();
  }

  /**
   * Solves a branch whose valve stays as it is set.
   *
   * @return by how much its heat moved [W]
   */
  double solveSet(int b, double water) {
    double was = heat[b];
    begin(b, water);
    state.massFlow[b] = pass(state.kv[b]);
    finish();
    return Math.abs(heat[b] - was);
  }

  /** What a branch's valve lacks as it stands in the room as it is, if it moves [K]. */
  double lacks(int b, double water) {
    look(b, water);
    flows[b].solve(state.kv[b], state.pressure[b]);
    return moves(b) ? valve.lacking(state.kv[b], at(state.massFlow[b])) : 0;
  }

  /** Opens a branch's valve as it stands in the room as it is; what its emitter then gives [W]. */
  double emission(int b, double water) {
    look(b, water);
    state.kv[b] = valve.feelsItsWater() ? feelingItsWater() : valve.kvAtRest(at(0, 0, 0));
    double massFlow = state.flowShare * flows[b].solve(state.kv[b], state.pressure[b]);
    state.massFlow[b] = massFlow;
    return state.duty * emitters[b].atRest(massFlow * capacityPerFlow, inlet(massFlow), felt());
  }

  private void take(int b, double water) {
    Branch now = model.arrangement().branches().get(b);
    branch = b;
    valve = now.valve();
    // In a loop others' water passes the pipe too: it stays as it is while the branch is solved.
    boolean looped = loops.has(b);
    pipe = looped ? NONE : now.pipe();
    entering = looped ? pipes.inlet(b) : water;
    // While all heats are there: the emitter warms the room next door too.
    int in = model.pipeRoom(b);
    aroundElse = pipes.around(b, in >= 0 ? rooms.air(in, heat) : 0);
  }

  /** Takes a branch in the room as it is. */
  private void look(int b, double water) {
    take(b, water);
    int r = model.branchRoom(b);
    pipeInput = -1;
    airThere = rooms.air(r, heat);
    starThere = rooms.star(r, heat);
  }

  /** Takes a branch and its heats out of its room. */
  private void begin(int b, double water) {
    take(b, water);
    int r = model.branchRoom(b);
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

  private void finish() {
    heat[branch] = emitterHeat;
    if (pipeInput >= 0) {
      pipes.branchHeat[branch] = pipeHeat;
      heat[pipeInput] += pipeHeat;
    }
  }

  /** K_v of a valve that follows nothing. */
  double heldOpen(int b) {
    return Double.isNaN(state.heldAt[b]) ? kvMaximum(b) : state.heldAt[b];
  }

  /**
   * K_v that the valve chooses once it is set to it. The further open, the warmer room and head and
   * the less the valve would open: there is one.
   */
  private double chosen(double set) {
    double most = valve.kvMaximum();
    double now = unset(set);
    double agreement = KV_AGREEMENT * most;
    if (Math.abs(now) <= agreement) {
      return set;
    }
    double low = now > 0 ? set : 0;
    double high = now > 0 ? most : set;
    double other = unset(now > 0 ? high : low);
    search.from(
        set + now / 2 > low && set + now / 2 < high ? set + now / 2 : (low + high) / 2,
        this::unset,
        low,
        now > 0 ? now : other,
        high,
        now > 0 ? other : now,
        agreement,
        agreement);
    return search.root();
  }

  /** By how much the valve would open further than it is set [m³/h at 1 bar]. */
  private double unset(double k) {
    return valve.kvAtRest(at(pass(k))) - k;
  }

  /**
   * K_v at which a head that feels its water rests in a room that stays as it is. The further open,
   * the more water flows, the hotter it arrives at the head and the less that head would open; the
   * pressure across the valve, which moves the set-point a little, falls too. So there is one K_v
   * that the head would choose if it were set, sought by one root for all of these together.
   */
  private double feelingItsWater() {
    double chosenShut = felt(0);
    if (chosenShut <= 0) {
      return 0;
    }
    double open = valve.kvMaximum();
    double chosenOpen = felt(open);
    if (chosenOpen >= open) {
      return open;
    }
    search.from(
        (chosenOpen + Math.min(chosenShut, open)) / 2,
        k -> felt(k) - k,
        0,
        chosenShut,
        open,
        chosenOpen - open,
        1e-14,
        LONE_KV_AGREEMENT);
    return search.root();
  }

  /** K_v that the head chooses there where the valve is set to another one [m³/h at 1 bar]. */
  private double felt(double k) {
    return valve.kvAtRest(at(flows[branch].solve(k, state.pressure[branch])));
  }

  /** Where the valve is with the flow that it was last solved for [kg/s]. */
  private Valve.AtRest at(double massFlow) {
    return at(massFlow, flows[branch].valveDrop(), inlet(massFlow));
  }

  private Valve.AtRest at(double massFlow, double drop, double inlet) {
    return new Valve.AtRest(
        airThere,
        starThere,
        massFlow,
        drop,
        inlet,
        state.playOf(branch),
        state.duty,
        state.switchesAt[branch]);
  }

  /** Temperature at which water enters the emitter [°C]. */
  private double inlet(double massFlow) {
    return pipes.cooled(pipe, massFlow, entering, aroundThere());
  }

  /** Temperature about the pipe, its own room warmed by it [°C]. */
  private double aroundThere() {
    return pipeInput >= 0 ? airThere : aroundElse;
  }

  /** Temperature that the emitter refers to [°C]. */
  private double felt() {
    double f = model.radiantFraction(branch);
    return f * starThere + (1 - f) * airThere;
  }

  /** Finds the heats at a K_v; returns the flow [kg/s]. */
  private double pass(double k) {
    double massFlow = state.flowShare * flows[branch].solve(k, state.pressure[branch]);
    double capacityFlow = massFlow * capacityPerFlow;
    if (capacityFlow == 0) {
      emitterHeat = 0;
      warmed(0, 0, 0);
      return 0;
    }
    double left = pipes.cooled(pipe, massFlow, 1, 0);
    double now = surplus(emitterHeat, capacityFlow, left);
    if (Math.abs(now) > HEAT_AGREEMENT) {
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
          HEAT_AGREEMENT);
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
    double around = aroundThere();
    double inlet = around + (entering - around) * left;
    return state.duty * emitters[branch].atRest(capacityFlow, inlet, felt()) - q;
  }

  /**
   * The room with a heat of the emitter and what the pipe then gives. Of flow and return, each
   * leaving the share e of the excess over the air, p = (1 - e)(m c (1 + e)(T - T_a) - q), and the
   * air follows p in turn.
   */
  private void warmed(double q, double capacityFlow, double left) {
    double had = rooms.kept(branch, q);
    double air = airFree + airPerHeat * had;
    pipeHeat = 0;
    if (pipeInput >= 0 && left < 1 && capacityFlow > 0) {
      double perKelvin = state.duty * capacityFlow * (1 + left);
      pipeHeat =
          (1 - left)
              * (perKelvin * (entering - air) - q)
              / (1 + (1 - left) * perKelvin * airPerPipe);
    }
    airThere = air + airPerPipe * pipeHeat;
    starThere = starFree + starPerHeat * had + starPerPipe * pipeHeat;
  }
}
