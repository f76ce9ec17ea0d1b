package settle.sim.source;

import settle.sim.units.Range;

/**
 * An electric heater that gives what the compressor lacks, in cold weather only.
 *
 * @param power largest output [W]
 * @param highestOutdoor outdoor temperature above which it stays off [°C]
 */
public record BackupHeater(double power, double highestOutdoor) {

  public BackupHeater {
    Range.positive("power of the backup heater", power, "W");
  }

  /** What it can give at an outdoor temperature [°C]: its power or nothing [W]. */
  public double availableAt(double outdoor) {
    return outdoor <= highestOutdoor ? power : 0;
  }
}
