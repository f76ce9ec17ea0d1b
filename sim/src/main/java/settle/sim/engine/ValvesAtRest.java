package settle.sim.engine;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import settle.sim.house.Branch;
import settle.sim.hydraulics.BranchFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.valve.CapacityCurve;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;

/** How far valves stand open at rest, in the middle of their play. */
final class ValvesAtRest {

  /** Agreement asked of a wax head's K_v [m³/h at 1 bar]. */
  private static final double KV_AGREEMENT = 1e-12;

  private ValvesAtRest() {}

  /**
   * K_v at which a branch's valve rests [m³/h at 1 bar].
   *
   * @param branch the branch
   * @param flow its hydraulics
   * @param pressure over the branch [Pa]
   * @param pipes what cools the water on its way to the valve
   * @param water temperature at which it enters the branch pipe [°C]
   * @param around temperature about the branch pipe [°C]
   * @param air of the room [°C]
   * @param star of the room [°C]
   */
  static double kv(
      Branch branch,
      BranchFlow flow,
      double pressure,
      PipesAtRest pipes,
      double water,
      double around,
      double air,
      double star) {
    return branch.valve() instanceof WaxValve wax
        ? waxKv(wax, branch.pipe(), flow, pressure, pipes, water, around, air, star)
        : steadyKv(branch.valve(), air, star);
  }

  /**
   * K_v at which a wax head rests. The further open, the more water flows, the hotter it arrives at
   * the head and the less that head would open; the pressure across the valve, which moves the
   * set-point a little, falls too. So there is one K_v that the head would choose if it were set,
   * sought by one root for all of these together.
   */
  private static double waxKv(
      WaxValve wax,
      Pipe pipe,
      BranchFlow flow,
      double pressure,
      PipesAtRest pipes,
      double water,
      double around,
      double air,
      double star) {
    double local = felt(wax.sensing(), air, star);
    UnivariateFunction excess =
        k -> {
          double inlet = pipes.cooled(pipe, flow.solve(k, pressure), water, around);
          double sensed = CapacityCurve.sensed(local, wax.waterInfluence(), inlet, wax.bias());
          double set =
              CapacityCurve.underPressure(
                  wax.setPoint(), wax.pressureInfluence(), flow.valveDrop());
          return CapacityCurve.kv(
                  set, wax.proportionalBand(), wax.kvNominal(), wax.kvMaximum(), sensed)
              - k;
        };
    double chosenShut = excess.value(0);
    if (chosenShut <= 0) {
      return 0;
    }
    double open = wax.kvMaximum();
    double chosenOpen = excess.value(open) + open;
    return chosenOpen >= open
        ? open
        : new BrentSolver(1e-14, KV_AGREEMENT)
            .solve(100, excess, 0, open, (chosenOpen + Math.min(chosenShut, open)) / 2);
  }

  /**
   * K_v at which an electric valve rests on average [m³/h at 1 bar]; that of any other one, open.
   */
  private static double steadyKv(Valve valve, double air, double star) {
    if (valve instanceof OnOffActuator actuator) {
      double error = actuator.setPoint() - felt(actuator.sensing(), air, star);
      return actuator.kvMaximum() * OnOffActuator.meanLift(error);
    }
    if (valve instanceof MotorHead motor) {
      double error = motor.setPoint() - felt(motor.sensing(), air, star);
      return motor.kvMaximum() * motor.liftAtRest(error);
    }
    return valve.kvMaximum();
  }

  private static double felt(RoomSensing sensing, double air, double star) {
    return sensing == RoomSensing.AIR ? air : (air + star) / 2;
  }
}
