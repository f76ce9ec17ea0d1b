package settle.sim.source;

/**
 * Gross efficiency of a boiler over return temperature and load, bilinear inside its table and held
 * constant outside.
 *
 * @param returnTemperatures ascending [°C]
 * @param loads ascending share of the largest output [-]
 * @param values gross efficiency [-], one row per return temperature, one column per load
 * @param dewPoint return temperature below which the flue gas condenses [°C]
 */
public record BoilerEfficiency(
    double[] returnTemperatures, double[] loads, double[][] values, double dewPoint) {

  public BoilerEfficiency {
    Grid.requireAscending("return temperatures of the efficiency", returnTemperatures);
    Grid.requireAscending("loads of the efficiency", loads);
    Grid.requireShape("efficiency", values, returnTemperatures.length, loads.length);
    for (double[] row : values) {
      for (double value : row) {
        if (!(value > 0 && value <= 1)) {
          throw new IllegalArgumentException("efficiency " + value + " must lie in 0..1 (gross)");
        }
      }
    }
  }

  /**
   * Gross efficiency [-].
   *
   * @param returnTemperature [°C]
   * @param load share of the largest output [-]
   */
  public double at(double returnTemperature, double load) {
    return Grid.bilinear(returnTemperatures, loads, values, returnTemperature, load);
  }
}
