package settle.sim.engine;

import java.util.Arrays;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import settle.sim.emitter.EmitterStepper;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.BranchFlow;
import settle.sim.room.SteadyRooms;
import settle.sim.valve.CapacityCurve;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;

/**
 * A house at rest: where every room settles under weather, gains and flow temperature that stay as
 * they are, valves in the middle of their play. Solved, not run: for each branch the heat Q at
 * which emitter and room agree is a root of a falling function; the branches are swept until none
 * moves.
 */
public final class SettledHouse {

  private static final double HEAT_AGREEMENT = 1e-3;
  private static final int MOST_SWEEPS = 500;

  /** A step so long that an emitter has forgotten where it began [s]. */
  private static final double FOREVER = 1e8;

  private final HouseModel model;
  private final SteadyRooms rooms;
  private final EmitterStepper[] emitters;
  private final BranchFlow[] flows;
  private final double[] heat;
  private final double capacityPerFlow;
  private double flowTemperature;

  /**
   * Solves.
   *
   * @param model the prepared house
   * @param outdoor outdoor temperature [°C]
   * @param convective convective gain of each room [W]
   * @param radiant radiant gain of each room [W]
   * @param flowTemperature flow temperature asked of the source [°C]; lowered until its power
   *     suffices
   */
  public SettledHouse(
      HouseModel model,
      double outdoor,
      double[] convective,
      double[] radiant,
      double flowTemperature) {
    this.model = model;
    rooms = new SteadyRooms(model.fabric, outdoor, convective, radiant);
    emitters = model.emitterSteppers(20);
    flows = model.branchFlows();
    heat = new double[emitters.length];
    capacityPerFlow = model.house.water().specificHeat();
    this.flowTemperature = flowTemperature;
    double power = model.house.source().maximumPower(outdoor, flowTemperature);
    if (sweep(flowTemperature) > power * (1 + 1e-9)) {
      double coldest = Math.min(outdoor, flowTemperature - 1);
      this.flowTemperature =
          new BrentSolver(1e-6).solve(200, t -> sweep(t) - power, coldest, flowTemperature);
      sweep(this.flowTemperature);
    }
  }

  private double sweep(double flow) {
    for (int k = 0; k < MOST_SWEEPS; k++) {
      double moved = 0;
      for (int b = 0; b < heat.length; b++) {
        double before = heat[b];
        heat[b] = solveBranch(b, flow);
        moved = Math.max(moved, Math.abs(heat[b] - before));
      }
      if (moved < HEAT_AGREEMENT) {
        break;
      }
    }
    return Arrays.stream(heat).sum();
  }

  private double solveBranch(int b, double flow) {
    UnivariateFunction excess =
        q -> {
          heat[b] = q;
          return emission(b, flow) - q;
        };
    double most = excess.value(0);
    if (most <= HEAT_AGREEMENT) {
      return 0;
    }
    return new BrentSolver(1e-9, 1e-5).solve(200, excess, 0, most * (1 + 1e-9) + 1e-9);
  }

  private double emission(int b, double flow) {
    House house = model.house;
    Branch branch = model.arrangement.branches().get(b);
    int r = model.branchRoom[b];
    double air = rooms.air(r, heat);
    double star = rooms.star(r, heat);
    double f = model.radiantFraction[b];
    double kv =
        steadyKv(
            branch.valve(),
            flows[b],
            air,
            star,
            flow,
            house.distribution().pump().head(0, house.water().density()));
    double massFlow =
        flows[b].solve(kv, house.distribution().pump().head(0, house.water().density()));
    emitters[b].attempt(FOREVER, massFlow * capacityPerFlow, flow, f * star + (1 - f) * air);
    emitters[b].accept();
    emitters[b].attempt(FOREVER, massFlow * capacityPerFlow, flow, f * star + (1 - f) * air);
    return emitters[b].emitted() / FOREVER;
  }

  /**
   * K_v at rest; the pressure across the valve, which moves its set-point a little, is found by
   * repetition.
   */
  private static double steadyKv(
      Valve valve, BranchFlow branchFlow, double air, double star, double flow, double head) {
    if (!(valve instanceof WaxValve wax)) {
      return valve.kvMaximum();
    }
    double local = wax.sensing() == RoomSensing.AIR ? air : (air + star) / 2;
    double sensed = CapacityCurve.sensed(local, wax.waterInfluence(), flow, wax.bias());
    double kv = wax.kvNominal();
    for (int k = 0; k < 30; k++) {
      branchFlow.solve(kv, head);
      double set =
          CapacityCurve.underPressure(
              wax.setPoint(), wax.pressureInfluence(), branchFlow.valveDrop());
      double next =
          CapacityCurve.kv(set, wax.proportionalBand(), wax.kvNominal(), wax.kvMaximum(), sensed);
      if (Math.abs(next - kv) < 1e-12) {
        break;
      }
      kv = next;
    }
    return kv;
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

  /** Flow temperature that the source can hold [°C]. */
  public double flowTemperature() {
    return flowTemperature;
  }
}
