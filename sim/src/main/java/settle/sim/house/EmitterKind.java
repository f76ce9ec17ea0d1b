package settle.sim.house;

/** What sort of emitters an arrangement has. */
public enum EmitterKind {
  /** Heated skirting only. */
  PERIMETER,
  /** Radiators and towel rails only. */
  RADIATOR,
  /** Both. */
  MIXED
}
