package settle.sim.hydraulics;

import settle.sim.units.Range;

/**
 * Where a branch's pipe runs, and so what becomes of the heat it loses.
 *
 * @param room name of the room that takes it; null in a space outside the rooms, where it is lost
 * @param surroundings temperature of that space [°C]; not used where a room is named
 */
public record PipePlace(String room, double surroundings) {

  public PipePlace {
    Range.within("surroundings of a branch's pipe", surroundings, -50, 60, "°C");
  }

  /** In a room. */
  public static PipePlace in(String room) {
    return new PipePlace(room, 0);
  }

  /**
   * In a void or another space outside the rooms.
   *
   * @param temperature of that space [°C]
   */
  public static PipePlace outside(double temperature) {
    return new PipePlace(null, temperature);
  }
}
