package settle.sim.study;

/**
 * A heating season as hours at each outdoor temperature.
 *
 * @param climate what it is called
 * @param designOutdoor its design temperature [°C]
 * @param outdoor temperatures, ascending [°C]; not modified
 * @param hours how long each of them lasts [h]; not modified
 */
public record ClimateBins(String climate, double designOutdoor, double[] outdoor, double[] hours) {

  public ClimateBins {
    if (outdoor.length != hours.length || outdoor.length == 0) {
      throw new IllegalArgumentException(
          "season '" + climate + "' needs as many hours as temperatures, at least one");
    }
  }

  /**
   * What is between a temperature and the season, summed over the hours in which it is colder [K
   * h].
   *
   * @param base [°C]
   */
  public double degreeHours(double base) {
    double sum = 0;
    for (int i = 0; i < hours.length; i++) {
      sum += hours[i] * Math.max(base - outdoor[i], 0);
    }
    return sum;
  }
}
