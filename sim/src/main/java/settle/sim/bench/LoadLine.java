package settle.sim.bench;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import settle.sim.atrest.SettledHouse;
import settle.sim.model.HouseModel;

/**
 * The room's load line and the valve's line across it, at rest in weather that stays. The load line
 * says how much heat keeps the room so warm; the valve's line how much it lets the emitter give in
 * a room so warm, head in the middle of its play. Where they cross the room settles.
 *
 * @param outdoor outdoor temperature [°C]
 * @param flowTemperature of the water [°C]
 * @param room operative temperatures of the room, ascending [°C]
 * @param load heat that keeps it so warm [W]
 * @param offered heat that its emitter gives there [W]
 * @param crossing temperature at which the lines cross [°C]
 * @param heat heat there [W]
 * @param settled temperature at which the house, solved as a whole, settles [°C]: the same
 * @param flow through the branch there [kg/s]
 * @param opening of the valve there, K_v/K_vs [-]
 */
public record LoadLine(
    double outdoor,
    double flowTemperature,
    double[] room,
    double[] load,
    double[] offered,
    double crossing,
    double heat,
    double settled,
    double flow,
    double opening) {

  private static final int POINTS = 241;

  /** How far the lines are followed to either side of what lies between want and crossing [K]. */
  private static final double AROUND = 2.5;

  /**
   * Draws the lines of one branch, without sun and other gains.
   *
   * @param model the house as it is run
   * @param branch which
   * @param outdoor outdoor temperature [°C]
   */
  static LoadLine of(HouseModel model, int branch, double outdoor) {
    int r = model.house().roomIndex(model.arrangement().branches().get(branch).room());
    double want = model.house().dayWant(r);
    double[] none = new double[model.house().rooms().size()];
    SettledHouse house = new SettledHouse(model, outdoor, none, none).asControlled();
    double settled = house.operative(r);
    double flow = house.massFlow(branch);
    double opening = house.opening(branch);
    // The load line is straight: two points give it.
    double unheated = house.operativeWith(branch, 0);
    double perWatt = (house.operativeWith(branch, 1000) - unheated) / 1000;
    double low = Math.max(Math.floor(Math.min(want, settled) - AROUND), unheated);
    double high = Math.ceil(Math.max(want, settled) + AROUND);
    double[] room = new double[POINTS];
    double[] load = new double[POINTS];
    double[] offered = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      room[i] = low + (high - low) * i / (POINTS - 1);
      load[i] = (room[i] - unheated) / perWatt;
      offered[i] = house.heatOffered(branch, load[i]);
    }
    UnivariateFunction lacking = watts -> house.heatOffered(branch, watts) - watts;
    double most = load[POINTS - 1];
    double heat =
        lacking.value(0) <= 0 ? 0 : new BrentSolver(1e-9, 1e-3).solve(200, lacking, 0, most);
    return new LoadLine(
        outdoor,
        house.flowTemperature(),
        room,
        load,
        offered,
        unheated + perWatt * heat,
        heat,
        settled,
        flow,
        opening);
  }
}
