package settle.sim.tuning;

import java.util.Set;

/**
 * What a choice of settings comes to on a usual day, in money, the less the better.
 *
 * @param energy what source and pump cost [currency/d]
 * @param discomfort price of the distance from want [currency/d]
 * @param misses price of the aims missed, those of the coldest weather with a reserve [currency/d]
 * @param effort price of the settings that have to be changed [currency/d]
 * @param missed rooms of which an aim is missed
 */
public record Worth(
    double energy, double discomfort, double misses, double effort, Set<String> missed) {

  public Worth {
    missed = Set.copyOf(missed);
  }

  /** Their sum, which a search makes small. */
  public double total() {
    return energy + discomfort + misses + effort;
  }
}
