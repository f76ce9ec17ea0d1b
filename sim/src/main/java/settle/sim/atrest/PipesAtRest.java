package settle.sim.atrest;

import java.util.Arrays;
import settle.sim.house.Distribution;
import settle.sim.house.House;
import settle.sim.hydraulics.Loops;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.model.HouseModel;
import settle.sim.room.SteadyRooms;

/** Mains and branch pipes at rest: how warm the water comes and goes, and what rooms get of it. */
final class PipesAtRest {

  // Model: node 0 is the source, node i + 1 the end of mains i
  private final HouseModel model;
  private final NetworkFlow network;
  private final SteadyRooms rooms;
  private final double capacityPerFlow;
  private final int[] branchNode;
  private final int[] parent;
  private final int bypassNode;

  /** In which order water passes the emitters. */
  private final Loops loops;

  // State
  private final RestState state;
  private final double[] arriving;
  private final double[] returning;
  private final double[] pipeHeat;

  /** Of its room's pipe heat, what comes from each branch's own pipe [W]. */
  final double[] branchHeat;

  private double outsideLoss;
  private double toRooms;

  // Scratch
  private final double[] roomAir;

  /**
   * @param model the prepared house
   * @param network its flows, solved by whoever asks
   * @param rooms in which pipes lie
   * @param state heats and flows
   */
  PipesAtRest(HouseModel model, NetworkFlow network, SteadyRooms rooms, RestState state) {
    this.model = model;
    this.network = network;
    this.rooms = rooms;
    this.state = state;
    House house = model.house();
    Distribution distribution = house.distribution();
    capacityPerFlow = house.water().specificHeat();
    loops = model.arrangement().loops();
    branchNode = new int[model.arrangement().branches().size()];
    for (int b = 0; b < branchNode.length; b++) {
      branchNode[b] = distribution.mainIndex(model.arrangement().branches().get(b).fedFrom()) + 1;
    }
    bypassNode =
        distribution.bypass().map(by -> distribution.mainIndex(by.fedFrom()) + 1).orElse(0);
    int mains = distribution.mains().size();
    parent = new int[mains + 1];
    for (int i = 0; i < mains; i++) {
      parent[i + 1] = distribution.mainIndex(distribution.mains().get(i).fedFrom()) + 1;
    }
    arriving = new double[mains + 1];
    returning = new double[mains + 1];
    roomAir = new double[house.rooms().size()];
    pipeHeat = new double[roomAir.length];
    branchHeat = new double[branchNode.length];
  }

  /**
   * Temperature at which water enters a branch's pipe [°C]; of one in a loop, at which it comes
   * from the emitter before.
   */
  double arriving(int branch) {
    int before = loops.after(branch);
    return before < 0 ? arriving[branchNode[branch]] : goingOn(before);
  }

  /** Temperature at which water enters a branch's emitter [°C]. */
  double inlet(int branch) {
    return cooled(pipe(branch), pipeFlow(branch), arriving(branch), aroundPipe(branch));
  }

  /** What leaves a branch's pipe for the next emitter; without flow it is as it came. */
  private double goingOn(int b) {
    double m = pipeFlow(b);
    double inlet = inlet(b);
    double outlet = m > 0 ? inlet - state.heat[b] / (state.duty * m * capacityPerFlow) : inlet;
    return m > 0 ? cooled(pipe(b), m, outlet, aroundPipe(b)) : inlet;
  }

  /** Flow through a branch's pipe: of one in a loop, that round it [kg/s]. */
  private double pipeFlow(int b) {
    return loops.has(b) ? state.flowShare * network.loopFlow(b) : state.massFlow[b];
  }

  private Pipe pipe(int b) {
    return model.arrangement().branches().get(b).pipe();
  }

  private double aroundPipe(int b) {
    int room = model.pipeRoom(b);
    return around(b, room >= 0 ? roomAir[room] : 0);
  }

  /** Heat lost by pipes outside the rooms [W]. */
  double outsideLoss() {
    return outsideLoss;
  }

  /**
   * Temperature about a branch's pipe [°C].
   *
   * @param air of the room it runs in [°C]; not used where it runs in none
   */
  double around(int branch, double air) {
    return model.pipeRoom(branch) >= 0 ? air : model.pipeSurroundings(branch);
  }

  /**
   * Lets the water go out: sets the temperatures at which it arrives at the end of each pair of
   * mains.
   *
   * @param flow flow temperature at the source [°C]
   */
  void outwards(double flow) {
    lookAtRooms();
    arriving[0] = flow;
    for (int i = 0; i + 1 < arriving.length; i++) {
      arriving[i + 1] = passMain(i, arriving[parent[i + 1]]);
    }
  }

  private void lookAtRooms() {
    for (int r = 0; r < roomAir.length; r++) {
      roomAir[r] = rooms.air(r, state.heat);
    }
  }

  private double passMain(int i, double entering) {
    Main main = model.house().distribution().mains().get(i);
    double around =
        main.room() == null ? main.surroundings() : roomAir[model.house().roomIndex(main.room())];
    return cooled(main.pipe(), state.flowShare * network.mainFlow(i), entering, around);
  }

  /** What leaves one of a pair of pipes: T_s + (T - T_s) e^(-G' L/(m c)). */
  double cooled(Pipe pipe, double m, double entering, double around) {
    if (!pipe.delays()) {
      return entering;
    }
    if (m == 0) {
      return around;
    }
    double loss = pipe.lossCoefficient() * pipe.length() / 2;
    return around + (entering - around) * Math.exp(-loss / (m * capacityPerFlow));
  }

  /**
   * Lets the water come back: finds the heat of all pipes that each room gets.
   *
   * @return what all pipes lose while water flows [W]
   */
  double back() {
    lookAtRooms();
    Arrays.fill(pipeHeat, 0);
    Arrays.fill(returning, 0);
    outsideLoss = 0;
    toRooms = 0;
    for (int b = 0; b < branchNode.length; b++) {
      backThroughBranch(b);
    }
    returning[bypassNode] += state.flowShare * network.bypassFlow() * arriving[bypassNode];
    for (int i = parent.length - 2; i >= 0; i--) {
      backThroughMain(i);
    }
    for (int r = 0; r < pipeHeat.length; r++) {
      pipeHeat[r] *= state.duty;
    }
    return toRooms + outsideLoss;
  }

  private void backThroughBranch(int b) {
    Pipe pipe = pipe(b);
    double m = pipeFlow(b);
    int room = model.pipeRoom(b);
    double around = aroundPipe(b);
    double entering = arriving(b);
    double inlet = cooled(pipe, m, entering, around);
    double given = state.heat[b] / (state.duty * m * capacityPerFlow);
    double outlet = m > 0 ? inlet - given : around;
    double back = cooled(pipe, m, outlet, around);
    double lost = m > 0 ? m * capacityPerFlow * (entering - inlet + outlet - back) : 0;
    branchHeat[b] = room == model.branchRoom(b) && !loops.has(b) ? state.duty * lost : 0;
    lose(room, lost);
    if (loops.next(b) < 0) {
      returning[branchNode[b]] += m * back;
    }
  }

  private void backThroughMain(int i) {
    double m = state.flowShare * network.mainFlow(i);
    if (m == 0) {
      return;
    }
    Main main = model.house().distribution().mains().get(i);
    double mixed = returning[i + 1] / m;
    double back = passMain(i, mixed);
    double lost = m * capacityPerFlow * (arriving[parent[i + 1]] - arriving[i + 1] + mixed - back);
    lose(main.room() == null ? -1 : model.house().roomIndex(main.room()), lost);
    returning[parent[i + 1]] += m * back;
  }

  /** What a pipe loses [W] goes to the room it runs in, or is lost outside them (-1). */
  private void lose(int room, double watts) {
    if (room >= 0) {
      pipeHeat[room] += watts;
      toRooms += watts;
    } else {
      outsideLoss += watts;
    }
  }

  /**
   * Lets the rooms have the pipes' heats.
   *
   * @return the largest change of any of them [W]
   */
  double give() {
    double moved = 0;
    for (int r = 0; r < pipeHeat.length; r++) {
      int input = model.pipeHeatInput(r);
      if (input >= 0) {
        double change = pipeHeat[r] - state.heat[input];
        state.heat[input] += change;
        moved = Math.max(moved, Math.abs(change));
      }
    }
    return moved;
  }
}
