package settle.sim.atrest;

import java.util.Arrays;
import java.util.List;
import settle.sim.house.Branch;
import settle.sim.house.Distribution;
import settle.sim.house.House;
import settle.sim.hydraulics.Loops;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.model.HouseModel;
import settle.sim.room.SteadyRooms;

/**
 * Water on its way through mains and branches, and the rooms it passes, with the slopes of all of
 * it: first with the heats that enter the rooms, then with the K_v of each valve.
 */
final class WaterAtRest {

  // Model: node 0 is the source, node i + 1 the end of mains i
  private final HouseModel model;
  private final NetworkFlow network;
  private final SteadyRooms rooms;
  private final RestState state;
  private final double specificHeat;
  private final List<Branch> branches;
  private final List<Main> mains;
  private final int[] branchNode;
  private final int[] parent;
  private final int[] mainRoom;
  private final int bypassNode;
  private final int heats;

  /** In which order water passes the emitters. */
  private final Loops loops;

  // Flows [W/K]
  final Varying[] capacityFlow;
  private final Varying[] mainFlow;
  private final Varying bypassFlow;

  /** Through the pipe of each branch; that through its emitter where nothing passes that by. */
  private final Varying[] pipeFlow;

  // Temperatures [°C]
  final Varying[] air;
  final Varying[] star;
  final Varying[] inlet;
  private final Varying[] arriving;

  /** Water that leaves each branch's pipe, to go on or back. */
  private final Varying[] goingOn;

  /** Heat that returns to each node above 0 °C [W]. */
  private final Varying[] returning;

  /** What pipes lose in each room [W]. */
  private final Varying[] lost;

  // Scratch
  private final Varying around;
  private final Varying one;
  private final Varying other;
  private final Varying mixed;

  WaterAtRest(HouseModel model, SteadyRooms rooms, NetworkFlow network, RestState state) {
    this.model = model;
    this.rooms = rooms;
    this.network = network;
    this.state = state;
    House house = model.house();
    Distribution distribution = house.distribution();
    specificHeat = house.water().specificHeat();
    branches = model.arrangement().branches();
    mains = distribution.mains();
    heats = state.heat.length;
    loops = model.arrangement().loops();
    branchNode = branches.stream().mapToInt(b -> distribution.mainIndex(b.fedFrom()) + 1).toArray();
    parent = new int[mains.size() + 1];
    mainRoom = new int[mains.size()];
    for (int i = 0; i < mainRoom.length; i++) {
      parent[i + 1] = distribution.mainIndex(mains.get(i).fedFrom()) + 1;
      mainRoom[i] = mains.get(i).room() == null ? -1 : house.roomIndex(mains.get(i).room());
    }
    bypassNode =
        distribution.bypass().map(by -> distribution.mainIndex(by.fedFrom()) + 1).orElse(0);
    int n = house.rooms().size();
    capacityFlow = some(branchNode.length);
    inlet = some(branchNode.length);
    pipeFlow = loops.any() ? some(branchNode.length) : capacityFlow;
    goingOn = loops.any() ? some(branchNode.length) : new Varying[0];
    mainFlow = some(mainRoom.length);
    bypassFlow = some(1)[0];
    air = some(n);
    star = some(n);
    lost = some(n);
    arriving = some(parent.length);
    returning = some(parent.length);
    around = some(1)[0];
    one = some(1)[0];
    other = some(1)[0];
    mixed = some(1)[0];
    warmRooms();
  }

  private void warmRooms() {
    for (int h = 0; h < heats; h++) {
      warmRooms(h, 1);
    }
  }

  private void warmRooms(int h, double kept) {
    for (int r = 0; r < air.length; r++) {
      air[r].setSlope(h, kept * rooms.airPer(h, r));
      star[r].setSlope(h, kept * rooms.starPer(h, r));
    }
  }

  private Varying[] some(int many) {
    Varying[] all = new Varying[many];
    Arrays.setAll(all, i -> new Varying(heats + branchNode.length));
    return all;
  }

  /**
   * Takes rooms and flows as they are.
   *
   * @param moves which valves' K_v the slopes are asked with
   */
  void look(boolean[] moves) {
    for (int r = 0; r < air.length; r++) {
      air[r].setValue(rooms.air(r, state.heat));
      star[r].setValue(rooms.star(r, state.heat));
    }
    for (int h = 0; h < heats; h++) {
      if (rooms.loses(h)) {
        warmRooms(h, rooms.keptPerHeat(h, state.heat[h]));
      }
    }
    double per = state.flowShare * specificHeat;
    for (int b = 0; b < branchNode.length; b++) {
      capacityFlow[b].set(per * network.flow(b));
      if (loops.any()) {
        pipeFlow[b].set(per * network.loopFlow(b));
      }
    }
    for (int i = 0; i < mainRoom.length; i++) {
      mainFlow[i].set(per * network.mainFlow(i));
    }
    bypassFlow.set(per * network.bypassFlow());
    for (int v = 0; v < branchNode.length; v++) {
      if (moves[v] && state.kv[v] > 0) {
        respondTo(v, per);
      }
    }
  }

  private void respondTo(int valve, double per) {
    network.respondTo(valve);
    int slope = heats + valve;
    for (int b = 0; b < branchNode.length; b++) {
      capacityFlow[b].setSlope(slope, per * network.flowRise(b));
      if (loops.any()) {
        pipeFlow[b].setSlope(slope, per * network.loopFlowRise(b));
      }
    }
    for (int i = 0; i < mainRoom.length; i++) {
      mainFlow[i].setSlope(slope, per * network.mainFlowRise(i));
    }
    bypassFlow.setSlope(slope, per * network.bypassFlowRise());
  }

  /** Lets water of a temperature [°C] go out to the emitters. */
  void out(double flow) {
    arriving[0].set(flow);
    for (int i = 0; i < mainRoom.length; i++) {
      pass(
          arriving[i + 1],
          mains.get(i).pipe(),
          arriving[parent[i + 1]],
          aroundMain(i),
          mainFlow[i]);
    }
    for (int i = 0; i < branchNode.length; i++) {
      int b = loops.inOrder(i);
      pass(inlet[b], branches.get(b).pipe(), entering(b), aroundBranch(b), pipeFlow[b]);
      if (loops.next(b) >= 0) {
        goOn(b);
      }
    }
  }

  /** Water that enters a branch's pipe. */
  private Varying entering(int b) {
    return loops.after(b) < 0 ? arriving[branchNode[b]] : goingOn[loops.after(b)];
  }

  /** Lets water pass emitter and pipe of a branch; without flow it is as it came. */
  private void goOn(int b) {
    if (pipeFlow[b].value() > 0) {
      findOutlet(b);
      pass(goingOn[b], branches.get(b).pipe(), one, aroundBranch(b), pipeFlow[b]);
    } else {
      goingOn[b].setTimes(1, inlet[b]);
    }
  }

  /** Sets {@link #one} to what comes from an emitter, together with what passes it by. */
  private void findOutlet(int b) {
    one.set(state.heat[b] / state.duty);
    one.setSlope(b, 1 / state.duty);
    one.divide(pipeFlow[b]);
    one.setTimes(-1, one).add(1, inlet[b]);
  }

  /**
   * Lets it come back.
   *
   * @param off set to what pipes give to their room more than stands among the heats [W]
   */
  void back(Varying[] off) {
    for (Varying node : returning) {
      node.set(0);
    }
    for (Varying room : lost) {
      room.set(0);
    }
    for (int b = 0; b < branchNode.length; b++) {
      backThroughBranch(b);
    }
    returning[bypassNode].addProduct(bypassFlow, arriving[bypassNode]);
    for (int i = mainRoom.length - 1; i >= 0; i--) {
      backThroughMain(i);
    }
    for (int r = 0; r < lost.length; r++) {
      int input = model.pipeHeatInput(r);
      if (input >= 0) {
        off[input].setTimes(state.duty, lost[r]);
        off[input].vary(input, -state.heat[input], -1);
      }
    }
  }

  private void backThroughBranch(int b) {
    Varying flowing = pipeFlow[b];
    if (!(flowing.value() > 0)) {
      return;
    }
    // one: the emitter's outlet; other: what comes back.
    findOutlet(b);
    Varying there = aroundBranch(b);
    pass(other, branches.get(b).pipe(), one, there, flowing);
    if (loops.next(b) < 0) {
      returning[branchNode[b]].addProduct(flowing, other);
    }
    mixed.setTimes(1, entering(b)).add(-1, inlet[b]).add(1, one).add(-1, other);
    int room = model.pipeRoom(b);
    if (room >= 0) {
      lost[room].addProduct(flowing, mixed);
    }
  }

  private void backThroughMain(int i) {
    Varying flowing = mainFlow[i];
    if (!(flowing.value() > 0)) {
      return;
    }
    mixed.setTimes(1, returning[i + 1]).divide(flowing);
    pass(other, mains.get(i).pipe(), mixed, aroundMain(i), flowing);
    returning[parent[i + 1]].addProduct(flowing, other);
    one.setTimes(1, arriving[parent[i + 1]]).add(-1, arriving[i + 1]).add(1, mixed).add(-1, other);
    if (mainRoom[i] >= 0) {
      lost[mainRoom[i]].addProduct(flowing, one);
    }
  }

  private static void pass(
      Varying out, Pipe pipe, Varying entering, Varying around, Varying capacityFlow) {
    if (pipe.delays()) {
      out.leavePipe(entering, around, pipe.lossCoefficient() * pipe.length() / 2, capacityFlow);
    } else {
      out.setTimes(1, entering);
    }
  }

  private Varying aroundMain(int i) {
    return mainRoom[i] >= 0 ? air[mainRoom[i]] : around.set(mains.get(i).surroundings());
  }

  private Varying aroundBranch(int b) {
    int room = model.pipeRoom(b);
    return room >= 0 ? air[room] : around.set(model.pipeSurroundings(b));
  }
}
