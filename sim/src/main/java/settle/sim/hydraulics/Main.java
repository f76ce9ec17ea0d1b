package settle.sim.hydraulics;

import settle.sim.units.Range;

/**
 * A pair of mains, flow and return, that runs from the source or from the end of another pair.
 * Branches and further mains are fed from its end; a manifold is the end of a pair of mains that
 * feeds several branches.
 *
 * @param name what it is called, unique in its house
 * @param fedFrom name of the mains whose end it begins at; null if it begins at the source
 * @param pipe flow and return, length > 0
 * @param room name of the room that takes its heat loss; null for a space outside the rooms
 * @param surroundings temperature of that space [°C]; not used where a room is named
 */
public record Main(String name, String fedFrom, Pipe pipe, String room, double surroundings) {

  public Main {
    Range.positive("length of mains '" + name + "'", pipe.length(), "m");
    Range.within("surroundings of mains '" + name + "'", surroundings, -50, 60, "°C");
    if (name.equals(fedFrom)) {
      throw new IllegalArgumentException("mains '" + name + "' cannot be fed from themselves");
    }
  }
}
