package settle.sim.source;

import settle.sim.units.Range;

/**
 * How a heat pump frees its coil of ice: after so much running within the ice range it turns round
 * and takes heat from the water. Performance maps used with it are those without frost.
 *
 * @param lowestOutdoor below it the air is too dry to ice the coil [°C]
 * @param highestOutdoor above it the coil stays free [°C]
 * @param runningTime compressor time within the range from one defrost to the next [s]
 * @param duration of a defrost [s]
 * @param heatTaken from the water meanwhile [W]
 * @param electricity taken meanwhile [W]
 */
public record Defrost(
    double lowestOutdoor,
    double highestOutdoor,
    double runningTime,
    double duration,
    double heatTaken,
    double electricity) {

  /** Water is never cooled further by a defrost [°C]. */
  public static final double COLDEST_WATER = 5;

  public Defrost {
    if (!(lowestOutdoor < highestOutdoor)) {
      throw new IllegalArgumentException(
          "the ice range must ascend, is " + lowestOutdoor + " to " + highestOutdoor + " °C");
    }
    Range.positive("running time between defrosts", runningTime, "s");
    Range.positive("duration of a defrost", duration, "s");
    Range.notNegative("heat taken by a defrost", heatTaken, "W");
    Range.notNegative("electricity of a defrost", electricity, "W");
  }

  /**
   * Mean heat over running and defrosting, (P t - Q d)/(t + d) [W].
   *
   * @param power P while running [W]
   */
  public double meanHeat(double power) {
    return (power * runningTime - heatTaken * duration) / (runningTime + duration);
  }

  /**
   * Power while running that comes to a mean heat: {@link #meanHeat} turned round [W].
   *
   * @param mean over running and defrosting [W]
   */
  public double powerFor(double mean) {
    return (mean * (runningTime + duration) + heatTaken * duration) / runningTime;
  }

  /**
   * Mean electricity over running and defrosting [W].
   *
   * @param input while running [W]
   */
  public double meanInput(double input) {
    return (input * runningTime + electricity * duration) / (runningTime + duration);
  }

  /** That of a unit so many times as large [-]. */
  public Defrost scaled(double factor) {
    return new Defrost(
        lowestOutdoor,
        highestOutdoor,
        runningTime,
        duration,
        heatTaken * factor,
        electricity * factor);
  }

  /** Whether ice forms at an outdoor temperature [°C]. */
  public boolean icesAt(double outdoor) {
    return outdoor >= lowestOutdoor && outdoor <= highestOutdoor;
  }
}
