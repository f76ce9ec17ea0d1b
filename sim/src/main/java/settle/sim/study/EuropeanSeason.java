package settle.sim.study;

/**
 * The reference heating seasons of EN 14825:2018, Annex B: hours at each whole degree from the
 * design temperature to 15 °C. From memory; checked by their sums, which give the equivalent hours
 * at full load that Regulation (EU) 811/2013 prints.
 */
public enum EuropeanSeason {
  /** Like Strasbourg. */
  AVERAGE(
      "average",
      -10,
      new double[] {
        1, 25, 23, 24, 27, 68, 91, 89, 165, 173, 240, 280, 320, 357, 356, 303, 330, 326, 348, 335,
        315, 215, 169, 151, 105, 74
      }),
  /** Like Athens. */
  WARMER(
      "warmer", 2, new double[] {3, 22, 63, 63, 175, 162, 259, 360, 428, 430, 503, 444, 384, 294}),
  /** Like Helsinki. */
  COLDER(
      "colder",
      -22,
      new double[] {
        1, 6, 13, 17, 19, 26, 39, 41, 35, 52, 37, 41, 43, 54, 90, 125, 169, 195, 278, 306, 454, 385,
        490, 533, 380, 228, 261, 279, 229, 269, 233, 230, 243, 191, 146, 150, 97, 61
      });

  /** Outdoor temperature at which the standard's buildings need no heat [°C]. */
  public static final double NO_LOAD = 16;

  /** Mildest design temperature to which a season is fitted, a degree below no load [°C]. */
  public static final double MILDEST_DESIGN = NO_LOAD - 1;

  private final String climate;
  private final double designOutdoor;
  private final double[] hours;

  EuropeanSeason(String climate, double designOutdoor, double[] hours) {
    this.climate = climate;
    this.designOutdoor = designOutdoor;
    this.hours = hours;
  }

  /** The season as the standard has it. */
  public ClimateBins bins() {
    return fittedTo(designOutdoor);
  }

  /**
   * The season for a house of another design temperature: as many hours at each part load,
   *
   * <pre>
   *   16 - T = (16 - T_j) (16 - T_design)/(16 - T_designh)
   * </pre>
   *
   * <p>so that the coldest bin is the house's design weather and the season ends where it did.
   * Moving all bins by one shift would leave a mild house with hardly any season: by 7 K, from -10
   * to -3 °C, it takes away more than a quarter of the hours and three fifths of the degree-hours.
   *
   * @param designOutdoorOfHouse outdoor design temperature of the house [°C]; above {@link
   *     #MILDEST_DESIGN} the season of that, since there is none that is milder
   */
  public ClimateBins fittedTo(double designOutdoorOfHouse) {
    double design = Math.min(designOutdoorOfHouse, MILDEST_DESIGN);
    double stretch = (NO_LOAD - design) / (NO_LOAD - designOutdoor);
    double[] outdoor = new double[hours.length];
    for (int i = 0; i < hours.length; i++) {
      outdoor[i] = NO_LOAD - (NO_LOAD - (designOutdoor + i)) * stretch;
    }
    return new ClimateBins(climate, design, outdoor, hours.clone());
  }

  /** Design temperature T_designh [°C]. */
  public double designOutdoor() {
    return designOutdoor;
  }

  /**
   * Part load ratio (T - 16)/(T_designh - 16) [-].
   *
   * @param outdoor T [°C]
   */
  public double partLoad(double outdoor) {
    return (outdoor - NO_LOAD) / (designOutdoor - NO_LOAD);
  }

  /** Hours at full load that take as much heat as the season, H_HE [h]. */
  public double fullLoadHours() {
    return bins().degreeHours(NO_LOAD) / (NO_LOAD - designOutdoor);
  }
}
