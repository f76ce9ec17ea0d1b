package settle.sim.room;

import settle.sim.units.Range;

/**
 * What a room loses to outdoors at once, beside what passes through its surfaces and windows.
 *
 * @param conductance to outdoors [W/K]
 * @param whole whether this, with what ventilation takes, is all that the room loses to outdoors,
 *     known as one figure. Such a figure knows one temperature of the room, which is its operative
 *     one: air and surfaces then each lose half, so that at rest the room loses just so much per
 *     kelvin of operative temperature, whatever warms it. Thermal bridges go through the films of
 *     walls instead.
 */
public record DirectLoss(double conductance, boolean whole) {

  /** Nothing. */
  public static final DirectLoss NONE = new DirectLoss(0, false);

  public DirectLoss {
    Range.notNegative("direct loss of a room", conductance, "W/K");
  }

  /** Thermal bridges [W/K]. */
  public static DirectLoss bridges(double conductance) {
    return new DirectLoss(conductance, false);
  }

  /**
   * All of a room but its ventilation.
   *
   * @param conductance to outdoors [W/K]
   */
  public static DirectLoss ofWholeRoom(double conductance) {
    return new DirectLoss(conductance, true);
  }

  /** This so many times: walls and windows that nobody has described have U-values too. */
  DirectLoss times(double factor) {
    return whole ? ofWholeRoom(conductance * factor) : this;
  }
}
