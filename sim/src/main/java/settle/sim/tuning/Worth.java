package settle.sim.tuning;

/**
 * What a choice of settings comes to, the less the better.
 *
 * @param energy input on a usual day over what it is as found [-]
 * @param discomfort weight of the distance from want [-]
 * @param misses weight of the aims missed, those of the coldest weather with a reserve [-]
 */
public record Worth(double energy, double discomfort, double misses) {

  /** Their sum, which a search makes small. */
  public double total() {
    return energy + discomfort + misses;
  }
}
