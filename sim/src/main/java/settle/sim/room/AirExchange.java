package settle.sim.room;

/**
 * Air passing between two rooms, as through an open door.
 *
 * @param firstRoom one room
 * @param secondRoom the other
 * @param conductance heat exchanged per kelvin between the two airs [W/K]
 */
public record AirExchange(String firstRoom, String secondRoom, double conductance) {

  public AirExchange {
    if (!(conductance >= 0)) {
      throw new IllegalArgumentException(
          "air exchange "
              + firstRoom
              + " - "
              + secondRoom
              + ": "
              + conductance
              + " W/K must be >= 0");
    }
  }
}
