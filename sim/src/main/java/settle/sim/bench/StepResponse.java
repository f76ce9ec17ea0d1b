package settle.sim.bench;

/**
 * What the flow does after the temperature at the head has jumped.
 *
 * @param time since then [s], from 0
 * @param flow at each instant [kg/s]
 * @param settled flow after a long rest [kg/s]
 */
public record StepResponse(double[] time, double[] flow, double settled) {

  /** Share of the change at which EN 215's response time is read here, 1 - 1/e [-]. */
  public static final double READ_AT = 1 - Math.exp(-1);

  /** The other share of the two-point method, 1 - e^(-1/3) [-]. */
  private static final double EARLY = 1 - Math.exp(-1 / 3.0);

  /** Flow before [kg/s]. */
  public double before() {
    return flow[0];
  }

  /** Time after which a share of the change has come about [s]; infinite if not recorded. */
  public double timeTo(double share) {
    double wanted = before() + share * (settled - before());
    for (int i = 1; i < time.length; i++) {
      boolean there = settled > before() ? flow[i] >= wanted : flow[i] <= wanted;
      if (there) {
        double part = (wanted - flow[i - 1]) / (flow[i] - flow[i - 1]);
        return time[i - 1] + part * (time[i] - time[i - 1]);
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Time after which the flow begins to move [s]; infinite if it never does. */
  public double standsStill() {
    double least = 1e-3 * Math.abs(settled - before());
    for (int i = 1; i < time.length; i++) {
      if (Math.abs(flow[i] - before()) > least) {
        return time[i - 1];
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /**
   * Time constant of the lag with dead time that passes through two points of the response, tau =
   * 3/2 (t_63 - t_28) [s]. Smith's two-point method, as in Seborg, Edgar and Mellichamp, Process
   * Dynamics and Control, 2nd edition 2004, section 7.2, from memory.
   */
  public double timeConstant() {
    return 1.5 * (timeTo(READ_AT) - timeTo(EARLY));
  }

  /** Dead time of that lag, theta = t_63 - tau [s]. */
  public double deadTime() {
    return timeTo(READ_AT) - timeConstant();
  }
}
