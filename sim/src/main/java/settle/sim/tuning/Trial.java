package settle.sim.tuning;

import java.util.List;
import java.util.stream.IntStream;
import settle.sim.house.Aims;

/**
 * What settings are worth: the energy they take, how far the rooms are from want, and how far they
 * miss the aims.
 *
 * <pre>
 *   J = sum over days of w (E/E_0 + c D) + sum over aims of p (miss + miss²)
 * </pre>
 *
 * <p>E is the source's input, E_0 what it is as found, D the mean square distance from want. The
 * usual day, at the heating season's mean temperature, is lived in the house as stated; the coldest
 * in the {@link HardHouse}, so that settings do not stand on the edge.
 */
final class Trial {

  /**
   * What a mean square distance from want of 1 K² is worth, as a share of the energy [1/K²]: so
   * much that energy only decides between settings about equally comfortable. Common practice, no
   * source.
   */
  static final double DISCOMFORT = 0.25;

  /** Weight of the coldest day [-]: one in twenty is about as cold. Common practice, no source. */
  static final double COLD_WEIGHT = 0.05;

  /** What missing an aim by 1 K, 1 h or one start an hour is worth [-]. */
  private static final double MISS = 1;

  /** The most that a warm-up which never ends counts as late [h]. */
  private static final double NEVER = 12;

  private final Aims aims;
  private final double usualOutdoor;
  private final HardHouse hard;
  private final double usualInput;
  private final double coldInput;

  /**
   * Prepares.
   *
   * @param found the plant as found: energy is measured against what it takes
   * @param start the plant with the settings the search begins with
   * @param usualOutdoor temperature of a usual day [°C]
   */
  Trial(Plant found, Plant start, double usualOutdoor) {
    aims = found.house().aims();
    this.usualOutdoor = usualOutdoor;
    hard = new HardHouse(start);
    List<Day> days = days(found);
    usualInput = Math.max(days.get(0).input(), 1);
    coldInput = Math.max(days.get(1).input(), 1);
  }

  /**
   * What a choice of settings comes to.
   *
   * @param energy input over what it is as found, weighted over the days [-]
   * @param discomfort weight of the distance from want [-]
   * @param misses weight of the aims missed [-]
   */
  record Score(double energy, double discomfort, double misses) {
    double total() {
      return energy + discomfort + misses;
    }
  }

  Score score(Plant plant) {
    List<Day> days = days(plant);
    Day usual = days.get(0);
    Day cold = days.get(1);
    double misses = missed(Aim.ofUsual(usual, aims)) + missed(Aim.ofColdest(cold, aims));
    return new Score(
        weighted(usual.input() / usualInput, cold.input() / coldInput),
        DISCOMFORT * weighted(usual.deviation(), cold.deviation()),
        misses);
  }

  private static double weighted(double usual, double cold) {
    return (1 - COLD_WEIGHT) * usual + COLD_WEIGHT * cold;
  }

  private static double missed(List<Aim> all) {
    double sum = 0;
    for (Aim aim : all) {
      double unit = aim.kind() == Aim.Kind.WARM_UP ? 3600 : 1;
      double miss = Math.min(aim.miss() / unit, NEVER);
      sum += MISS * (miss + miss * miss);
    }
    return sum;
  }

  /** The usual day and the hard house's coldest, each a run of its own. */
  private List<Day> days(Plant plant) {
    return IntStream.range(0, 2)
        .parallel()
        .mapToObj(i -> i == 0 ? Day.searched(plant, usualOutdoor) : hard.coldest(plant))
        .toList();
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
  List<Aim> aims(Day usual, Day coldest) {
    return java.util.stream.Stream.concat(
            Aim.ofColdest(coldest, aims).stream(), Aim.ofUsual(usual, aims).stream())
        .toList();
  }
}
