package settle.sim.tuning;

/** Settings that are tuned, or left alone, together. */
public enum Group {
  /** What each room's head is set to. */
  KNOBS,
  /** Weather compensation, or the flow temperature where there is none. */
  CURVE,
  /** How early heating begins before a period. */
  PREHEAT,
  /** Lockshields, and the pump that a balance sets with them. */
  LOCKSHIELDS,
  /** Switching differential of the room thermostat. */
  THERMOSTAT,
  /** Gains of motor heads. */
  GAINS
}
