package settle.sim.comfort;

/**
 * How warm people feel who sit in the middle of a room.
 *
 * @param air air temperature [°C]
 * @param radiant mean radiant temperature [°C]
 * @param vote predicted mean vote, PMV: -3 cold, 0 neither, +3 hot
 * @param dissatisfied predicted share of dissatisfied, PPD [-]
 */
public record Comfort(double air, double radiant, double vote, double dissatisfied) {

  /** Operative temperature where the air hardly moves: the mean of both [°C]. */
  public double operative() {
    return (air + radiant) / 2;
  }
}
