package settle.sim.atrest;

import java.util.Arrays;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.model.HouseModel;
import settle.sim.room.SteadyRooms;
import settle.sim.valve.RoomSensing;

/**
 * Rooms, emitters, valves, pipes and flows at rest on water of one temperature: all at once ({@link
 * RestNewton}). In some houses of a hundred that does not lead there, such as where several valves
 * that switch share a room; they are swept branch by branch, then pressures and pipes, until none
 * moves, and where sweeps go to and fro, openings alone are sought.
 */
final class RestSweep {

  /**
   * Agreement asked of each emitter's heat from one sweep to the next [W]: some 1e-5 K of a room.
   */
  static final double HEAT_AGREEMENT = 0.01;

  /** Agreement asked of the pressure at each branch, as a share of the pump's head [-]. */
  private static final double PRESSURE_AGREEMENT = 1e-7;

  private static final int MOST_SWEEPS = 40;

  /** Sweeps that are taken as they come: most houses need no more. */
  private static final int PLAIN_SWEEPS = 12;

  /** Heat that counts as much as a pressure of the whole head where sweeps are sped up [W]. */
  private static final double HEAT_PER_HEAD = 10_000;

  private static final int REMEMBERED = 6;

  // Model
  private final HouseModel model;
  private final SteadyRooms rooms;
  private final int branches;
  private final double pressureScale;

  // State
  final RestState state;
  final NetworkFlow network;
  final PipesAtRest pipes;

  // How it is found
  private final BranchAtRest branch;
  private final OpeningsAtRest openings;
  private final RestNewton newton;
  private final Anderson anderson;
  private final double[] before;
  private final double[] after;
  private double moved;

  RestSweep(HouseModel model, SteadyRooms rooms) {
    this.model = model;
    this.rooms = rooms;
    branches = model.branches();
    network = model.networkFlow();
    state = new RestState(model);
    pipes = new PipesAtRest(model, network, rooms, state);
    branch = new BranchAtRest(model, rooms, pipes, state);
    openings = new OpeningsAtRest(network, pipes, branch, state);
    newton = new RestNewton(model, rooms, network, branch, state);
    before = new double[state.heat.length + branches];
    after = new double[before.length];
    anderson = new Anderson(before.length, REMEMBERED);
    network.solve(state.kv, true);
    for (int b = 0; b < branches; b++) {
      state.pressure[b] = network.pressureOver(b);
    }
    pressureScale = HEAT_PER_HEAD / Math.max(network.head(), 1);
  }

  /** Heats and pressures, to come back to. */
  double[] kept() {
    double[] copy = new double[before.length];
    keep(copy);
    return copy;
  }

  private void keep(double[] x) {
    System.arraycopy(state.heat, 0, x, 0, state.heat.length);
    for (int b = 0; b < branches; b++) {
      x[state.heat.length + b] = state.pressure[b] * pressureScale;
    }
  }

  /** Comes back to heats and pressures once {@link #kept}. */
  void comeBack(double[] x) {
    System.arraycopy(x, 0, state.heat, 0, state.heat.length);
    for (int b = 0; b < branches; b++) {
      state.pressure[b] = Math.max(x[state.heat.length + b] / pressureScale, 0);
    }
  }

  /**
   * Sweeps until nothing moves.
   *
   * @param flow temperature of the water that goes into the mains [°C]
   * @return heat the water takes [W]
   */
  double at(double flow) {
    double[] kept = kept();
    double[] kv = state.kv.clone();
    double total;
    if (newton.find(flow)) {
      moved = 0;
      total = passPipes(flow);
    } else {
      comeBack(kept);
      System.arraycopy(kv, 0, state.kv, 0, branches);
      total = swept(flow);
    }
    if (!found()) {
      total = openings.find(flow);
      moved = openings.off() * HEAT_AGREEMENT;
    }
    return total;
  }

  /** Lets water go round once, heats and flows as they were found; returns what it loses [W]. */
  private double passPipes(double flow) {
    pipes.outwards(flow);
    double total = state.duty * pipes.back() + state.emitted();
    pipes.give();
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
      total = sweep(flow);
      if (moved < HEAT_AGREEMENT) {
        break;
      }
      if (sped) {
        keep(after);
        anderson.go(before, after);
        comeBack(before);
      }
    }
    return total;
  }

  /** One sweep; {@link #moved} is then what moved most. */
  private double sweep(double flow) {
    moved = 0;
    pipes.outwards(flow);
    for (int b = 0; b < branches; b++) {
      double was = state.heat[b];
      branch.solve(b, pipes.arriving(b));
      double change = state.heat[b] - was;
      state.heat[b] = was + change;
      moved = Math.max(moved, Math.abs(change));
    }
    network.solve(state.kv, true);
    double strained = 0;
    for (int b = 0; b < branches; b++) {
      double change = network.pressureOver(b) - state.pressure[b];
      state.pressure[b] += change;
      strained = Math.max(strained, Math.abs(change));
    }
    double total = state.duty * pipes.back() + state.emitted();
    moved = Math.max(moved, pipes.give());
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

  double air(int room) {
    return rooms.air(room, state.heat);
  }

  double operative(int room) {
    return (rooms.air(room, state.heat) + rooms.star(room, state.heat)) / 2;
  }

  /** What an electric valve of a branch feels there [°C]. */
  double felt(int branch, RoomSensing sensing) {
    int r = model.branchRoom(branch);
    return sensing.of(rooms.air(r, state.heat), rooms.star(r, state.heat));
  }

  /** The house with pump and source at rest: no heat but what comes without them. */
  void withoutWater() {
    Arrays.fill(state.heat, 0);
    Arrays.fill(state.massFlow, 0);
    moved = 0;
  }

  /** Operative temperature of a branch's room were its emitter to give such a heat [W] [°C]. */
  double operativeWith(int b, double watts) {
    double settled = state.heat[b];
    state.heat[b] = watts;
    double there = operative(model.branchRoom(b));
    state.heat[b] = settled;
    return there;
  }

  /** What a branch's emitter would give in a room warmed by such a heat [W]. */
  double heatOffered(int b, double watts) {
    double settled = state.heat[b];
    state.heat[b] = watts;
    double offered = branch.emission(b, pipes.arriving(b));
    state.heat[b] = settled;
    branch.emission(b, pipes.arriving(b));
    return offered;
  }
}
