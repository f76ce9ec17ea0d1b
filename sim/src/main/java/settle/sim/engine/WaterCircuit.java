package settle.sim.engine;

import java.util.Arrays;
import java.util.List;
import settle.sim.emitter.EmitterStepper;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipeWater;
import settle.sim.model.HouseModel;
import settle.sim.room.RoomStepper;
import settle.sim.source.FlowSearch;

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

  /** Trials after which what was foreseen leads nowhere; two or three do in most steps. */
  private static final int FORESEEN_ROUNDS = 6;

  /** Move of a reference temperature whose answer says something [K]. */
  private static final double LEAST_MOVE = 1e-5;

  // Model: node 0 is the source, node i + 1 the end of mains i
  private final HouseModel model;
  private final int branches;
  private final int mains;
  private final double specificHeat;
  private final int[] parent;
  private final int[] branchNode;
  private final int bypassNode;
  private final int[] mainRoom;
  private final double[] mainSurroundings;

  // State
  private NetworkFlow network;
  private final EmitterStepper[] emitters;

  /** Null where a pipe's delay is neglected. */
  private final PipeWater[] branchFlow;

  private final PipeWater[] branchReturn;
  private final PipeWater[] mainFlow;
  private final PipeWater[] mainReturn;

  // Attempt
  private final double[] arriving;
  private final double[] returning;
  private final double[] inlet;
  private final double[] pipeHeat;
  private double outsideLoss;
  private double returnTemperature;
  private double keptReturnTemperature;
  private boolean linksAgree;

  // Per heat input of the rooms, branches first: what it refers to, what it gives, by how much less
  // per kelvin of the room, and the weight of the star in what it refers to
  private final double[] reference;
  private final double[] heat;
  private final double[] slope;
  private final double[] radiantFraction;

  // The trial before
  private final double[] lastReference;
  private final double[] lastHeat;

  private final FlowSearch[] search;

  /** Of each emitter, water and metal [J/K], and its exponent. */
  private final double[] emitterCapacity;

  private final double[] exponent;

  /**
   * @param model the prepared house
   * @param start temperature of all water [°C]
   * @param parcels differences up to which water is mixed or joined, as a share of what is usual
   *     [-]
   */
  WaterCircuit(HouseModel model, double start, double parcels) {
    this.model = model;
    House house = model.house();
    specificHeat = house.water().specificHeat();
    List<Main> mainList = house.distribution().mains();
    List<Branch> branchList = model.arrangement().branches();
    branches = branchList.size();
    mains = mainList.size();
    network = model.networkFlow();
    emitters = model.emitterSteppers(start, parcels);
    parent = new int[mains + 1];
    mainRoom = new int[mains];
    mainSurroundings = new double[mains];
    mainFlow = new PipeWater[mains];
    mainReturn = new PipeWater[mains];
    for (int i = 0; i < mains; i++) {
      Main main = mainList.get(i);
      parent[i + 1] = house.distribution().mainIndex(main.fedFrom()) + 1;
      mainRoom[i] = main.room() == null ? -1 : house.roomIndex(main.room());
      mainSurroundings[i] = main.surroundings();
      mainFlow[i] = half(main.pipe(), start, parcels);
      mainReturn[i] = half(main.pipe(), start, parcels);
    }
    branchNode = new int[branches];
    branchFlow = new PipeWater[branches];
    branchReturn = new PipeWater[branches];
    for (int b = 0; b < branches; b++) {
      Branch branch = branchList.get(b);
      branchNode[b] = house.distribution().mainIndex(branch.fedFrom()) + 1;
      branchFlow[b] = half(branch.pipe(), start, parcels);
      branchReturn[b] = half(branch.pipe(), start, parcels);
    }
    bypassNode =
        house
            .distribution()
            .bypass()
            .map(bypass -> house.distribution().mainIndex(bypass.fedFrom()) + 1)
            .orElse(0);
    arriving = new double[mains + 1];
    returning = new double[mains + 1];
    inlet = new double[branches];
    int heats = model.heatInputs();
    heat = new double[heats];
    reference = new double[heats];
    slope = new double[heats];
    search = new FlowSearch[heats];
    Arrays.setAll(search, i -> new FlowSearch());
    lastReference = new double[branches];
    lastHeat = new double[branches];
    radiantFraction = new double[heats];
    emitterCapacity = new double[branches];
    exponent = new double[branches];
    for (int b = 0; b < branches; b++) {
      radiantFraction[b] = model.radiantFraction(b);
      emitterCapacity[b] = HouseModel.heatCapacity(branchList.get(b).emitter(), house.water());
      exponent[b] = branchList.get(b).emitter().exponent();
    }
    pipeHeat = new double[house.rooms().size()];
    returnTemperature = start;
  }

  /** The flow or the return of a pair. */
  private static PipeWater half(Pipe pipe, double start, double parcels) {
    return pipe.delays() ? new PipeWater(pipe, pipe.length() / 2, start, parcels) : null;
  }

  /** Lets the water run through another network: the same pipes, its pump set otherwise. */
  void runThrough(NetworkFlow other) {
    network = other;
  }

  /** Finds all flows for the valves' openings [m³/h at 1 bar]. */
  void flows(double[] kv, boolean pumping) {
    network.solve(kv, pumping);
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
    Arrays.fill(lastReference, Double.NaN);
    feel(rooms);
  }

  /** Takes what the rooms now show for what emitters and pipes refer to. */
  private void feel(RoomStepper rooms) {
    for (int i = 0; i < reference.length; i++) {
      reference[i] = rooms.felt(i, radiantFraction[i]);
    }
  }

  /** What an emitter refers to where the rooms now are [°C]. */
  double referenceNow(int branch, RoomStepper rooms) {
    int r = model.branchRoom(branch);
    double share = radiantFraction[branch];
    return share * rooms.star(r) + (1 - share) * rooms.air(r);
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
    for (int i = 0; i < mains; i++) {
      arriving[i + 1] = passMain(h, i, mainFlow[i], arriving[parent[i + 1]]);
      returning[i + 1] = 0;
    }
    for (int b = 0; b < branches; b++) {
      passBranch(h, b);
    }
    returning[bypassNode] += network.bypassFlow() * arriving[bypassNode];
    for (int i = mains - 1; i >= 0; i--) {
      double m = network.mainFlow(i);
      double mixed = m > 0 ? returning[i + 1] / m : arriving[i + 1];
      returning[i + 1] = mixed;
      returning[parent[i + 1]] += m * passMain(h, i, mainReturn[i], mixed);
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
      rooms.setHeat(i, heat[i]);
    }
    linksAgree = rooms.settleLinks();
    double off = 0;
    for (int i = 0; i < heat.length; i++) {
      off = Math.max(off, Math.abs(rooms.felt(i, radiantFraction[i]) - reference[i]));
    }
    return off;
  }

  /**
   * Foresees with what reference temperatures the next trial will agree.
   *
   * <p>Of the water that is in an emitter or passes it, C + m c h, a share phi of the excess is
   * given; its temperature then rises by 1 - (1 - phi)^n per kelvin of the reference, and the rest
   * of that kelvin is heat kept back. Where only part of the water is warmer than the room that
   * says too little: what the last two trials showed counts then. Too steep a slope only takes
   * longer.
   *
   * <p>Where that does not lead there soon, each reference is looked for by itself, between one
   * that was too low and one that was too high.
   *
   * @param round trials so far, from 1 on
   */
  void foresee(int round, double h, RoomStepper rooms) {
    for (int b = 0; b < branches; b++) {
      double passing = network.flow(b) * specificHeat * h;
      double capacity = emitterCapacity[b] + passing;
      double entered = passing > 0 ? passing * inlet[b] : 0;
      double excess = emitters[b].stored() + entered - capacity * reference[b];
      double phi = excess > 0 ? Math.min(heat[b] * h / excess, 1) : 0;
      double shown = -(heat[b] - lastHeat[b]) / (reference[b] - lastReference[b]);
      boolean says = Math.abs(reference[b] - lastReference[b]) > LEAST_MOVE;
      slope[b] = capacity / h * (1 - Math.pow(1 - phi, exponent[b]));
      slope[b] = says && shown > slope[b] ? shown : slope[b];
      lastHeat[b] = heat[b];
      lastReference[b] = reference[b];
    }
    for (int r = 0; r < pipeHeat.length; r++) {
      if (model.pipeHeatInput(r) >= 0) {
        slope[model.pipeHeatInput(r)] = model.pipeConductance(r);
      }
    }
    if (round <= FORESEEN_ROUNDS) {
      rooms.foresee(heat, slope, reference, radiantFraction);
      feel(rooms);
      return;
    }
    for (int i = 0; i < heat.length; i++) {
      if (round == FORESEEN_ROUNDS + 1) {
        search[i].begin();
      }
      reference[i] = search[i].next(reference[i], rooms.felt(i, radiantFraction[i]));
    }
  }

  /** Whether links and emitters came to agree in the last trial, each with itself. */
  boolean agreed() {
    boolean agreed = linksAgree;
    for (EmitterStepper emitter : emitters) {
      agreed &= emitter.agreed();
    }
    return agreed;
  }

  private double passMain(double h, int i, PipeWater pipe, double entering) {
    if (pipe == null) {
      return entering;
    }
    int r = mainRoom[i];
    double around = r >= 0 ? reference[model.pipeHeatInput(r)] : mainSurroundings[i];
    pipe.attempt(h, network.mainFlow(i) * specificHeat, entering, around);
    lose(pipe.loss(), r);
    return pipe.outlet();
  }

  /** A pipe's loss [J] goes to the room it runs in, or is lost outside them (-1). */
  private void lose(double loss, int room) {
    if (room >= 0) {
      pipeHeat[room] += loss;
    } else {
      outsideLoss += loss;
    }
  }

  private void passBranch(double h, int b) {
    double m = network.flow(b);
    double capacityFlow = m * specificHeat;
    double entering = passTail(h, b, branchFlow[b], capacityFlow, arriving[branchNode[b]]);
    inlet[b] = entering;
    emitters[b].attempt(h, capacityFlow, entering, reference[b]);
    double leaving = passTail(h, b, branchReturn[b], capacityFlow, emitters[b].meanReturn());
    returning[branchNode[b]] += m * leaving;
    heat[b] = emitters[b].emitted() / h;
  }

  private double passTail(double h, int b, PipeWater pipe, double capacityFlow, double entering) {
    if (pipe == null) {
      return entering;
    }
    int r = model.pipeRoom(b);
    double around = r >= 0 ? reference[model.pipeHeatInput(r)] : model.pipeSurroundings(b);
    pipe.attempt(h, capacityFlow, entering, around);
    lose(pipe.loss(), r);
    return pipe.outlet();
  }

  /** Makes the attempted step the state. */
  void accept() {
    for (int b = 0; b < branches; b++) {
      emitters[b].accept();
      if (branchFlow[b] != null) {
        branchFlow[b].accept();
        branchReturn[b].accept();
      }
    }
    for (int i = 0; i < mains; i++) {
      if (mainFlow[i] != null) {
        mainFlow[i].accept();
        mainReturn[i].accept();
      }
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
    for (int b = 0; b < branches; b++) {
      sum += emitters[b].stored();
      if (branchFlow[b] != null) {
        sum += branchFlow[b].stored() + branchReturn[b].stored();
      }
    }
    for (int i = 0; i < mains; i++) {
      if (mainFlow[i] != null) {
        sum += mainFlow[i].stored() + mainReturn[i].stored();
      }
    }
    return sum;
  }
}
