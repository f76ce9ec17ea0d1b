package settle.sim.source;

/**
 * Water that keeps a source running for so long within its switching band: what it makes beyond
 * what is taken warms the water by no more than the swing,
 *
 * <pre>
 *   V = (P - Q) t / (rho c dT)
 * </pre>
 *
 * <p>An elementary balance of one mixed volume. It holds where the water goes round often in a run;
 * where the sensor sits in the flow, each run begins with a jump of P/(m c) that uses up part of
 * the swing.
 */
public final class WaterNeeded {

  /**
   * Outdoor temperature for which mild weather stands, in which a heat pump's water is judged
   * whatever weather a run has [°C]; common practice, no source.
   */
  public static final double MILD = 10;

  /**
   * Starts an hour above which a compressor wears, in a run as at rest [1/h]; common practice, no
   * source.
   */
  public static final double OFTEN = 3;

  private WaterNeeded() {}

  /**
   * Least volume while heat is taken [m³]; 0 where all of it is.
   *
   * @param power P that the source makes at least [W]
   * @param load Q taken meanwhile [W]
   * @param time t it shall run [s]
   * @param swing dT of its water from start to stop, twice the half-band [K]
   * @param volumetricHeat rho c of the water [J/(m³ K)]
   */
  public static double volume(
      double power, double load, double time, double swing, double volumetricHeat) {
    return Math.max(power - load, 0) * time / (volumetricHeat * swing);
  }

  /**
   * Least volume that keeps a source's shortest running time at least output with no heat taken
   * [m³].
   *
   * @param source the source
   * @param outdoor outdoor temperature [°C]
   * @param flow flow temperature asked for [°C]
   * @param volumetricHeat rho c of the water [J/(m³ K)]
   */
  public static double of(Source source, double outdoor, double flow, double volumetricHeat) {
    double asked = Math.min(flow, source.highestFlow());
    return volume(
        source.minimumPower(outdoor, asked),
        0,
        source.minimumOnTime(),
        2 * source.switchingBand(),
        volumetricHeat);
  }
}
