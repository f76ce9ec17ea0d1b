package settle.sim.tuning;

import settle.sim.study.ClimateBins;
import settle.sim.study.EuropeanSeason;

/**
 * The weather a plant is tuned for.
 *
 * @param usual temperature at which the heating season's heat is made on average [°C]: each bin
 *     weighs by its hours and by how far it is below the temperature from which no heat is needed
 * @param mild temperature above which {@link #MILD_SHARE} of that heat is made [°C]
 */
record Climate(double usual, double mild) {

  /** Share of the season's heat that is made in milder weather than a mild day's [-]. */
  private static final double MILD_SHARE = 0.1;

  /**
   * The European average season fitted to a design temperature; where that is so mild that there is
   * no season, its own weather is all there is.
   *
   * @param designOutdoor [°C]
   */
  static Climate of(double designOutdoor) {
    if (!(designOutdoor < EuropeanSeason.NO_LOAD)) {
      return new Climate(designOutdoor, designOutdoor);
    }
    ClimateBins bins = EuropeanSeason.AVERAGE.fittedTo(designOutdoor);
    double[] outdoor = bins.outdoor();
    double sum = 0;
    double all = 0;
    for (int i = 0; i < outdoor.length; i++) {
      sum += heat(bins, i) * outdoor[i];
      all += heat(bins, i);
    }
    int mild = outdoor.length - 1;
    double above = heat(bins, mild);
    while (above < MILD_SHARE * all) {
      mild--;
      above += heat(bins, mild);
    }
    return new Climate(sum / all, outdoor[mild]);
  }

  private static double heat(ClimateBins bins, int i) {
    return bins.hours()[i] * (EuropeanSeason.NO_LOAD - bins.outdoor()[i]);
  }
}
