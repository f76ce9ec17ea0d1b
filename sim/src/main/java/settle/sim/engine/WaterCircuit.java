package settle.sim.engine;

import settle.sim.emitter.EmitterStepper;
import settle.sim.house.Branch;
import settle.sim.house.Distribution;
import settle.sim.house.House;
import settle.sim.hydraulics.Loops;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipeWater;
import settle.sim.model.HouseModel;
import settle.sim.room.RoomStepper;
import settle.sim.valve.ValveStepper;

/**
 * The water of a run from the source's outlet back to its inlet: flows, and what becomes of the
 * temperature on the way through mains, branch pipes and emitters.
 *
 * <p>Water goes one way, so one pass along the tree outwards and one back finds every temperature;
 * where streams meet they mix in proportion to their flows. Pipes give their heat to the room they
 * lie in, or lose it.
 *
 * <p>A pass is made with a reference temperature for each heat input of the rooms; what the rooms
 * answer to its heats says how good those were.
 */
final class WaterCircuit {

  /** Difference of temperatures [K], or share of a flow, that rounding may leave. */
  private static final double ROUNDING = 1e-9;

  // Model: node 0 is the source, node i + 1 the end of mains i
  private final HouseModel model;
  private final double specificHeat;
  private final int[] parent;
  private final int[] branchNode;
  private final int bypassNode;

  /** In which order water passes the emitters. */
  private final Loops loops;

  // State
  private NetworkFlow network;
  private final EmitterStepper[] emitters;
  private final PipePair[] mains;
  private final PipePair[] branches;
  private double returnTemperature;
  private double keptReturnTemperature;

  /** How fast the water that comes back gets warmer [K/s], and the length of the last step [s]. */
  private double returnRise;

  private double lastLength;

  private final double[] heatNow;
  private final double[] heatRise;

  // Attempt: temperatures at every node, what each emitter takes in and gives
  private final References references;
  private final double[] reference;
  private final double[] heat;
  private final double[] arriving;
  private final double[] returning;
  private final double[] inlet;
  private final double[] passing;

  /** Temperature of the water that goes on from each emitter of a loop to the next [°C]. */
  private final double[] goingOn;

  private final double[] pipeHeat;
  private double outsideLoss;
  private boolean linksAgree;

  // With what each emitter was tried last since the last accepted step; not a number: not yet
  private final double[] triedLength;
  private final double[] triedFlow;
  private final double[] triedInlet;
  private final double[] triedReference;

  /**
   * @param model the prepared house
   * @param start temperature of all water [°C]
   * @param parcels differences up to which water is mixed or joined, as a share of what is usual
   *     [-]
   */
  WaterCircuit(HouseModel model, double start, double parcels) {
    this.model = model;
    House house = model.house();
    Distribution pipes = house.distribution();
    specificHeat = house.water().specificHeat();
    network = model.networkFlow();
    emitters = model.emitterSteppers(start, parcels);
    mains = new PipePair[pipes.mains().size()];
    parent = new int[mains.length + 1];
    for (int i = 0; i < mains.length; i++) {
      Main main = pipes.mains().get(i);
      parent[i + 1] = pipes.mainIndex(main.fedFrom()) + 1;
      mains[i] = pair(main, start, parcels);
    }
    branches = new PipePair[emitters.length];
    branchNode = new int[branches.length];
    for (int b = 0; b < branches.length; b++) {
      Branch branch = model.arrangement().branches().get(b);
      branchNode[b] = pipes.mainIndex(branch.fedFrom()) + 1;
      branches[b] = pair(b, branch, start, parcels);
    }
    bypassNode = pipes.bypass().map(bypass -> pipes.mainIndex(bypass.fedFrom()) + 1).orElse(0);
    loops = model.arrangement().loops();
    references = new References(model, emitters);
    reference = references.reference;
    heat = references.heat;
    arriving = new double[parent.length];
    returning = new double[parent.length];
    inlet = new double[branches.length];
    passing = new double[branches.length];
    goingOn = new double[branches.length];
    pipeHeat = new double[house.rooms().size()];
    triedLength = new double[branches.length];
    heatNow = new double[branches.length];
    heatRise = new double[branches.length];
    triedFlow = new double[branches.length];
    triedInlet = new double[branches.length];
    triedReference = new double[branches.length];
    returnTemperature = start;
  }

  private PipePair pair(Main main, double start, double parcels) {
    int room = main.room() == null ? -1 : model.house().roomIndex(main.room());
    return pair(main.pipe(), room, main.surroundings(), start, parcels);
  }

  private PipePair pair(int b, Branch branch, double start, double parcels) {
    return pair(branch.pipe(), model.pipeRoom(b), model.pipeSurroundings(b), start, parcels);
  }

  private PipePair pair(Pipe pipe, int room, double surroundings, double start, double parcels) {
    int input = room >= 0 ? model.pipeHeatInput(room) : -1;
    return new PipePair(pipe, room, input, surroundings, start, parcels);
  }

  /** Lets the water run through another network: the same pipes, its pump set otherwise. */
  void runThrough(NetworkFlow other) {
    network = other;
  }

  /**
   * Finds all flows for the valves' mean openings [m³/h at 1 bar], and how they rise and fall: a
   * flow follows its valve by the share of the pressure that the valve takes.
   */
  void flows(double[] kv, ValveStepper valves, boolean pumping) {
    network.solve(kv, pumping);
    for (int b = 0; b < emitters.length; b++) {
      double pressure = network.branchPressure(b);
      double authority = pressure > 0 ? network.valveDrop(b) / pressure : 0;
      emitters[b].flowEndsAbove(authority * valves.endsAbove(b));
    }
    if (loops.any()) {
      loopsFollow(valves);
    }
  }

  /** The flow of a loop follows all of its valves. */
  private void loopsFollow(ValveStepper valves) {
    for (int b = 0; b < emitters.length; b++) {
      if (loops.has(b)) {
        double above = 0;
        for (int v = loops.first(b); v >= 0; v = loops.next(v)) {
          above += network.follows(b, v) * valves.endsAbove(v);
        }
        emitters[b].flowEndsAbove(above);
      }
    }
  }

  /**
   * Mean temperature of the water that comes back to the source over the coming step, if it goes on
   * as it does [°C]: where to begin to look for it.
   */
  double expectedReturn(double h) {
    return keptReturnTemperature + returnRise * (lastLength + h) / 2;
  }

  /** Gives the rooms the heats to expect in a coming step if they go on as they do. */
  void expectHeats(double h, RoomStepper rooms) {
    for (int b = 0; b < branches.length; b++) {
      rooms.setHeat(b, Math.max(heatNow[b] + heatRise[b] * h / 2, 0));
    }
  }

  /**
   * By how much an emitter ends above its mean over a step [W] if it goes on evenly from where it
   * begins, not below nothing.
   */
  double heatAbove(int branch) {
    return Math.max(heat[branch] - heatNow[branch], -heat[branch]);
  }

  /**
   * Says what an emitter gives at the end of the step that was accepted [W].
   *
   * @param h length of that step [s]
   */
  void endsWith(int branch, double now, double h) {
    heatNow[branch] = now;
    heatRise[branch] = (now - heat[branch]) / (h / 2);
  }

  /** Keeps what a step that has to be tried again must not have changed. */
  void keep() {
    keptReturnTemperature = returnTemperature;
  }

  /** Takes it back to what was kept. */
  void restore() {
    returnTemperature = keptReturnTemperature;
  }

  /** Begins a step: no trial of it has shown anything yet. */
  void begin(RoomStepper rooms) {
    references.begin(rooms);
  }

  /** What an emitter refers to where the rooms now are [°C]. */
  double referenceNow(int branch, RoomStepper rooms) {
    return references.now(branch, rooms);
  }

  /**
   * Tries all pipes and emitters with the temperature of the water that leaves the source; finds
   * the return temperature.
   *
   * @param h length of the step [s]
   * @param flow temperature of the water [°C]
   */
  void attempt(double h, double flow) {
    for (int r = 0; r < pipeHeat.length; r++) {
      pipeHeat[r] = 0;
    }
    outsideLoss = 0;
    arriving[0] = flow;
    returning[0] = 0;
    for (int i = 0; i < mains.length; i++) {
      arriving[i + 1] = passMain(h, i, mains[i].flow, arriving[parent[i + 1]]);
      returning[i + 1] = 0;
    }
    for (int i = 0; i < branches.length; i++) {
      passBranch(h, loops.inOrder(i));
    }
    returning[bypassNode] += network.bypassFlow() * arriving[bypassNode];
    for (int i = mains.length - 1; i >= 0; i--) {
      double m = network.mainFlow(i);
      double mixed = m > 0 ? returning[i + 1] / m : arriving[i + 1];
      returning[i + 1] = mixed;
      returning[parent[i + 1]] += m * passMain(h, i, mains[i].back, mixed);
    }
    if (network.totalFlow() > 0) {
      returnTemperature = returning[0] / network.totalFlow();
    }
    for (int r = 0; r < pipeHeat.length; r++) {
      if (model.pipeHeatInput(r) >= 0) {
        heat[model.pipeHeatInput(r)] = pipeHeat[r] / h;
      }
    }
  }

  /**
   * Gives the heats that were tried to the rooms.
   *
   * @return how far what is felt then is from what was referred to [K], the worst of all
   */
  double give(RoomStepper rooms) {
    for (int i = 0; i < heat.length; i++) {
      rooms.setHeat(i, heat[i], i < branches.length ? heatAbove(i) : 0);
    }
    linksAgree = rooms.settleLinks();
    return references.off(rooms);
  }

  /**
   * Foresees with what reference temperatures the next trial will agree.
   *
   * @param round trials so far, from 1 on
   * @param close how close to it a temperature that was referred to has to be to stay [K]
   */
  void foresee(int round, double h, RoomStepper rooms, double close) {
    for (int b = 0; b < branches.length; b++) {
      passing[b] = network.flow(b) * specificHeat * h;
    }
    references.foresee(round, h, passing, inlet, rooms, close);
  }

  /** Whether links and emitters came to agree in the last trial, each with itself. */
  boolean agreed() {
    boolean agreed = linksAgree;
    for (EmitterStepper emitter : emitters) {
      agreed &= emitter.agreed();
    }
    return agreed;
  }

  private double passMain(double h, int i, PipeWater half, double entering) {
    return pass(h, mains[i], half, network.mainFlow(i) * specificHeat, entering);
  }

  /** Mains or the emitter before, pipe, emitter, pipe, and on to the next emitter or back. */
  private void passBranch(double h, int b) {
    PipePair pipe = branches[b];
    double m = network.flow(b);
    double round = network.loopFlow(b);
    double capacityFlow = m * specificHeat;
    int before = loops.after(b);
    double entering = before < 0 ? arriving[branchNode[b]] : goingOn[before];
    inlet[b] = pass(h, pipe, pipe.flow, round * specificHeat, entering);
    if (differs(b, h, capacityFlow)) {
      emitters[b].attempt(h, capacityFlow, inlet[b], reference[b]);
    }
    double mixed = m < round ? mixed(b, m, round) : emitters[b].meanReturn();
    double leaving = pass(h, pipe, pipe.back, round * specificHeat, mixed);
    if (loops.next(b) < 0) {
      returning[branchNode[b]] += round * leaving;
    } else {
      goingOn[b] = leaving;
    }
    heat[b] = emitters[b].emitted() / h;
  }

  /** What comes from an emitter together with what passes it by [°C]. */
  private double mixed(int b, double m, double round) {
    return m > 0 ? inlet[b] + m / round * (emitters[b].meanReturn() - inlet[b]) : inlet[b];
  }

  /**
   * Whether an emitter is to be tried with something else than in its last trial. Rounding alone is
   * nothing else: a trial begins where the last one ended and so ends a little closer, and whether
   * there is one must not hang on a last digit.
   */
  private boolean differs(int b, double h, double capacityFlow) {
    boolean same =
        triedLength[b] == h
            && Math.abs(triedFlow[b] - capacityFlow) <= ROUNDING * capacityFlow
            && Math.abs(triedInlet[b] - inlet[b]) < ROUNDING
            && Math.abs(triedReference[b] - reference[b]) < ROUNDING;
    if (!same) {
      triedLength[b] = h;
      triedFlow[b] = capacityFlow;
      triedInlet[b] = inlet[b];
      triedReference[b] = reference[b];
    }
    return !same;
  }

  /**
   * Lets water pass half of a pair; what that loses [J] goes to the room it runs in, or is lost.
   */
  private double pass(
      double h, PipePair pair, PipeWater half, double capacityFlow, double entering) {
    if (half == null) {
      return entering;
    }
    half.attempt(h, capacityFlow, entering, pair.around(reference));
    if (pair.room >= 0) {
      pipeHeat[pair.room] += half.loss();
    } else {
      outsideLoss += half.loss();
    }
    return half.outlet();
  }

  /**
   * Makes the attempted step the state.
   *
   * @param h its length [s]
   */
  void accept(double h) {
    returnRise = (returnTemperature - keptReturnTemperature) / ((lastLength + h) / 2);
    lastLength = h;
    for (int b = 0; b < branches.length; b++) {
      emitters[b].accept();
      branches[b].accept();
      triedLength[b] = Double.NaN;
    }
    for (PipePair main : mains) {
      main.accept();
    }
  }

  /** Mass flow through the source's side of the mains, bypass counted [kg/s]. */
  double totalFlow() {
    return network.totalFlow();
  }

  /** That flow as one of heat capacity, m c [W/K]. */
  double capacityFlow() {
    return network.totalFlow() * specificHeat;
  }

  /**
   * Mean temperature of the water that comes back to the source [°C]; the last one without flow.
   */
  double returnTemperature() {
    return returnTemperature;
  }

  /** Flows and pressures. */
  NetworkFlow network() {
    return network;
  }

  /** The emitters. */
  EmitterStepper[] emitters() {
    return emitters;
  }

  /** Mean temperature of the water entering an emitter [°C]. */
  double inlet(int branch) {
    return inlet[branch];
  }

  /** Mean output of an emitter over the step [W]. */
  double heat(int branch) {
    return heat[branch];
  }

  /** Mean temperature of the water arriving at the end of mains [°C]. */
  double arriving(int main) {
    return arriving[main + 1];
  }

  /** Mean temperature of the water that comes together at the end of mains to go back [°C]. */
  double returning(int main) {
    return returning[main + 1];
  }

  /** Heat given by pipes to one room over the step [J]. */
  double pipeHeat(int room) {
    return pipeHeat[room];
  }

  /** Heat given by pipes to all rooms over the step [J]. */
  double pipeHeat() {
    double sum = 0;
    for (double given : pipeHeat) {
      sum += given;
    }
    return sum;
  }

  /** Heat lost by pipes outside the rooms over the step [J]. */
  double outsideLoss() {
    return outsideLoss;
  }

  /** Heat stored in emitters and pipes, above 0 °C [J]. */
  double stored() {
    double sum = 0;
    for (int b = 0; b < branches.length; b++) {
      sum += emitters[b].stored();
      sum += branches[b].stored();
    }
    for (PipePair main : mains) {
      sum += main.stored();
    }
    return sum;
  }
}
