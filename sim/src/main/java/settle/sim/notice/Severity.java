package settle.sim.notice;

/** Severity of a notice. */
public enum Severity {
  /** The figures themselves are in doubt. */
  FIGURES,
  /** The plant does not do what it is meant to do. */
  FAULT,
  /** It does, but would do better otherwise. */
  ADVICE
}
