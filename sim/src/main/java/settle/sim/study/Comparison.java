package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import settle.sim.engine.Simulation;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.result.RunResult;
import settle.sim.room.Room;

/**
 * The same house with each of its arrangements.
 *
 * @param house the house
 * @param results one per arrangement, in order
 * @param unequalPairs where the arrangements are no fair pair
 */
public record Comparison(House house, List<RunResult> results, List<UnequalPair> unequalPairs) {

  /** Rated outputs that differ by more than this share are no fair pair [-]. */
  public static final double FAIR_DIFFERENCE = 0.05;

  /**
   * A room whose emitters are rated differently in two arrangements.
   *
   * @param room the room
   * @param first an arrangement
   * @param firstRated rated output (75/65/20) there [W]
   * @param second another arrangement
   * @param secondRated rated output there [W]
   */
  public record UnequalPair(
      String room, String first, double firstRated, String second, double secondRated) {}

  /**
   * Simulates every arrangement.
   *
   * @param house the house
   * @return results and where the pair is not fair
   * @throws ArithmeticException if a model could not be solved
   */
  public static Comparison of(House house) {
    List<RunResult> results = new ArrayList<>();
    for (Arrangement arrangement : house.arrangements()) {
      results.add(Simulation.run(house, arrangement));
    }
    return of(house, results);
  }

  /** Compares runs already made, one per arrangement in order. */
  public static Comparison of(House house, List<RunResult> results) {
    return new Comparison(house, List.copyOf(results), unequalPairs(house));
  }

  /**
   * Rooms in which an arrangement's rated output differs from the first one's by more than {@link
   * #FAIR_DIFFERENCE}.
   */
  public static List<UnequalPair> unequalPairs(House house) {
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
