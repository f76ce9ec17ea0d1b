package settle.sim.comfort;

/**
 * Cold air that falls down a window and runs out over the floor: P. Heiselberg, "Draught risk from
 * cold vertical surfaces", Building and Environment 29 (1994), pages 297-301 (from memory). With dT
 * between room and glass and H its height, at a distance x from it,
 *
 * <pre>
 *   u = 0.055 sqrt(H dT)             x &lt; 0.4 m
 *   u = 0.095 sqrt(H dT)/(x + 1.32)  0.4 to 2 m
 *   u = 0.028 sqrt(H dT)             beyond
 *   T = T_room - (0.30 - 0.034 x) dT
 * </pre>
 *
 * <p>A run along the foot of the window warms what falls. How much of the draught it takes is
 * reckoned by a balance of heats, common practice without a source: the air has lost h_c dT H per
 * metre of width to the glass, with h_c = 1.31 dT^(1/3) for turbulent natural convection; what the
 * run gives back by convection lessens it, and dT of the draught with it.
 */
public final class Downdraught {

  private Downdraught() {}

  /**
   * Largest mean speed near the floor [m/s].
   *
   * @param height H of the cold surface [m]
   * @param colder dT by which it is colder than the room [K]; none falls where it is not
   * @param distance x from it [m]
   */
  public static double speed(double height, double colder, double distance) {
    double root = Math.sqrt(height * Math.max(colder, 0));
    if (distance < 0.4) {
      return 0.055 * root;
    }
    return distance < 2 ? 0.095 * root / (distance + 1.32) : 0.028 * root;
  }

  /**
   * Temperature of that air [°C].
   *
   * @param room temperature of the room's air [°C]
   * @param colder dT [K]
   * @param distance x [m], up to 8
   */
  public static double temperature(double room, double colder, double distance) {
    return room - (0.30 - 0.034 * Math.min(distance, 8)) * Math.max(colder, 0);
  }

  /**
   * What the air loses to the glass per metre of its width [W/m].
   *
   * @param height H [m]
   * @param colder dT [K]
   */
  public static double heat(double height, double colder) {
    double dt = Math.max(colder, 0);
    return 1.31 * Math.cbrt(dt) * dt * height;
  }

  /**
   * By how much the falling air still counts as colder above a run that warms it [K].
   *
   * @param height H [m]
   * @param colder dT [K]
   * @param convective what the run gives to the air per metre [W/m]
   */
  public static double left(double height, double colder, double convective) {
    double lost = heat(height, colder);
    double share = lost > 0 ? Math.max(1 - convective / lost, 0) : 0;
    // Heat goes as dT^(4/3).
    return Math.max(colder, 0) * Math.pow(share, 0.75);
  }
}
