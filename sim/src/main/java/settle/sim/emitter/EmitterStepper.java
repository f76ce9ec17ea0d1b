package settle.sim.emitter;

/**
 * Steps the water in one emitter. A step is first tried, as often as its neighbours need to agree
 * with it, then accepted: a trial always begins from the last accepted state.
 */
public interface EmitterStepper {

  /**
   * Says how the flow goes in the steps tried from now on; an emitter that takes no notice is as if
   * it were held at its mean.
   *
   * @param share by what share of its mean it ends above that, rising or falling evenly [-]
   */
  default void flowEndsAbove(double share) {}

  /**
   * Tries a step.
   *
   * @param length of the step [s], > 0
   * @param capacityFlow m c of the water [W/K], >= 0
   * @param inlet mean inlet temperature [°C]; ignored without flow
   * @param reference mean temperature the emission refers to, T_ref [°C]
   */
  void attempt(double length, double capacityFlow, double inlet, double reference);

  /**
   * Output with water, metal and room at rest [W], whatever the state is.
   *
   * @param capacityFlow m c of the water [W/K], >= 0
   * @param inlet inlet temperature [°C]
   * @param reference temperature the emission refers to, T_ref [°C]
   */
  double atRest(double capacityFlow, double inlet, double reference);

  /**
   * By how much the output at rest that was asked for last rises with the inlet, and falls with the
   * reference [W/K]; not a number for one that has to be asked beside where it stands.
   */
  default double perExcessAtRest() {
    return Double.NaN;
  }

  /**
   * By how much it rises with the flow [W per W/K], where it was above nothing; not a number for
   * one that has to be asked beside where it stands.
   */
  default double perFlowAtRest() {
    return Double.NaN;
  }

  /** Whether the attempt came to agree with itself; a step with one that did not is not to stay. */
  boolean agreed();

  /** Heat emitted over the attempted step [J]. */
  double emitted();

  /**
   * Flow-weighted mean temperature of the water that left in the attempted step [°C]; the last
   * cell's mean without flow.
   */
  double meanReturn();

  /**
   * Emission at the end of the attempted step [W].
   *
   * @param reference temperature it refers to then, T_ref [°C]: over a long step a room moves far
   *     from its mean
   */
  double emissionNow(double reference);

  /** Makes the attempted step the state. */
  void accept();

  /** Heat stored in water and metal, above 0 °C [J]. */
  double stored();

  /**
   * Temperature along the path in the accepted state.
   *
   * @param shares where, as shares of the way from inlet to outlet [-], ascending; not modified
   * @param temperatures receives the temperatures [°C], same length
   */
  void profile(double[] shares, double[] temperatures);

  /**
   * Temperature that its face has somewhere along its run in the accepted state [°C]: where water
   * goes out and comes back, between both.
   *
   * @param share where, as a share of the run from where the water comes in [-]
   */
  default double face(double share) {
    double[] there = new double[1];
    profile(new double[] {share}, there);
    return there[0];
  }
}
