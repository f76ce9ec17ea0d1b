package settle.sim.firstfix;

import java.util.List;
import settle.sim.room.Wall;

/**
 * A run along the foot of its walls, these unfolded side by side as one faces them.
 *
 * @param feet the walls it touches, from left to right
 * @param stretches its straight parts, from left to right
 * @param rightwards whether its water goes out to the right; of two runs, the first of them
 * @param connection how far from its left end along the run its pipes join [m]
 * @param unplaced length for which its walls have no room [m]
 */
public record Laying(
    List<Foot> feet,
    List<Stretch> stretches,
    boolean rightwards,
    double connection,
    double unplaced) {

  /** Room that valve and head take beside a connection [m]; common practice, no source. */
  public static final double VALVE_SPACE = 0.15;

  /** Gap between two parts that is none [m]. */
  static final double NONE = 0.005;

  public Laying {
    feet = List.copyOf(feet);
    stretches = List.copyOf(stretches);
  }

  /**
   * A wall.
   *
   * @param wall the wall
   * @param joined whether it is known to meet the one to its left
   * @param standing what stands at its foot, from left to right
   */
  public record Foot(Wall wall, boolean joined, List<Obstacle> standing) {
    public Foot {
      standing = List.copyOf(standing);
    }
  }

  /**
   * Something at the foot of a wall.
   *
   * @param standing what and where
   * @param known whether it is known to stand there; otherwise its place is a guess
   */
  public record Obstacle(Wall.Standing standing, boolean known) {}

  /**
   * A straight part of a run.
   *
   * @param foot position of its wall
   * @param from its left end, from the wall's left end [m]
   * @param to its right end [m]
   */
  public record Stretch(int foot, double from, double to) {

    /** Its length [m]. */
    public double length() {
      return to - from;
    }
  }

  /** What lies between two parts that follow each other. */
  public enum Joint {
    /** A corner of the room, round which the run goes on. */
    CORNER,
    /** Walls of which it is not known whether they meet. */
    OTHER_WALL,
    /** A door or something else, which pipes have to pass. */
    CROSSING
  }

  /** What lies right of a part. */
  public Joint after(int stretch) {
    Stretch one = stretches.get(stretch);
    Stretch next = stretches.get(stretch + 1);
    if (one.foot == next.foot) {
      return Joint.CROSSING;
    }
    boolean neighbours = next.foot == one.foot + 1 && feet.get(next.foot).joined();
    if (!neighbours) {
      return Joint.OTHER_WALL;
    }
    return gap(stretch) > NONE ? Joint.CROSSING : Joint.CORNER;
  }

  /** Length of wall between a part and the next [m]. */
  public double gap(int stretch) {
    Stretch one = stretches.get(stretch);
    Stretch next = stretches.get(stretch + 1);
    return one.foot == next.foot
        ? next.from - one.to
        : feet.get(one.foot).wall().length() - one.to + next.from;
  }

  /** How many joints of a kind it has. */
  public int count(Joint kind) {
    int count = 0;
    for (int i = 0; i + 1 < stretches.size(); i++) {
      count += after(i) == kind ? 1 : 0;
    }
    return count;
  }

  /** Length of the wall that pipes have to pass [m]. */
  public double crossed() {
    double sum = 0;
    for (int i = 0; i + 1 < stretches.size(); i++) {
      sum += after(i) == Joint.CROSSING ? gap(i) : 0;
    }
    return sum;
  }

  /** Its longest straight part [m]. */
  public double longestStraight() {
    return stretches.stream().mapToDouble(Stretch::length).max().orElse(0);
  }

  /**
   * Wall that is free beside the connected end [m]; infinite where the run goes on to both sides.
   */
  public double besideConnection() {
    if (connection > NONE && connection < length() - NONE) {
      return Double.POSITIVE_INFINITY;
    }
    Stretch end = at(connection);
    double place = onWall(connection);
    Foot foot = feet.get(end.foot());
    double free = rightwards ? place : foot.wall().length() - place;
    for (Obstacle obstacle : foot.standing()) {
      double from = obstacle.standing().from();
      double to = obstacle.standing().to();
      if (rightwards && to <= place + NONE) {
        free = Math.min(free, place - to);
      } else if (!rightwards && from >= place - NONE) {
        free = Math.min(free, from - place);
      }
    }
    return Math.max(0, free);
  }

  /** Length of all that is placed [m]. */
  public double length() {
    return stretches.stream().mapToDouble(Stretch::length).sum();
  }

  /**
   * The part at a place along the run.
   *
   * @param along from its left end [m]
   */
  public Stretch at(double along) {
    double passed = 0;
    for (Stretch stretch : stretches) {
      passed += stretch.length();
      if (passed >= along - NONE) {
        return stretch;
      }
    }
    return stretches.get(stretches.size() - 1);
  }

  /** How far from the left end of its wall a place along the run is [m]. */
  public double onWall(double along) {
    double passed = 0;
    for (Stretch stretch : stretches) {
      if (passed + stretch.length() >= along - NONE) {
        return stretch.from() + Math.max(0, along - passed);
      }
      passed += stretch.length();
    }
    return stretches.get(stretches.size() - 1).to();
  }
}
