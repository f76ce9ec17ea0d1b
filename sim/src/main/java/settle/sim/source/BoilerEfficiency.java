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
    ascending("return temperatures", returnTemperatures);
    ascending("loads", loads);
    if (values.length != returnTemperatures.length) {
      throw new IllegalArgumentException("efficiency needs one row per return temperature");
    }
    for (double[] row : values) {
      if (row.length != loads.length) {
        throw new IllegalArgumentException("efficiency needs one column per load");
      }
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
    int i = cell(returnTemperatures, returnTemperature);
    int j = cell(loads, load);
    double s = share(returnTemperatures, i, returnTemperature);
    double r = share(loads, j, load);
    int i1 = Math.min(i + 1, returnTemperatures.length - 1);
    int j1 = Math.min(j + 1, loads.length - 1);
    return (1 - s) * ((1 - r) * values[i][j] + r * values[i][j1])
        + s * ((1 - r) * values[i1][j] + r * values[i1][j1]);
  }

  private static int cell(double[] grid, double x) {
    int i = 0;
    while (i + 2 < grid.length && x >= grid[i + 1]) {
      i++;
    }
    return i;
  }

  private static double share(double[] grid, int i, double x) {
    if (grid.length == 1) {
      return 0;
    }
    return Math.min(Math.max((x - grid[i]) / (grid[i + 1] - grid[i]), 0), 1);
  }

  private static void ascending(String what, double[] grid) {
    if (grid.length == 0) {
      throw new IllegalArgumentException("efficiency: no " + what);
    }
    for (int i = 1; i < grid.length; i++) {
      if (!(grid[i] > grid[i - 1])) {
        throw new IllegalArgumentException("efficiency: " + what + " must ascend");
      }
    }
  }
}
