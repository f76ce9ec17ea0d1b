package settle.sim.source;

import java.util.Optional;

/**
 * Gross efficiency of a boiler: by its flue, or as a table has it where one is given.
 *
 * @param flue what its gas carries away; what of its vapour condenses follows from it in any case
 * @param table measured or declared values; empty to reckon by the flue
 */
public record BoilerEfficiency(Flue flue, Optional<Table> table) {

  /**
   * Gross efficiency over return temperature and load, bilinear inside and held constant outside.
   *
   * @param returnTemperatures ascending [°C]
   * @param loads ascending share of the largest output [-]
   * @param values gross efficiency [-], one row per return temperature, one column per load
   */
  public record Table(double[] returnTemperatures, double[] loads, double[][] values) {

    public Table {
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
  }

  /**
   * A table of values for a flue that is usual but for its dew point.
   *
   * @param returnTemperatures ascending [°C]
   * @param loads ascending share of the largest output [-]
   * @param values gross efficiency [-], one row per return temperature, one column per load
   * @param dewPoint of the flue gas [°C]
   */
  public BoilerEfficiency(
      double[] returnTemperatures, double[] loads, double[][] values, double dewPoint) {
    this(Flue.usual(dewPoint), Optional.of(new Table(returnTemperatures, loads, values)));
  }

  /**
   * Gross efficiency [-].
   *
   * @param entering temperature of the water that enters the boiler [°C]
   * @param load share of the largest output [-]
   */
  public double at(double entering, double load) {
    if (table.isEmpty()) {
      return flue.efficiency(entering);
    }
    Table t = table.get();
    return Grid.bilinear(t.returnTemperatures, t.loads, t.values, entering, load);
  }
}
