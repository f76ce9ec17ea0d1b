package settle.sim.room;

import java.util.List;
import settle.sim.units.Range;

/**
 * A wall of a room as whoever lays skirting sees it: how long its foot is, and what stands there.
 *
 * @param name its name, unique in the room; that of the surface behind it where there is one
 * @param length of its foot [m]
 * @param openings width of the openings to outdoors that reach the floor: doors, full-height
 *     glazing [m]
 * @param doors width of its inner doors, linings included [m]
 * @param units width of what is fitted against it: kitchen units, wardrobes, a bath [m]
 * @param excluded what else the designer keeps free of skirting: a hearth, the foot of stairs [m]
 * @param plan how it lies
 */
public record Wall(
    String name,
    double length,
    double openings,
    double doors,
    double units,
    double excluded,
    Plan plan) {

  /** What may stand at the foot of a wall. */
  public enum What {
    OPENING,
    DOOR,
    UNITS,
    EXCLUDED
  }

  /**
   * Something that stands at the foot of a wall where it is known.
   *
   * @param what it is
   * @param from how far it begins from the wall's left end, seen from inside the room [m]
   * @param width [m]
   */
  public record Standing(What what, double from, double width) {

    /** Where it ends [m]. */
    public double to() {
      return from + width;
    }
  }

  /**
   * How a wall lies.
   *
   * @param joinsNext whether its right end, seen from inside the room, meets the next wall of the
   *     room, the last wall's the first; otherwise it is not known what it meets
   * @param placed what is known to stand where, from left to right
   */
  public record Plan(boolean joinsNext, List<Standing> placed) {

    /** Nothing is known but widths. */
    public static final Plan UNKNOWN = new Plan(false, List.of());

    public Plan {
      placed = List.copyOf(placed);
    }
  }

  /** A wall of which only widths are known. */
  public Wall(
      String name, double length, double openings, double doors, double units, double excluded) {
    this(name, length, openings, doors, units, excluded, Plan.UNKNOWN);
  }

  public Wall {
    String of = " of wall '" + name + "'";
    Range.positive("length" + of, length, "m");
    Range.notNegative("openings to the floor" + of, openings, "m");
    Range.notNegative("doors" + of, doors, "m");
    Range.notNegative("units" + of, units, "m");
    Range.notNegative("excluded length" + of, excluded, "m");
  }

  /** A wall with nothing at its foot. */
  public static Wall bare(String name, double length) {
    return new Wall(name, length, 0, 0, 0, 0);
  }

  /** Width of all things of a kind at its foot [m]. */
  public double width(What what) {
    return switch (what) {
      case OPENING -> openings;
      case DOOR -> doors;
      case UNITS -> units;
      case EXCLUDED -> excluded;
    };
  }

  /** Length along which skirting may run [m]. */
  public double free() {
    return Math.max(0, length - openings - doors - units - excluded);
  }
}
