package settle.sim.fabric;

/**
 * What lies under floors on the ground, per square metre of floor: ISO 13370:2017 (from memory),
 * clause 7.1 for slabs and 7.2 for floors over a void that outdoor air passes through.
 *
 * <pre>
 *   slab        d_t = w + lambda (R_si + R_f + R_se)
 *               U = 2 lambda/(pi B' + d_t) ln(pi B'/d_t + 1)     d_t &lt; B', else lambda/(0.457 B' + d_t)
 *   suspended   d_g = w + lambda (R_si + R_se)
 *               U_g = 2 lambda/(pi B' + d_g) ln(pi B'/d_g + 1),  U_x = 2 h U_w/B' + 1450 eps v f_w/B'
 * </pre>
 *
 * <p>with B' the area of the floor over half its exposed perimeter. The films are the standard's
 * rounded ones, R_si 0.17 and R_se 0.04 m²K/W.
 */
public final class FloorOnGround {

  /** Conductivity of clay or silt, lambda [W/(m K)]. */
  private static final double SOIL = 1.5;

  /** Thickness of the outside walls, w [m]; common practice, no source. */
  private static final double WALL = 0.3;

  /** R_si + R_se for heat that flows down [m²K/W]. */
  private static final double FILMS = 0.21;

  /** Height of a suspended floor above the ground outside, h [m]; common practice, no source. */
  private static final double HEIGHT = 0.3;

  /** U-value of the walls of the void, U_w [W/(m²K)]; common practice, no source. */
  private static final double VOID_WALL = 1.7;

  /** Openings in them per length of wall, eps [m²/m]: air bricks as building rules ask for them. */
  private static final double OPENINGS = 0.0015;

  /** Mean wind at 10 m, v [m/s]; usual. */
  private static final double WIND = 4;

  /** Average shelter, f_w [-]. */
  private static final double SHELTER = 0.05;

  /**
   * Least resistance of soil under a slab [m²K/W]: its U-value is never above that of its layers.
   */
  private static final double LEAST_SOIL = 0.01;

  private FloorOnGround() {}

  /**
   * U-value of a slab on the ground, ground included [W/(m²K)].
   *
   * @param breadth B' [m], above 0
   * @param resistance of the floor's own layers, R_f [m²K/W]
   */
  public static double slabUValue(double breadth, double resistance) {
    double thickness = WALL + SOIL * (FILMS + resistance);
    return thickness < breadth
        ? throughGround(breadth, thickness)
        : SOIL / (0.457 * breadth + thickness);
  }

  /**
   * Resistance of the soil under a slab, so that with its layers and the film of the room it has
   * the U-value of the standard [m²K/W].
   *
   * @param breadth B' [m], above 0
   * @param resistance of the floor's own layers, R_f [m²K/W]
   */
  public static double soilResistance(double breadth, double resistance) {
    double soil =
        1 / slabUValue(breadth, resistance) - Facing.FLOOR.surfaceResistance() - resistance;
    return Math.max(soil, LEAST_SOIL);
  }

  /** Conductance from a void through the ground, U_g [W/(m²K)], for B' [m]. */
  public static double voidToGround(double breadth) {
    return throughGround(breadth, WALL + SOIL * FILMS);
  }

  /** Conductance from a void by its walls and its air to outdoors, U_x [W/(m²K)], for B' [m]. */
  public static double voidToOutdoors(double breadth) {
    return (2 * HEIGHT * VOID_WALL + 1450 * OPENINGS * WIND * SHELTER) / breadth;
  }

  private static double throughGround(double breadth, double thickness) {
    double around = Math.PI * breadth;
    return 2 * SOIL / (around + thickness) * Math.log(around / thickness + 1);
  }
}
