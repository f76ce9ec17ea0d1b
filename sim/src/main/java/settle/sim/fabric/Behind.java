package settle.sim.fabric;

/** What an element separates a room from, as far as its usual make-up depends on it. */
public enum Behind {
  /** The air outdoors: walls have an outer skin. */
  OUTDOORS,
  /** The ground. */
  GROUND,
  /** Another room or a neighbour: both faces see a room. */
  ROOM
}
