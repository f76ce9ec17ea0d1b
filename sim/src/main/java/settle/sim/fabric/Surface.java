package settle.sim.fabric;

/**
 * An opaque surface of one room.
 *
 * @param name its name, unique in the room
 * @param facing which way it faces
 * @param area net area without openings [m²]
 * @param construction its make-up, from the room outwards
 * @param boundary what lies behind it
 */
public record Surface(
    String name, Facing facing, double area, Construction construction, Boundary boundary) {

  /** Least that layers resist together, whatever their U-value is said to be [m²K/W]. */
  private static final double LEAST_RESISTANCE = 0.01;

  public Surface {
    if (!(area > 0)) {
      throw new IllegalArgumentException(
          "surface '" + name + "': area " + area + " m² must be > 0");
    }
  }

  /**
   * This surface passing so many times the heat, its films included, per kelvin between room and
   * what lies behind. Its layers keep {@link #LEAST_RESISTANCE} however much that is, and one
   * through which no heat passes stays as it is.
   *
   * @param factor by which the U-value is multiplied [-], above 0
   */
  public Surface withUValueTimes(double factor) {
    if (!boundary.passesHeat() || construction.resistance() == 0) {
      return this;
    }
    double films = facing.surfaceResistance() + boundary.farResistance();
    double layers = (films + construction.resistance()) / factor - films;
    double least = Math.min(LEAST_RESISTANCE, construction.resistance());
    return new Surface(
        name, facing, area, construction.withResistance(Math.max(layers, least)), boundary);
  }
}
