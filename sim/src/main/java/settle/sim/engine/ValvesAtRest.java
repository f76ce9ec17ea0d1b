package settle.sim.engine;

import settle.sim.house.Branch;
import settle.sim.hydraulics.BranchFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.valve.CapacityCurve;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;

/** How far valves stand open at rest. */
final class ValvesAtRest {

  /** Agreement asked of a wax head's K_v [m³/h at 1 bar]. */
  private static final double KV_AGREEMENT = 1e-12;

  private final PipesAtRest pipes;
  private final RootSearch search = new RootSearch();

  /** Where heads stand in their play: 0 in the middle, 1 as far shut as it lets them, -1 open. */
  double play;

  /** Share of the time in which the pump runs and water is hot [-]. */
  double duty = 1;

  /**
   * @param pipes what cools the water on its way to the valves
   */
  ValvesAtRest(PipesAtRest pipes) {
    this.pipes = pipes;
  }

  /**
   * K_v at which a branch's valve rests [m³/h at 1 bar].
   *
   * @param branch the branch
   * @param flow its hydraulics
   * @param pressure over the branch [Pa]
   * @param water temperature at which it enters the branch pipe [°C]
   * @param around temperature about the branch pipe [°C]
   * @param air of the room [°C]
   * @param star of the room [°C]
   * @param switchesAt how far above its set-point an actuator holds its room [K]
   */
  double kv(
      Branch branch,
      BranchFlow flow,
      double pressure,
      double water,
      double around,
      double air,
      double star,
      double switchesAt) {
    return branch.valve() instanceof WaxValve wax
        ? waxKv(wax, branch.pipe(), flow, pressure, water, around, air, star)
        : chosen(branch.valve(), 0, 0, 0, air, star, switchesAt);
  }

  /**
   * K_v at which a wax head rests. The further open, the more water flows, the hotter it arrives at
   * the head and the less that head would open; the pressure across the valve, which moves the
   * set-point a little, falls too. So there is one K_v that the head would choose if it were set,
   * sought by one root for all of these together.
   */
  private double waxKv(
      WaxValve wax,
      Pipe pipe,
      BranchFlow flow,
      double pressure,
      double water,
      double around,
      double air,
      double star) {
    double chosenShut = chosenKv(0, wax, pipe, flow, pressure, water, around, air, star);
    if (chosenShut <= 0) {
      return 0;
    }
    double open = wax.kvMaximum();
    double chosenOpen = chosenKv(open, wax, pipe, flow, pressure, water, around, air, star);
    if (chosenOpen >= open) {
      return open;
    }
    search.from(
        (chosenOpen + Math.min(chosenShut, open)) / 2,
        k -> chosenKv(k, wax, pipe, flow, pressure, water, around, air, star) - k,
        0,
        chosenShut,
        open,
        chosenOpen - open,
        1e-14,
        KV_AGREEMENT);
    return search.root();
  }

  /** K_v that a wax head chooses where the valve is set to another one [m³/h at 1 bar]. */
  private double chosenKv(
      double k,
      WaxValve wax,
      Pipe pipe,
      BranchFlow flow,
      double pressure,
      double water,
      double around,
      double air,
      double star) {
    double massFlow = flow.solve(k, pressure);
    double inlet = pipes.cooled(pipe, massFlow, water, around);
    return chosen(wax, massFlow, flow.valveDrop(), inlet, air, star, 0);
  }

  /**
   * K_v that what moves a valve chooses [m³/h at 1 bar]: a head that follows the room, the mean of
   * one that opens and shuts.
   *
   * @param valve the valve
   * @param massFlow that it lets pass as it is set [kg/s]
   * @param drop pressure across it then [Pa]
   * @param inlet temperature of the water that then enters it [°C]
   * @param air of the room [°C]
   * @param star of the room [°C]
   * @param switchesAt how far above its set-point an actuator holds its room [K]
   */
  double chosen(
      Valve valve,
      double massFlow,
      double drop,
      double inlet,
      double air,
      double star,
      double switchesAt) {
    if (valve instanceof WaxValve wax) {
      double local = felt(wax.sensing(), air, star) + play * wax.play() / 2;
      double hot = CapacityCurve.headWater(massFlow, inlet, air);
      double body = air + duty * (hot - air);
      double sensed = CapacityCurve.sensed(local, wax.waterInfluence(), body, wax.bias());
      double set = CapacityCurve.underPressure(wax.setPoint(), wax.pressureInfluence(), drop);
      return CapacityCurve.kv(
          set, wax.proportionalBand(), wax.kvNominal(), wax.kvMaximum(), sensed);
    }
    if (valve instanceof OnOffActuator actuator) {
      double error = actuator.setPoint() + switchesAt - felt(actuator.sensing(), air, star);
      return actuator.kvMaximum() * OnOffActuator.meanLift(error);
    }
    if (valve instanceof MotorHead motor) {
      double error = motor.setPoint() - felt(motor.sensing(), air, star);
      return motor.kvMaximum() * motor.liftAtRest(error);
    }
    return valve.kvMaximum();
  }

  /**
   * How much warmer it would have to be at what moves a valve for it to rest as it is set [K]: of a
   * valve that rests part open nothing, above 0 where it would open further. It falls as the valve
   * is set further open, and unlike what the valve chooses it does not stop at shut and open.
   *
   * @param valve the valve, not a fixed opening
   * @param k K_v that it is set to [m³/h at 1 bar]
   * @param massFlow that it then lets pass [kg/s]
   * @param drop pressure across it then [Pa]
   * @param inlet temperature of the water that then enters it [°C]
   * @param air of the room [°C]
   * @param star of the room [°C]
   * @param switchesAt how far above its set-point an actuator holds its room [K]
   */
  double lacking(
      Valve valve,
      double k,
      double massFlow,
      double drop,
      double inlet,
      double air,
      double star,
      double switchesAt) {
    if (valve instanceof WaxValve wax) {
      double local = felt(wax.sensing(), air, star) + play * wax.play() / 2;
      double hot = CapacityCurve.headWater(massFlow, inlet, air);
      double body = air + duty * (hot - air);
      double sensed = CapacityCurve.sensed(local, wax.waterInfluence(), body, wax.bias());
      double set = CapacityCurve.underPressure(wax.setPoint(), wax.pressureInfluence(), drop);
      return set + wax.proportionalBand() * (1 - k / wax.kvNominal()) - sensed;
    }
    double lift = k / valve.kvMaximum();
    if (valve instanceof OnOffActuator actuator) {
      double holds = actuator.setPoint() + switchesAt - OnOffActuator.meanError(lift);
      return holds - felt(actuator.sensing(), air, star);
    }
    MotorHead motor = (MotorHead) valve;
    return motor.setPoint() - motor.errorAtRest(lift) - felt(motor.sensing(), air, star);
  }

  static double felt(RoomSensing sensing, double air, double star) {
    return sensing == RoomSensing.AIR ? air : (air + star) / 2;
  }
}
