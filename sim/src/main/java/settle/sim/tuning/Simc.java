package settle.sim.tuning;

/**
 * PI settings by a published rule (Skogestad 2003, J. Process Control 13, 291-309: SIMC):
 *
 * <pre>
 *   K_c = tau/(k (tau_c + theta)),   T_i = min(tau, 4 (tau_c + theta))
 * </pre>
 *
 * @param gain K_c [1/K where k is in K]
 * @param integralTime T_i [s]
 * @param closedLoop tau_c: the time constant asked of the closed loop [s]
 */
public record Simc(double gain, double integralTime, double closedLoop) {

  /** The rule. */
  public static Simc pi(FirstOrderDeadTime plant, double closedLoop) {
    double answer = closedLoop + plant.deadTime();
    return new Simc(
        plant.lag() / (plant.gain() * answer), Math.min(plant.lag(), 4 * answer), closedLoop);
  }

  /** The tightest that is still robust: tau_c = theta. */
  public static Simc tight(FirstOrderDeadTime plant) {
    return pi(plant, plant.deadTime());
  }
}
