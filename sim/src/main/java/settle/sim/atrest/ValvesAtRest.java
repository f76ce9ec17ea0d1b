package settle.sim.atrest;

import settle.sim.house.Branch;
import settle.sim.hydraulics.BranchFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.valve.Valve;

/** How far valves stand open at rest. */
final class ValvesAtRest {

  /** Agreement asked of the K_v of a head that feels its water [m³/h at 1 bar]. */
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
    Valve valve = branch.valve();
    return valve.feelsItsWater()
        ? felt(valve, branch.pipe(), flow, pressure, water, around, air, star, switchesAt)
        : valve.kvAtRest(at(air, star, 0, 0, 0, switchesAt));
  }

  /**
   * K_v at which a head that feels its water rests. The further open, the more water flows, the
   * hotter it arrives at the head and the less that head would open; the pressure across the valve,
   * which moves the set-point a little, falls too. So there is one K_v that the head would choose
   * if it were set, sought by one root for all of these together.
   */
  private double felt(
      Valve valve,
      Pipe pipe,
      BranchFlow flow,
      double pressure,
      double water,
      double around,
      double air,
      double star,
      double switchesAt) {
    double chosenShut =
        chosen(0, valve, pipe, flow, pressure, water, around, air, star, switchesAt);
    if (chosenShut <= 0) {
      return 0;
    }
    double open = valve.kvMaximum();
    double chosenOpen =
        chosen(open, valve, pipe, flow, pressure, water, around, air, star, switchesAt);
    if (chosenOpen >= open) {
      return open;
    }
    search.from(
        (chosenOpen + Math.min(chosenShut, open)) / 2,
        k -> chosen(k, valve, pipe, flow, pressure, water, around, air, star, switchesAt) - k,
        0,
        chosenShut,
        open,
        chosenOpen - open,
        1e-14,
        KV_AGREEMENT);
    return search.root();
  }

  /** K_v that a head chooses where the valve is set to another one [m³/h at 1 bar]. */
  private double chosen(
      double k,
      Valve valve,
      Pipe pipe,
      BranchFlow flow,
      double pressure,
      double water,
      double around,
      double air,
      double star,
      double switchesAt) {
    double massFlow = flow.solve(k, pressure);
    double inlet = pipes.cooled(pipe, massFlow, water, around);
    return valve.kvAtRest(at(air, star, massFlow, flow.valveDrop(), inlet, switchesAt));
  }

  /**
   * Where a valve is, its play and the duty of the pump as they now are.
   *
   * @param air of the room [°C]
   * @param star of the room [°C]
   * @param massFlow that it lets pass as it is set [kg/s]
   * @param drop pressure across it then [Pa]
   * @param inlet temperature of the water that then enters it [°C]
   * @param switchesAt how far above its set-point an actuator holds its room [K]
   */
  Valve.AtRest at(
      double air, double star, double massFlow, double drop, double inlet, double switchesAt) {
    return new Valve.AtRest(air, star, massFlow, drop, inlet, play, duty, switchesAt);
  }
}
