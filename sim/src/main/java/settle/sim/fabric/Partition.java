package settle.sim.fabric;

/**
 * A wall, floor or ceiling between two rooms: one element shared by both.
 *
 * @param name its name
 * @param firstRoom name of the room on the side of the first layer
 * @param secondRoom name of the other room
 * @param facingInFirst which way it faces seen from the first room
 * @param facingInSecond which way it faces seen from the second room
 * @param area area [m²]
 * @param construction layers from the first room to the second
 */
public record Partition(
    String name,
    String firstRoom,
    String secondRoom,
    Facing facingInFirst,
    Facing facingInSecond,
    double area,
    Construction construction) {

  public Partition {
    if (!(area > 0)) {
      throw new IllegalArgumentException(
          "partition '" + name + "': area " + area + " m² must be > 0");
    }
    if (firstRoom.equals(secondRoom)) {
      throw new IllegalArgumentException(
          "partition '" + name + "' joins room '" + firstRoom + "' to itself");
    }
  }
}
