package settle.sim.engine;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.Thermostat;
import settle.sim.emitter.EmitterStepper;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.BranchFlow;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.room.SteadyRooms;

/**
 * A house at rest: where every room settles under weather, gains and flow temperature that stay as
 * they are, valves in the middle of their play. Solved, not run: for each branch the heat Q at
 * which emitter and room agree is a root of a falling function; branches, pipes and flows are swept
 * until none moves.
 *
 * <p>A source that starts and stops is taken at its mean. Where a room thermostat would stop it,
 * the flow temperature is lowered until the reference room settles at its want.
 */
public final class SettledHouse {

  /**
   * Agreement asked of each emitter's heat from one sweep to the next [W]: some 1e-5 K of a room.
   */
  private static final double HEAT_AGREEMENT = 0.01;

  /**
   * Agreement asked of emitter and room within a sweep [W]. An actuator at its set-point opens from
   * shut to open for some hundredths of a watt; less agreement than this and its flow would never
   * come to rest.
   */
  private static final double BRANCH_AGREEMENT = 1e-6;

  /** Agreement asked of the pressure at each branch, as a share of the pump's head [-]. */
  private static final double PRESSURE_AGREEMENT = 1e-7;

  private static final int MOST_SWEEPS = 500;

  /**
   * Sweeps after which heats and pressures move less and less of the way, should they go to and
   * fro.
   */
  private static final int PATIENCE = 30;

  private final HouseModel model;
  private final SteadyRooms rooms;
  private final EmitterStepper[] emitters;
  private final BranchFlow[] flows;
  private final NetworkFlow network;
  private final double[] heat;
  private final double[] kv;
  private final double[] pressure;
  private final double[] massFlow;
  private final PipesAtRest pipes;
  private final double capacityPerFlow;
  private final double outdoor;
  private double sourceHeat;
  private double flowTemperature;

  /**
   * Prepares; {@link #asControlled} or {@link #at} then solve, as often as wanted.
   *
   * @param model the prepared house
   * @param outdoor outdoor temperature [°C]
   * @param convective convective gain of each room [W]
   * @param radiant radiant gain of each room [W]
   */
  public SettledHouse(HouseModel model, double outdoor, double[] convective, double[] radiant) {
    this.model = model;
    House house = model.house;
    rooms = new SteadyRooms(model.atRest, outdoor, convective, radiant);
    emitters = model.emitterSteppers(20);
    flows = model.branchFlows();
    network = model.networkFlow();
    heat = new double[model.heatInputs()];
    kv = new double[emitters.length];
    pressure = new double[emitters.length];
    massFlow = new double[emitters.length];
    pipes = new PipesAtRest(model, network);
    capacityPerFlow = house.water().specificHeat();
    for (int b = 0; b < kv.length; b++) {
      kv[b] = model.arrangement.branches().get(b).valve().kvMaximum();
    }
    network.solve(kv, true);
    for (int b = 0; b < kv.length; b++) {
      pressure[b] = network.branchPressure(b);
    }
    flowTemperature = house.source().flowSetPoint();
    this.outdoor = outdoor;
  }

  /**
   * Settles with the flow temperature that controls and source bring about: asked for by weather
   * compensation or setting, lowered until the source's power suffices and until no room thermostat
   * would stop it.
   */
  public SettledHouse asControlled() {
    House house = model.house;
    double asked = house.source().flowSetPoint();
    double coldest = Math.min(outdoor, asked - 1);
    flowTemperature = Math.min(compensated(asked), house.source().highestFlow());
    if (excessPower(flowTemperature) > 0) {
      flowTemperature = lowered(this::excessPower, coldest);
    }
    if (!(house.control().thermostat() instanceof Thermostat.None)) {
      int room = house.roomIndex(house.control().referenceRoom());
      double want = house.rooms().get(room).want().maximum();
      if (operative(room) > want) {
        flowTemperature =
            lowered(
                t -> {
                  sweep(t);
                  return operative(room) - want;
                },
                coldest);
      }
    }
    return this;
  }

  /**
   * Settles with a given flow temperature, whatever controls and source would say.
   *
   * @param flow [°C]
   */
  public SettledHouse at(double flow) {
    flowTemperature = flow;
    sourceHeat = sweep(flow);
    return this;
  }

  /**
   * What weather compensation asks for, room influence included: the root of T = curve(T_e, want -
   * T_room(T)), whose right side falls as T rises.
   */
  private double compensated(double plain) {
    Control control = model.house.control();
    if (control.flowCurve().isEmpty()) {
      return plain;
    }
    FlowCurve curve = control.flowCurve().get();
    double uninfluenced = curve.setPoint(outdoor, 0);
    if (curve.roomInfluence() == 0 || curve.lowest() == curve.highest()) {
      return uninfluenced;
    }
    int room = model.house.roomIndex(control.referenceRoom());
    double want = model.house.rooms().get(room).want().maximum();
    UnivariateFunction excess =
        t -> {
          sweep(t);
          return t - curve.setPoint(outdoor, want - operative(room));
        };
    if (excess.value(curve.lowest()) >= 0) {
      return curve.lowest();
    }
    if (excess.value(curve.highest()) <= 0) {
      return curve.highest();
    }
    return new BrentSolver(1e-6).solve(200, excess, curve.lowest(), curve.highest());
  }

  /** The flow temperature, below the present one, at which an excess vanishes. */
  private double lowered(UnivariateFunction excess, double coldest) {
    if (excess.value(coldest) > 0) {
      sourceHeat = sweep(coldest);
      return coldest;
    }
    double found = new BrentSolver(1e-6).solve(200, excess, coldest, flowTemperature);
    sourceHeat = sweep(found);
    return found;
  }

  /** What the house takes more than the source can give [W]. */
  private double excessPower(double flow) {
    double most = model.house.source().maximumPower(outdoor, flow);
    sourceHeat = sweep(flow);
    return sourceHeat - most * (1 + 1e-9);
  }

  /** Heat the water takes at a flow temperature, everything at rest [W]. */
  private double sweep(double flow) {
    double total = 0;
    pipes.begin();
    for (int k = 0; k < MOST_SWEEPS; k++) {
      double moved = 0;
      double share = Math.min(1, (double) PATIENCE / (k + 1));
      pipes.outwards(flow, this::air);
      for (int b = 0; b < emitters.length; b++) {
        double before = heat[b];
        double change = solveBranch(b, pipes.arriving(b)) - before;
        heat[b] = before + share * change;
        moved = Math.max(moved, Math.abs(change));
      }
      network.solve(kv, true);
      double strained = 0;
      for (int b = 0; b < emitters.length; b++) {
        double change = network.branchPressure(b) - pressure[b];
        pressure[b] += share * change;
        strained = Math.max(strained, Math.abs(change));
      }
      total = pipes.back(massFlow, heat, this::air) + emitted();
      moved = Math.max(moved, pipes.give(heat, share));
      if (moved < HEAT_AGREEMENT && strained <= PRESSURE_AGREEMENT * network.head()) {
        break;
      }
    }
    return total;
  }

  private double emitted() {
    double sum = 0;
    for (int b = 0; b < emitters.length; b++) {
      sum += heat[b];
    }
    return sum;
  }

  /** The heat at which a branch's emitter and its room agree, sought from the present one on. */
  private double solveBranch(int b, double water) {
    double before = heat[b];
    UnivariateFunction excess =
        q -> {
          heat[b] = q;
          return emission(b, water) - q;
        };
    double now = excess.value(before);
    if (Math.abs(now) <= BRANCH_AGREEMENT) {
      return before;
    }
    // The excess falls at least as fast as the heat rises, so the root is no further than it is.
    double low = now > 0 ? before : 0;
    double high = now > 0 ? before + now : before;
    if (now > 0 && excess.value(high) >= 0) {
      return high;
    }
    if (now < 0 && excess.value(low) <= BRANCH_AGREEMENT) {
      return low;
    }
    double start = Math.min(Math.max(before + now / 2, low), high);
    double found = new BrentSolver(1e-9, BRANCH_AGREEMENT).solve(200, excess, low, high, start);
    excess.value(found);
    return found;
  }

  /**
   * Opens a branch's valve as far as it stands at rest, and sets its flow; returns the temperature
   * of the water that then arrives there: what the branch pipe leaves of the heat.
   */
  private double inlet(int b, double water, double air, double star) {
    Branch branch = model.arrangement.branches().get(b);
    int in = model.pipeRoom[b];
    double around = pipes.around(b, in >= 0 ? rooms.air(in, heat) : 0);
    kv[b] = ValvesAtRest.kv(branch, flows[b], pressure[b], pipes, water, around, air, star);
    massFlow[b] = flows[b].solve(kv[b], pressure[b]);
    return pipes.cooled(branch.pipe(), massFlow[b], water, around);
  }

  private double emission(int b, double water) {
    int r = model.branchRoom[b];
    double air = rooms.air(r, heat);
    double star = rooms.star(r, heat);
    double f = model.radiantFraction[b];
    double inlet = inlet(b, water, air, star);
    double capacityFlow = massFlow[b] * capacityPerFlow;
    double reference = f * star + (1 - f) * air;
    return emitters[b].atRest(capacityFlow, inlet, reference);
  }

  /**
   * Operative temperature of a branch's room were its emitter to give such a heat, everything else
   * being as it has settled [°C]: the room's load line.
   *
   * @param branch which
   * @param watts heat of its emitter [W]
   */
  public double operativeWith(int branch, double watts) {
    double settled = heat[branch];
    heat[branch] = watts;
    double there = operative(model.branchRoom[branch]);
    heat[branch] = settled;
    return there;
  }

  /**
   * What a branch's emitter would give in a room as warm as {@link #operativeWith} such a heat, its
   * valve answering to that warmth, the pressure over the branch and everything else being as it
   * has settled [W]. Room and valve agree where this is the heat itself: there they have settled.
   *
   * @param branch which
   * @param watts heat that makes the room so warm [W]
   */
  public double heatOffered(int branch, double watts) {
    double settled = heat[branch];
    heat[branch] = watts;
    double offered = emission(branch, pipes.arriving(branch));
    heat[branch] = settled;
    emission(branch, pipes.arriving(branch));
    return offered;
  }

  /** Flow through a branch [kg/s]. */
  public double massFlow(int branch) {
    return massFlow[branch];
  }

  /** How far a branch's valve is open, K_v/K_vs [-]; 0 for one that cannot open. */
  public double opening(int branch) {
    double most = model.arrangement.branches().get(branch).valve().kvMaximum();
    return most > 0 ? kv[branch] / most : 0;
  }

  /** Air temperature of a room [°C]. */
  public double air(int room) {
    return rooms.air(room, heat);
  }

  /** Operative temperature of a room [°C]. */
  public double operative(int room) {
    return (rooms.air(room, heat) + rooms.star(room, heat)) / 2;
  }

  /** Output of a branch's emitter [W]. */
  public double heat(int branch) {
    return heat[branch];
  }

  /** Every heat input: emitters by branch, then pipes by room; a new array [W]. */
  double[] heats() {
    return heat.clone();
  }

  /** Heat that pipes give to a room [W]. */
  public double pipeHeat(int room) {
    int input = model.pipeHeatInput[room];
    return input >= 0 ? heat[input] : 0;
  }

  /** Heat lost by mains outside the rooms [W]. */
  public double outsideLoss() {
    return pipes.outsideLoss();
  }

  /** Heat taken from the source [W]. */
  public double sourceHeat() {
    return sourceHeat;
  }

  /** Return temperature at the source, flows mixed [°C]; that of the flow where none runs. */
  public double returnTemperature() {
    double capacityFlow = network.totalFlow() * capacityPerFlow;
    return capacityFlow > 0 ? flowTemperature - sourceHeat / capacityFlow : flowTemperature;
  }

  /** Flow through the source [kg/s]. */
  public double totalFlow() {
    return network.totalFlow();
  }

  /** Flow temperature that the source can hold [°C]. */
  public double flowTemperature() {
    return flowTemperature;
  }
}
