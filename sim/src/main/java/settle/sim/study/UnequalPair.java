package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.room.Room;

/**
 * A room whose emitters are rated so differently in two arrangements that they are no fair pair.
 *
 * @param room the room
 * @param first an arrangement
 * @param firstRated rated output (75/65/20) there [W]
 * @param second another arrangement
 * @param secondRated rated output there [W]
 */
public record UnequalPair(
    String room, String first, double firstRated, String second, double secondRated) {

  /** Rated outputs that differ by more than this share of the larger are no fair pair [-]. */
  public static final double FAIR_DIFFERENCE = 0.05;

  /** Every room in which an arrangement is no fair match for the house's first one. */
  public static List<UnequalPair> in(House house) {
    List<UnequalPair> pairs = new ArrayList<>();
    Arrangement first = house.arrangements().get(0);
    for (Arrangement other : house.arrangements().subList(1, house.arrangements().size())) {
      for (Room room : house.rooms()) {
        double a = first.ratedOutput(room.name());
        double b = other.ratedOutput(room.name());
        if (Math.abs(a - b) > FAIR_DIFFERENCE * Math.max(a, b)) {
          pairs.add(new UnequalPair(room.name(), first.name(), a, other.name(), b));
        }
      }
    }
    return pairs;
  }
}
