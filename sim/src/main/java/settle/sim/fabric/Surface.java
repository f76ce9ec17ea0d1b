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

  public Surface {
    if (!(area > 0)) {
      throw new IllegalArgumentException(
          "surface '" + name + "': area " + area + " m² must be > 0");
    }
  }
}
