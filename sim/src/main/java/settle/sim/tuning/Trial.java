package settle.sim.tuning;

import java.util.ArrayList;
import java.util.List;
import settle.sim.house.Aims;

/**
 * What settings are worth: the energy they take, how far the rooms are from want, and how far they
 * miss the aims.
 *
 * <pre>
 *   J = E/E_0 + c D + sum over aims of p (miss + miss²)
 * </pre>
 *
 * <p>E is the source's input on a usual day, E_0 what it is as found, D the mean square distance
 * from want on that day. The aims of a usual day are asked of the house as stated, those of the
 * coldest weather with a {@link Reserve}, so that settings do not stand on the edge.
 */
final class Trial {

  /**
   * What a mean square distance from want of 1 K² is worth, as a share of the energy [1/K²]: so
   * much that energy only decides between settings about equally comfortable. Common practice, no
   * source.
   */
  static final double DISCOMFORT = 0.25;

  /** What missing an aim by 1 K, 1 h or one start an hour is worth [-]. */
  private static final double MISS = 1;

  private final Aims aims;
  private final double usualOutdoor;
  private final Reserve reserve;
  private final double inputAsFound;

  /**
   * Prepares.
   *
   * @param found the plant as found: energy is measured against what it takes
   * @param start the plant with the settings the search begins with
   * @param usualOutdoor temperature of a usual day [°C]
   * @param sure share of houses in which each room is to be held [-]
   */
  Trial(Plant found, Plant start, double usualOutdoor, double sure) {
    aims = found.house().aims();
    this.usualOutdoor = usualOutdoor;
    reserve = new Reserve(start, sure);
    inputAsFound = Math.max(Day.searched(found, usualOutdoor).input(), 1);
  }

  /** What a choice of settings comes to. */
  Worth worth(Plant plant) {
    Day usual = Day.searched(plant, usualOutdoor);
    double misses = missed(Aim.ofUsual(usual, aims)) + missed(reserve.aims(plant));
    return new Worth(usual.input() / inputAsFound, DISCOMFORT * usual.deviation(), misses);
  }

  private static double missed(List<Aim> all) {
    double sum = 0;
    for (Aim aim : all) {
      double miss = aim.met() ? 0 : aim.beyond();
      sum += MISS * (miss + miss * miss);
    }
    return sum;
  }

  /** A usual day in the house as stated. */
  Day usual(Plant plant) {
    return Day.of(plant, usualOutdoor);
  }

  /** The coldest day in the house as stated. */
  Day coldest(Plant plant) {
    return Day.of(plant, plant.house().designOutdoor());
  }

  /** What is asked, with what comes of it in the house as stated. */
  List<Aim> aims(Plant plant, Day usual) {
    List<Aim> all = new ArrayList<>(Aim.ofColdest(plant, plant.house().designOutdoor()));
    all.addAll(Aim.ofUsual(usual, aims));
    return all;
  }
}
