package settle.sim.atrest;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import settle.sim.house.Distribution;
import settle.sim.house.House;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.model.HouseModel;

/** Mains and branch pipes at rest: how warm the water comes and goes, and what rooms get of it. */
final class PipesAtRest {

  private final HouseModel model;
  private final NetworkFlow network;
  private final double capacityPerFlow;
  private final int[] branchNode;
  private final int[] parent;
  private final int bypassNode;
  private final double[] arriving;
  private final double[] returning;
  private final double[] roomAir;
  private final double[] pipeHeat;

  /** Of its room's pipe heat, what comes from each branch's own pipe [W]. */
  final double[] branchHeat;

  private double outsideLoss;
  private double flowShare = 1;

  /**
   * @param model the prepared house
   * @param network its flows, solved by whoever asks
   */
  PipesAtRest(HouseModel model, NetworkFlow network) {
    this.model = model;
    this.network = network;
    House house = model.house();
    Distribution distribution = house.distribution();
    capacityPerFlow = house.water().specificHeat();
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
    int rooms = house.rooms().size();
    roomAir = new double[rooms];
    pipeHeat = new double[rooms];
    branchHeat = new double[branchNode.length];
  }

  /** Lets mains carry but a share of the flow they are solved for [-]. */
  void carry(double share) {
    flowShare = share;
  }

  /** Temperature at which water enters a branch's pipe [°C]. */
  double arriving(int branch) {
    return arriving[branchNode[branch]];
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
   * @param air of each room [°C]
   */
  void outwards(double flow, IntToDoubleFunction air) {
    Arrays.setAll(roomAir, air);
    arriving[0] = flow;
    for (int i = 0; i + 1 < arriving.length; i++) {
      arriving[i + 1] = passMain(i, arriving[parent[i + 1]]);
    }
  }

  private double passMain(int i, double entering) {
    Main main = model.house().distribution().mains().get(i);
    double around =
        main.room() == null ? main.surroundings() : roomAir[model.house().roomIndex(main.room())];
    return cooled(main.pipe(), flowShare * network.mainFlow(i), entering, around);
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
   * @param massFlow of each branch [kg/s]
   * @param heat of each branch's emitter [W], its mean
   * @param duty share of the time in which water flows [-]
   * @param air of each room [°C]
   * @return what all pipes lose while it does [W]
   */
  double back(double[] massFlow, double[] heat, double duty, IntToDoubleFunction air) {
    House house = model.house();
    Arrays.setAll(roomAir, air);
    Arrays.fill(pipeHeat, 0);
    outsideLoss = 0;
    Arrays.fill(returning, 0);
    double toRooms = 0;
    for (int b = 0; b < branchNode.length; b++) {
      Pipe pipe = model.arrangement().branches().get(b).pipe();
      double m = massFlow[b];
      int room = model.pipeRoom(b);
      double around = around(b, room >= 0 ? roomAir[room] : 0);
      double entering = arriving[branchNode[b]];
      double inlet = cooled(pipe, m, entering, around);
      double outlet = m > 0 ? inlet - heat[b] / (duty * m * capacityPerFlow) : around;
      double back = cooled(pipe, m, outlet, around);
      double lost = m > 0 ? m * capacityPerFlow * (entering - inlet + outlet - back) : 0;
      branchHeat[b] = room == model.branchRoom(b) ? duty * lost : 0;
      if (room >= 0) {
        toRooms += give(room, lost);
      } else {
        outsideLoss += lost;
      }
      returning[branchNode[b]] += m * back;
    }
    returning[bypassNode] += flowShare * network.bypassFlow() * arriving[bypassNode];
    List<Main> mains = house.distribution().mains();
    for (int i = mains.size() - 1; i >= 0; i--) {
      double m = flowShare * network.mainFlow(i);
      if (m == 0) {
        continue;
      }
      double mixed = returning[i + 1] / m;
      double back = passMain(i, mixed);
      double lost =
          m * capacityPerFlow * (arriving[parent[i + 1]] - arriving[i + 1] + mixed - back);
      if (mains.get(i).room() == null) {
        outsideLoss += lost;
      } else {
        toRooms += give(house.roomIndex(mains.get(i).room()), lost);
      }
      returning[parent[i + 1]] += m * back;
    }
    for (int r = 0; r < pipeHeat.length; r++) {
      pipeHeat[r] *= duty;
    }
    return toRooms + outsideLoss;
  }

  /**
   * Lets the rooms have the pipes' heats.
   *
   * @param heat all heat inputs of the rooms; those of pipes are moved [W]
   * @param share of its change that any of them takes [-]
   * @return the largest change [W]
   */
  double give(double[] heat, double share) {
    double moved = 0;
    for (int r = 0; r < pipeHeat.length; r++) {
      int input = model.pipeHeatInput(r);
      if (input >= 0) {
        double change = pipeHeat[r] - heat[input];
        heat[input] += share * change;
        moved = Math.max(moved, Math.abs(change));
      }
    }
    return moved;
  }

  private double give(int room, double watts) {
    pipeHeat[room] += watts;
    return watts;
  }
}
