package settle.sim.source;

/**
 * The bin method for heat pumps, EN 14825:2018 clause 8 (from memory): what a unit takes in a bin,
 * and its factor over a season,
 *
 * <pre>
 *   COP_bin = COP_d CR/(Cc CR + 1 - Cc)   with CR = P_h/P_least where P_h is below the least output
 *   elbu    = max(P_h - capacity, 0)
 *   SCOP_on = sum h P_h / sum h [(P_h - elbu)/COP_bin + elbu]
 * </pre>
 *
 * <p>COP_bin is what a unit has that takes (1 - Cc) of its running power while it rests: a start
 * costs that much. A unit of one power has its capacity for least output. Crankcase heater, standby
 * and frost protection are left out: SCOP_on, not SCOP.
 */
public final class SeasonalPerformance {

  /** Degradation coefficient Cc of a unit that heats water, where none was measured [-]. */
  public static final double DEGRADATION = 0.9;

  private SeasonalPerformance() {}

  /**
   * COP while cycling.
   *
   * @param cop COP_d while running [-]
   * @param ratio CR, load over least output [-]; from 1 on it runs through
   */
  public static double cycling(double cop, double ratio) {
    return cycling(cop, ratio, DEGRADATION);
  }

  private static double cycling(double cop, double ratio, double degradation) {
    double cr = Math.min(ratio, 1);
    return cop * cr / (degradation * cr + 1 - degradation);
  }

  /**
   * Heat that electric heaters have to add [W].
   *
   * @param load P_h [W]
   * @param capacity [W]
   */
  public static double backup(double load, double capacity) {
    return Math.max(load - capacity, 0);
  }

  /**
   * Electricity taken [W], electric heaters included.
   *
   * @param load P_h, > 0 [W]
   * @param capacity [W]
   * @param least least output while running [W]
   * @param cop COP_d while running [-]
   */
  public static double input(double load, double capacity, double least, double cop) {
    return input(load, capacity, least, cop, DEGRADATION);
  }

  /**
   * Electricity taken [W], electric heaters included.
   *
   * @param load P_h, > 0 [W]
   * @param capacity [W]
   * @param least least output while running [W]
   * @param cop COP_d while running [-]
   * @param degradation Cc [-]
   */
  public static double input(
      double load, double capacity, double least, double cop, double degradation) {
    double backup = backup(load, capacity);
    double compressor = load - backup;
    return compressor / cycling(cop, compressor / least, degradation) + backup;
  }

  /**
   * SCOP_on [-]; arrays of one entry a bin, not modified.
   *
   * @param hours h, in any unit
   * @param load P_h, > 0 [W]
   * @param capacity [W]
   * @param least least output while running [W]
   * @param cop COP_d while running [-]
   */
  public static double scop(
      double[] hours, double[] load, double[] capacity, double[] least, double[] cop) {
    double heat = 0;
    double input = 0;
    for (int i = 0; i < hours.length; i++) {
      heat += hours[i] * load[i];
      input += hours[i] * input(load[i], capacity[i], least[i], cop[i]);
    }
    return heat / input;
  }
}
