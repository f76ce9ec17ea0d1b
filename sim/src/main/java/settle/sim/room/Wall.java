package settle.sim.room;

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
 */
public record Wall(
    String name, double length, double openings, double doors, double units, double excluded) {

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

  /** Length along which skirting may run [m]. */
  public double free() {
    return Math.max(0, length - openings - doors - units - excluded);
  }
}
