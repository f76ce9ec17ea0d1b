package settle.sim.notice;

/** What there is to notice, each with its numbers, in SI. */
public enum Code {
  /** Every valve is shut while heat is called for: how long [s]. */
  DEAD_END(Severity.FAULT),
  /** Steps came to no agreement: how many, of how many. */
  STEPS_UNAGREED(Severity.FIGURES),
  /** Too little water for the heat pump to run though it is called: how long [s]. */
  KEPT_OFF(Severity.FAULT),
  /** The heat pump runs where its declared performance ends: how long [s]. */
  OUTSIDE_DECLARED(Severity.FIGURES),
  /** Water never flows through a branch. */
  NO_WATER(Severity.FAULT),

  /** The pump cannot carry the design flows; about the index branch: head it needs [Pa], share. */
  PUMP_TOO_WEAK(Severity.FAULT),
  /** A branch is shut as given, and left so. */
  LEFT_SHUT(Severity.ADVICE),
  /** Round a loop there is no lockshield to balance it by; about its first branch. */
  LOOP_UNBALANCED(Severity.ADVICE),
  /** A branch is heard: velocity [m/s]. */
  NOISY_BRANCH(Severity.ADVICE),
  /** A valve governs its flow only when nearly shut: authority. */
  LITTLE_AUTHORITY(Severity.ADVICE),
  /** A lockshield is open so little that it blocks: fewer turns than this. */
  NEARLY_SHUT(Severity.ADVICE),
  /** Mains are heard: velocity [m/s]. */
  NOISY_MAINS(Severity.ADVICE),
  /** Valves are heard when they close: head made then, head above which they are [Pa]. */
  NOISY_VALVES(Severity.ADVICE),

  /** The rooms need hotter water than the source makes: flow needed, highest [°C]. */
  FLOW_OUT_OF_REACH(Severity.FAULT),
  /** The controls ask for hotter water than it makes: flow asked, highest [°C]. */
  CURVE_TOO_HIGH(Severity.ADVICE),
  /** No water holds every room: hottest flow looked at [°C]. */
  NO_FLOW_HOLDS(Severity.FAULT),
  /** The rooms need hotter water than is asked for: flow asked, flow needed [°C]. */
  FLOW_TOO_LOW(Severity.FAULT),
  /** Cooler water would do better: flow asked, flow needed [°C], seasonal factor then, now. */
  FLOW_LOWERS_FACTOR(Severity.ADVICE),
  /** Likewise for a boiler: flow asked, flow needed [°C], efficiency then, now. */
  FLOW_LOWERS_EFFICIENCY(Severity.ADVICE),
  /** Declared performance ends before design weather: outdoor, flow [°C]. */
  DESIGN_NOT_DECLARED(Severity.FIGURES),
  /** It never has the water it needs: flow with every valve open, least flow [l/h]. */
  NEVER_RUNS(Severity.FAULT),
  /**
   * Valves leave it too little: from outdoors [°C], least flow [l/h], mild [°C], flow left [l/h].
   */
  THROTTLED(Severity.FAULT),
  /** It stands still, run: outdoors [°C], share of the time. */
  STANDS_STILL(Severity.FAULT),
  /** It is too small even with its heater: power, load, heater that would do [W]. */
  TOO_SMALL_WITH_HEATER(Severity.FAULT),
  /** Electric heaters make much of the heat: below outdoors [°C], share of the season's. */
  MUCH_BACKUP(Severity.ADVICE),
  /** So little water passes that volume is no help: outdoors [°C], rise, switching band [K]. */
  PASSES_TOO_LITTLE(Severity.FAULT),
  /**
   * More water would help: outdoors [°C], least, load [W], starts [1/h], more [m³], starts then.
   */
  VOLUME_LACKING(Severity.ADVICE),
  /** It starts often: outdoors [°C], starts, how many are often [1/h]. */
  STARTS_OFTEN(Severity.ADVICE),
  /** It is too small: power, load [W]. */
  TOO_SMALL(Severity.FAULT),
  /** Hot water delays a room's warm-up: with it, without it [s]. */
  HOT_WATER_DELAYS(Severity.ADVICE),
  /** Hot water keeps a room from being warm at all: warm-up without it [s]. */
  HOT_WATER_PREVENTS(Severity.FAULT),
  /** A boiler condenses little: share. */
  CONDENSES_LITTLE(Severity.ADVICE),
  /** It makes too much at least and cycles: above outdoors [°C]. */
  MODULATES_TOO_LITTLE(Severity.ADVICE);

  private final Severity severity;

  Code(Severity severity) {
    this.severity = severity;
  }

  /** Its severity. */
  public Severity severity() {
    return severity;
  }
}
