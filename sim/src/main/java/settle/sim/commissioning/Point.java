package settle.sim.commissioning;

/**
 * Something to be read.
 *
 * @param kind what
 * @param which branch that is read at, or room whose air; 0 for the source's flow
 * @param time how long after the start [s]
 */
public record Point(Kind kind, int which, double time) {

  /** What a thermometer is held to. */
  public enum Kind {
    /** The pipe that enters an emitter, with a clamp. */
    INLET,
    /** The pipe that leaves an emitter, with a clamp. */
    RETURN,
    /** The face of a run at its far end. */
    FAR_END,
    /** The air of a room, out of the way of its emitter. */
    AIR,
    /** The pipe in which water leaves the source for the mains. */
    FLOW;

    /** Whether it is read off a pipe, with a clamp. */
    boolean byClamp() {
      return this == INLET || this == RETURN || this == FLOW;
    }
  }
}
