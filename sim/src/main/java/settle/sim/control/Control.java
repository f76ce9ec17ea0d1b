package settle.sim.control;

/**
 * How the time programme acts on the plant.
 *
 * @param setback what happens when a programme asks for less
 * @param referenceRoom room whose want-temperature the source follows under {@link Setback#SOURCE};
 *     ignored otherwise
 * @param differential full switching differential of that room's thermostat [K], > 0
 */
public record Control(Setback setback, String referenceRoom, double differential) {

  /** Who carries out the set-back. */
  public enum Setback {
    /** The heads are programmable: each valve's set-point moves by as much as its room's want. */
    HEADS,
    /**
     * The heads stay where they are; source and pump rest while the programme is set back, unless
     * the reference room falls below its want.
     */
    SOURCE
  }

  public Control {
    if (!(differential > 0)) {
      throw new IllegalArgumentException("differential " + differential + " K must be > 0");
    }
  }
}
