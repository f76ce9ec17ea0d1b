package settle.sim.engine;

/**
 * Resolution of a run relative to the usual, in all that can be chosen: shares of the usual lengths
 * and tolerances.
 *
 * @param steps of the lengths that accuracy asks of a step, shortest and longest step apart [-]
 * @param agreement of what source, water, valves and rooms may differ by within a step [-]
 * @param parcels of the differences and lengths up to which water is mixed or joined [-]
 */
public record Fineness(double steps, double agreement, double parcels) {

  /** The usual resolution. */
  public static final Fineness USUAL = new Fineness(1, 1, 1);

  /**
   * So many times finer: agreement and parcels more than steps, so that what they leave open falls
   * with the steps' error.
   *
   * @param times how many times, >= 1 [-]
   */
  public static Fineness finer(double times) {
    return new Fineness(1 / times, 1 / (times * times), 1 / times);
  }
}
