package settle.sim.fabric;

/**
 * Glazing: no mass, one resistance, so that its U-value holds exactly.
 *
 * @param name its name, unique in the room
 * @param area area with frame [m²]
 * @param uValue U-value between room and outdoor air [W/(m²K)]; below 1/(h_c + h_r) = 7.6 it can be
 *     met exactly
 * @param gValue share of the solar radiation falling on it that becomes heat in the room [-]
 * @param height of the pane [m], down which cold air falls; 0 where it is not known
 */
public record Window(String name, double area, double uValue, double gValue, double height) {

  public Window {
    if (!(area > 0)) {
      throw new IllegalArgumentException("window '" + name + "': area " + area + " m² must be > 0");
    }
    if (!(height >= 0)) {
      throw new IllegalArgumentException("window '" + name + "': height must be >= 0 m");
    }
    if (!(uValue > 0 && uValue * Facing.WALL.surfaceResistance() < 1)) {
      throw new IllegalArgumentException(
          "window '" + name + "': U-value " + uValue + " W/(m²K) must lie between 0 and 7.6");
    }
  }

  /** One of which no height is known. */
  public Window(String name, double area, double uValue, double gValue) {
    this(name, area, uValue, gValue, 0);
  }

  /**
   * This window with so many times the U-value, at most what its inner film passes but for a
   * fiftieth.
   *
   * @param factor [-], above 0
   */
  public Window withUValueTimes(double factor) {
    double most = 0.98 / Facing.WALL.surfaceResistance();
    return new Window(
        name, area, Math.min(uValue * factor, Math.max(uValue, most)), gValue, height);
  }
}
