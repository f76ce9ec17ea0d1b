package settle.sim.firstfix;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.Fixing;
import settle.sim.firstfix.Laying.Foot;
import settle.sim.firstfix.Laying.Obstacle;
import settle.sim.firstfix.Laying.Stretch;
import settle.sim.house.Branch;
import settle.sim.house.Tails;
import settle.sim.room.Room;
import settle.sim.room.Wall;
import settle.sim.room.Wall.Standing;

/**
 * Lays the runs of a room along its walls, one after the other.
 *
 * <p>How much of a run lies on which wall is known; where on the wall it lies is not. A run goes
 * round a corner where it can: on its first wall it ends at the corner to the next, on its last it
 * begins there. What stands on a wall without a place of its own is thought to stand where that
 * breaks the run least: behind its end.
 */
final class RoomFeet {

  /** Which way a wall is filled. */
  private enum Fill {
    FROM_LEFT,
    FROM_RIGHT,
    ALL
  }

  private final Room room;
  private final Map<String, List<Obstacle>> standing = new LinkedHashMap<>();
  private final Map<String, List<double[]>> laid = new LinkedHashMap<>();

  RoomFeet(Room room) {
    this.room = room;
  }

  /** Lays a branch's run. */
  Laying lay(Branch branch) {
    Emitter.Run run = branch.emitter().run().orElseThrow();
    List<Fixing> way = new ArrayList<>(branch.emitter().fixedTo());
    boolean rightwards = rightwards(way, branch.tails().side());
    Tails.Side far = rightwards ? Tails.Side.RIGHT : Tails.Side.LEFT;
    boolean fromFarEnd = joined(way) && branch.tails().side() == far;
    if (!rightwards) {
      Collections.reverse(way);
    }
    // Now from left to right; from the far end its water goes the other way.
    boolean outRight = rightwards != fromFarEnd;
    List<Foot> feet = new ArrayList<>();
    List<Stretch> stretches = new ArrayList<>();
    double unplaced = 0;
    double[] lengths = lengths(way, run.length(), outRight);
    for (int i = 0; i < way.size(); i++) {
      Wall wall = wall(way.get(i), run.length());
      double length = lengths[i];
      Fill fill = fill(i, way.size(), outRight);
      List<Obstacle> there = standing(wall, fill);
      feet.add(new Foot(wall, i > 0 && meets(way.get(i - 1), way.get(i)), there));
      double slack = way.size() == 1 ? Math.min(Laying.VALVE_SPACE, free(wall) - length) : 0;
      unplaced += fill(stretches, i, wall, length, fill, Math.max(0, slack));
    }
    double all = stretches.stream().mapToDouble(Stretch::length).sum();
    double shorter = branch.emitter().joints().map(Emitter.Joints::shorter).orElse(0.0);
    double connection = outRight ? Math.min(shorter, all) : Math.max(0, all - shorter);
    return new Laying(feet, stretches, outRight, connection, unplaced < Laying.NONE ? 0 : unplaced);
  }

  /**
   * What of a run lies on which wall [m]: a hand's breadth less than was reckoned on the wall it
   * hangs on and more on its last, where that makes room for its valve.
   */
  private double[] lengths(List<Fixing> way, double run, boolean outRight) {
    double[] lengths = way.stream().mapToDouble(f -> f.share() * run).toArray();
    int last = lengths.length - 1;
    if (last > 0) {
      int hangs = outRight ? 0 : last;
      int ends = last - hangs;
      double missing =
          Laying.VALVE_SPACE
              - slack(way.get(hangs), lengths[hangs], fill(hangs, last + 1, outRight));
      double room = slack(way.get(ends), lengths[ends], fill(ends, last + 1, outRight));
      double moved = Math.max(0, Math.min(missing, Math.min(room, lengths[hangs])));
      lengths[hangs] -= moved;
      lengths[ends] += moved;
    }
    return lengths;
  }

  private double slack(Fixing fixing, double length, Fill fill) {
    Wall wall = wall(fixing, length / fixing.share());
    standing(wall, fill);
    return free(wall) - length;
  }

  private List<Obstacle> standing(Wall wall, Fill fill) {
    return standing.computeIfAbsent(wall.name(), w -> obstacles(wall, fill));
  }

  private boolean rightwards(List<Fixing> way, Tails.Side side) {
    if (joined(way)) {
      return index(way.get(1)) == (index(way.get(0)) + 1) % room.walls().size();
    }
    return side != Tails.Side.RIGHT;
  }

  /** Whether its first two walls are known to meet. */
  private boolean joined(List<Fixing> way) {
    return way.size() > 1 && (meets(way.get(0), way.get(1)) || meets(way.get(1), way.get(0)));
  }

  /** Whether the right end of one wall meets another. */
  private boolean meets(Fixing left, Fixing right) {
    int one = index(left);
    int other = index(right);
    return one >= 0
        && other == (one + 1) % room.walls().size()
        && room.walls().get(one).plan().joinsNext();
  }

  private int index(Fixing fixing) {
    return room.walls().stream().map(Wall::name).toList().indexOf(fixing.wall());
  }

  /** A wall by its name; what is none of the room's is as long as the run on it. */
  private Wall wall(Fixing fixing, double length) {
    int known = index(fixing);
    return known >= 0
        ? room.walls().get(known)
        : Wall.bare(fixing.wall(), Math.max(fixing.share() * length, 0.1));
  }

  private static Fill fill(int i, int walls, boolean outRight) {
    if (walls == 1) {
      return outRight ? Fill.FROM_LEFT : Fill.FROM_RIGHT;
    }
    return i == 0 ? Fill.FROM_RIGHT : i == walls - 1 ? Fill.FROM_LEFT : Fill.ALL;
  }

  /** What stands along a wall, where that is not known behind the end of a run. */
  private static List<Obstacle> obstacles(Wall wall, Fill fill) {
    List<Obstacle> all = new ArrayList<>();
    wall.plan().placed().forEach(p -> all.add(new Obstacle(p, true)));
    for (Wall.What what : Wall.What.values()) {
      double placed =
          wall.plan().placed().stream()
              .filter(p -> p.what() == what)
              .mapToDouble(Standing::width)
              .sum();
      double width = wall.width(what) - placed;
      if (width > Laying.NONE) {
        all.add(new Obstacle(new Standing(what, guess(wall, all, width, fill), width), false));
      }
    }
    all.sort(Comparator.comparingDouble(o -> o.standing().from()));
    return all;
  }

  /** Where something would stand least in the way. */
  private static double guess(Wall wall, List<Obstacle> others, double width, Fill fill) {
    List<double[]> taken = new ArrayList<>();
    others.forEach(o -> taken.add(new double[] {o.standing().from(), o.standing().to()}));
    List<double[]> gaps = gaps(wall.length(), taken);
    double[] widest = {0, 0};
    for (double[] gap : gaps) {
      widest = gap[1] - gap[0] > widest[1] - widest[0] + Laying.NONE ? gap : widest;
    }
    double[] first = widest;
    double[] last = widest;
    for (double[] gap : gaps) {
      if (gap[1] - gap[0] >= width - Laying.NONE) {
        first = first == widest ? gap : first;
        last = gap;
      }
    }
    return switch (fill) {
      case FROM_RIGHT, ALL -> first[0];
      case FROM_LEFT -> Math.max(last[0], last[1] - width);
    };
  }

  /** What is free of a wall between what is taken, from left to right. */
  private static List<double[]> gaps(double length, List<double[]> taken) {
    List<double[]> sorted = new ArrayList<>(taken);
    sorted.sort(Comparator.comparingDouble(t -> t[0]));
    List<double[]> gaps = new ArrayList<>();
    double from = 0;
    for (double[] t : sorted) {
      if (t[0] > from + Laying.NONE) {
        gaps.add(new double[] {from, t[0]});
      }
      from = Math.max(from, t[1]);
    }
    if (length > from + Laying.NONE) {
      gaps.add(new double[] {from, length});
    }
    return gaps;
  }

  private List<double[]> free(String wall, double length) {
    List<double[]> taken = new ArrayList<>(laid.getOrDefault(wall, List.of()));
    for (Obstacle o : standing.getOrDefault(wall, List.of())) {
      taken.add(new double[] {o.standing().from(), o.standing().to()});
    }
    return gaps(length, taken);
  }

  private double free(Wall wall) {
    return free(wall.name(), wall.length()).stream().mapToDouble(g -> g[1] - g[0]).sum();
  }

  /**
   * Lays a length along a wall.
   *
   * @return what of it found no room [m]
   */
  private double fill(
      List<Stretch> stretches, int foot, Wall wall, double length, Fill fill, double slack) {
    List<double[]> free = free(wall.name(), wall.length());
    if (fill == Fill.FROM_RIGHT) {
      Collections.reverse(free);
    }
    List<Stretch> here = new ArrayList<>();
    double rest = length;
    double aside = slack;
    for (double[] gap : free) {
      double use = Math.min(rest, gap[1] - gap[0] - aside);
      if (use > Laying.NONE) {
        here.add(
            fill == Fill.FROM_RIGHT
                ? new Stretch(foot, gap[1] - aside - use, gap[1] - aside)
                : new Stretch(foot, gap[0] + aside, gap[0] + aside + use));
        rest -= use;
        aside = 0;
      }
    }
    here.sort(Comparator.comparingDouble(Stretch::from));
    for (Stretch stretch : here) {
      stretches.add(stretch);
      laid.computeIfAbsent(wall.name(), w -> new ArrayList<>())
          .add(new double[] {stretch.from(), stretch.to()});
    }
    return Math.max(0, rest);
  }
}
