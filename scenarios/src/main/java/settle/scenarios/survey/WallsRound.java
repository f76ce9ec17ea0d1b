package settle.scenarios.survey;

import java.util.ArrayList;
import java.util.List;
import settle.scenarios.quantity.NumberText;

/**
 * The walls of a room of which a survey has the free lengths: what is not free of a wall is the
 * rest of its length, where that is known.
 */
final class WallsRound {

  /** By how much a free length may pass the side that it lies on [m]. */
  private static final double ROUNDING = 0.05;

  /** Shortest length that is a wall [m]: a scenario allows none shorter. */
  private static final double SHORTEST = 0.05;

  /**
   * A wall.
   *
   * @param name its name
   * @param length along the floor [m]
   * @param excluded what of it is not free [m]
   */
  record Side(String name, double length, double excluded) {}

  private WallsRound() {}

  /**
   * The walls.
   *
   * @param sides of the room
   * @param free free lengths in order [m]; none where the survey has none
   */
  static List<Side> of(Survey.Sides sides, List<Double> free) {
    if (free.isEmpty()) {
      return List.of();
    }
    if (sides.isRectangle() && free.size() == 4) {
      double slackAlong = worst(free, sides.length(), sides.width());
      double slackAcross = worst(free, sides.width(), sides.length());
      if (Math.min(slackAlong, slackAcross) <= ROUNDING) {
        return slackAlong <= slackAcross
            ? fourSides(free, sides.length(), sides.width())
            : fourSides(free, sides.width(), sides.length());
      }
    }
    return withRest(free, sides.perimeter());
  }

  /** By how much a free length passes its side at the most [m]. */
  private static double worst(List<Double> free, double odd, double even) {
    double worst = 0;
    for (int i = 0; i < free.size(); i++) {
      worst = Math.max(worst, free.get(i) - (i % 2 == 0 ? odd : even));
    }
    return worst;
  }

  private static List<Side> fourSides(List<Double> free, double odd, double even) {
    List<Side> walls = new ArrayList<>();
    for (int i = 0; i < free.size(); i++) {
      double length = Math.max(free.get(i), i % 2 == 0 ? odd : even);
      walls.add(side("wall " + (i + 1), length, free.get(i)));
    }
    return walls;
  }

  private static Side side(String name, double length, double free) {
    double excluded = NumberText.rounded(length - free, 3);
    return new Side(name, length, excluded < 1e-3 ? 0 : excluded);
  }

  /** Where it is not known which wall is how long, what is not free is one wall more. */
  private static List<Side> withRest(List<Double> free, double perimeter) {
    List<Side> walls = new ArrayList<>();
    double rest = perimeter;
    for (int i = 0; i < free.size(); i++) {
      if (free.get(i) >= SHORTEST) {
        walls.add(new Side("wall " + (i + 1), free.get(i), 0));
        rest -= free.get(i);
      }
    }
    rest = NumberText.rounded(rest, 3);
    if (rest >= SHORTEST) {
      walls.add(new Side("not free", rest, rest));
    }
    return walls;
  }
}
