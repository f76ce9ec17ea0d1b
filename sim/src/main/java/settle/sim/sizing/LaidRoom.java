package settle.sim.sizing;

/**
 * Skirting as an arrangement lays it in a room, beside what that profile has to be.
 *
 * @param profile of its longest run
 * @param length of all its runs [m]
 * @param sized that profile, sized for the room
 */
public record LaidRoom(String profile, double length, SizedRoom sized) {

  /** How one flow temperature finds it. */
  public enum Standing {
    /** What is laid suffices. */
    ENOUGH,
    /** What is laid suffices with what pipes give. */
    WITH_PIPES,
    /** What is laid does not, but there is wall for what does. */
    WALL_LEFT,
    /** The wall is too short. */
    TOO_SHORT
  }

  /** How the i-th of the flow temperatures finds it. */
  public Standing standing(int i) {
    double needed = sized.at().get(i).length();
    if (needed <= length) {
      return Standing.ENOUGH;
    }
    if (sized.at().get(i).withPipes() <= length) {
      return Standing.WITH_PIPES;
    }
    return needed <= sized.freeWall() ? Standing.WALL_LEFT : Standing.TOO_SHORT;
  }
}
