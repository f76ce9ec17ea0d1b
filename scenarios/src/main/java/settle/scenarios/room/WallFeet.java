package settle.scenarios.room;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.room.Wall;
import settle.sim.room.Wall.Standing;
import settle.sim.room.Wall.What;

/**
 * The walls of a room as whoever lays skirting sees them: how long the foot of each is and what
 * stands there.
 *
 * <p>A scenario may list them in order round the room. Otherwise they are those of the surfaces, as
 * long as their area over the room's height, and one for what is left of the perimeter; what the
 * room says of doors, units and excluded lengths is then taken off the inner walls first, for on
 * the outside walls openings say more.
 */
final class WallFeet {

  /** Name of what no surface accounts for. */
  private static final String REST = "inner walls";

  /** Shortest rest of a perimeter that is a wall of its own [m]. */
  private static final double SHORTEST = 0.05;

  /** By how much walls that are listed may differ from the room's size [1]. */
  private static final double ROUNDING = 1.05;

  /** Length that is nobody's concern [m]. */
  private static final double ROUNDED = 0.001;

  /**
   * A wall as the room's surfaces have it.
   *
   * @param name its name
   * @param area with its openings [m2]
   * @param openings width of those openings that reach the floor [m]
   * @param outside whether outdoors lies behind it
   */
  record Behind(String name, double area, double openings, boolean outside) {}

  /** A wall while its foot is being measured [m]. */
  private static final class Foot {
    final String name;
    final double length;
    final Section written;
    boolean outside;
    double openings;
    double doors;
    double units;
    double excluded;
    List<Standing> placed = List.of();

    Foot(String name, double length, Section written) {
      this.name = name;
      this.length = length;
      this.written = written;
    }

    double taken() {
      return openings + doors + units + excluded;
    }

    double free() {
      return Math.max(0, length - taken());
    }

    double width(What what) {
      return switch (what) {
        case OPENING -> openings;
        case DOOR -> doors;
        case UNITS -> units;
        case EXCLUDED -> excluded;
      };
    }

    Wall wall(boolean inOrder) {
      return new Wall(
          name, length, openings, doors, units, excluded, new Wall.Plan(inOrder, placed));
    }
  }

  private final Section room;
  private final List<Foot> feet = new ArrayList<>();
  private final List<Behind> behind = new ArrayList<>();
  private final boolean inOrder;
  private List<Wall> walls = List.of();

  /**
   * Reads the walls that a room lists.
   *
   * @param room its section
   */
  WallFeet(Section room) {
    this.room = room;
    for (Value item : room.several(RoomKeys.WALLS)) {
      Section s = item.section(RoomKeys.FOOT_TABLE);
      String name = s.words(RoomKeys.FOOT_NAME, "?");
      if (feet.stream().anyMatch(f -> f.name.equals(name))) {
        item.problem("another wall of this room is called '" + name + "'");
      }
      Foot foot = new Foot(name, s.number(RoomKeys.FOOT_LENGTH), s);
      foot.doors = s.numberIfWritten(RoomKeys.FOOT_DOORS).orElse(0);
      foot.units = s.numberIfWritten(RoomKeys.FOOT_UNITS).orElse(0);
      foot.excluded = s.numberIfWritten(RoomKeys.FOOT_EXCLUDED).orElse(0);
      feet.add(foot);
    }
    inOrder = !feet.isEmpty();
    if (inOrder) {
      for (Key key : List.of(RoomKeys.DOORS, RoomKeys.UNITS, RoomKeys.EXCLUDED)) {
        room.value(key).ifPresent(v -> v.problem("is written wall by wall where 'walls' is there"));
      }
      room.value(RoomKeys.PERIMETER)
          .ifPresent(v -> v.problem("is the sum of 'walls'; leave one of them out"));
    }
  }

  /** Whether the scenario lists them, in order round the room. */
  boolean inOrder() {
    return inOrder;
  }

  /** Length of the walls that the scenario lists [m]. */
  double listed() {
    return feet.stream().mapToDouble(f -> f.length).sum();
  }

  /**
   * Doubts walls that do not go with the room's size.
   *
   * @param perimeter of the rectangle of that size [m]; infinite where only an area is known
   * @param floorArea [m2]
   */
  void doubtSize(double perimeter, double floorArea) {
    double circle = 2 * Math.sqrt(Math.PI * floorArea);
    String listed = "its walls add up to " + Dimension.LENGTH.show(listed());
    if (Double.isInfinite(perimeter)) {
      if (listed() * ROUNDING < circle) {
        room.warn(
            listed
                + ", but none of "
                + Dimension.AREA.show(floorArea)
                + " has less than "
                + Dimension.LENGTH.show(circle)
                + "; was one left out?");
      }
    } else if (listed() * ROUNDING < perimeter || listed() > perimeter * ROUNDING) {
      room.warn(
          listed
              + ", but its size has "
              + Dimension.LENGTH.show(perimeter)
              + "; was one left out or added?");
    }
  }

  /** Takes note of a wall among the surfaces, written in this room or in the one behind it. */
  void add(Behind wall) {
    behind.add(wall);
  }

  /**
   * Closes the list, when all surfaces are known.
   *
   * @param perimeter length of all walls [m]
   * @param height of the room [m]
   */
  void close(double perimeter, double height) {
    if (inOrder) {
      closeListed();
    } else {
      derive(perimeter, height);
    }
    walls = feet.stream().map(foot -> foot.wall(inOrder)).toList();
  }

  private void closeListed() {
    for (Behind wall : behind) {
      Foot foot = foot(wall.name());
      if (foot != null) {
        foot.openings += wall.openings();
        foot.outside = wall.outside();
      } else if (wall.outside()) {
        room.warn("'" + wall.name() + "' is not among its 'walls', so nothing can be fixed to it");
      }
    }
    for (Foot foot : feet) {
      if (foot.taken() > foot.length + 1e-9) {
        foot.written.problem(
            "found openings to the floor, doors, units and excluded lengths of "
                + Dimension.LENGTH.show(foot.taken())
                + " along a wall of "
                + Dimension.LENGTH.show(foot.length)
                + ", expected no more");
      } else {
        place(foot);
      }
    }
    // What is excluded may be a door that nobody measured by itself.
    if (feet.stream().allMatch(f -> f.openings + f.doors + f.excluded == 0)) {
      room.warn("there is no door in any of its walls; is that meant?");
    }
  }

  private static final Map<What, Key> WHERE =
      Map.of(
          What.OPENING, RoomKeys.FOOT_OPENINGS_AT,
          What.DOOR, RoomKeys.FOOT_DOORS_AT,
          What.UNITS, RoomKeys.FOOT_UNITS_AT,
          What.EXCLUDED, RoomKeys.FOOT_EXCLUDED_AT);

  /** Takes what is written of where things stand, and refuses what cannot be. */
  private static void place(Foot foot) {
    List<Standing> placed = new ArrayList<>();
    for (What what : What.values()) {
      List<Value> begins = foot.written.several(WHERE.get(what));
      double width = foot.width(what) / Math.max(1, begins.size());
      for (Value value : begins) {
        double from = value.number(RoomKeys.FOOT_AT);
        Standing one = new Standing(what, from, width);
        if (width == 0) {
          value.problem("says where something stands whose width is not written");
        } else if (one.to() > foot.length + ROUNDED) {
          value.problem(
              "found something that ends at "
                  + Dimension.LENGTH.show(one.to())
                  + " along a wall of "
                  + Dimension.LENGTH.show(foot.length)
                  + ", expected it to end on the wall");
        } else if (placed.stream()
            .anyMatch(p -> p.from() < one.to() - ROUNDED && from < p.to() - ROUNDED)) {
          value.problem("stands where something else stands");
        } else {
          placed.add(one);
        }
      }
    }
    placed.sort(Comparator.comparingDouble(Standing::from));
    foot.placed = placed;
  }

  private Foot foot(String name) {
    return feet.stream().filter(f -> f.name.equals(name)).findFirst().orElse(null);
  }

  private void derive(double perimeter, double height) {
    double rest = perimeter;
    for (Behind wall : behind) {
      Foot foot = new Foot(freeName(wall.name()), wall.area() / height, room);
      foot.openings = Math.min(wall.openings(), foot.length);
      foot.outside = wall.outside();
      feet.add(foot);
      rest -= foot.length;
    }
    Foot others = new Foot(freeName(REST), Math.max(rest, SHORTEST), room);
    if (rest > SHORTEST || feet.isEmpty()) {
      feet.add(others);
    }
    List<Foot> innerFirst = new ArrayList<>(feet);
    innerFirst.sort(
        Comparator.comparing((Foot f) -> f.outside)
            .thenComparing(f -> f != others)
            .thenComparing(f -> -f.length));
    boolean told =
        room.has(RoomKeys.DOORS) || room.has(RoomKeys.UNITS) || room.has(RoomKeys.EXCLUDED);
    double doors = room.number(RoomKeys.DOORS);
    double units = room.numberIfWritten(RoomKeys.UNITS).orElse(0);
    double excluded = room.numberIfWritten(RoomKeys.EXCLUDED).orElse(0);
    for (Foot foot : innerFirst) {
      foot.doors = Math.min(doors, foot.free());
      doors -= foot.doors;
      foot.units = Math.min(units, foot.free());
      units -= foot.units;
      foot.excluded = Math.min(excluded, foot.free());
      excluded -= foot.excluded;
    }
    double left = doors + units + excluded;
    if (told && left > 1e-9) {
      room.warn(
          "its doors, units and excluded lengths are "
              + Dimension.LENGTH.show(left)
              + " more than its walls have room for");
    }
    room.noteDefault(
        "free wall",
        Dimension.LENGTH.show(feet.stream().mapToDouble(Foot::free).sum())
            + " of "
            + Dimension.LENGTH.show(perimeter),
        "less openings to the floor, doors, units and what is excluded");
  }

  private String freeName(String wanted) {
    String free = wanted;
    for (int n = 2; foot(free) != null; n++) {
      free = wanted + " " + n;
    }
    return free;
  }

  /** The walls, once the list is closed: in order round the room where the scenario has them so. */
  List<Wall> walls() {
    return walls;
  }
}
