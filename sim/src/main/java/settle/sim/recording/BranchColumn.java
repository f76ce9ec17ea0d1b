package settle.sim.recording;

/** What is recorded for each branch. */
public enum BranchColumn {
  /** Mean mass flow over the step [kg/s]. */
  MASS_FLOW("mass flow", "kg/s", true),
  /** Mean temperature of the water entering the emitter [°C]; not a number without flow. */
  INLET("inlet", "°C", true),
  /** Mean temperature of the water leaving the emitter [°C]; not a number without flow. */
  RETURN("return", "°C", true),
  /** Mean output of the emitter over the step [W]. */
  HEAT("heat", "W", true),
  /**
   * Temperature of the valve's sensing element at the step's end [°C]; not a number for a fixed
   * opening.
   */
  SENSED("sensed", "°C", false),
  /** Valve opening K_v/K_vs during the step [-]. */
  OPENING("opening", "-", true);

  private final String label;
  private final String unit;
  private final boolean stepMean;

  BranchColumn(String label, String unit, boolean stepMean) {
    this.label = label;
    this.unit = unit;
    this.stepMean = stepMean;
  }

  /** Name for headings. */
  public String label() {
    return label;
  }

  /** Unit for headings. */
  public String unit() {
    return unit;
  }

  /**
   * Whether a value is the mean over the step that ends at its time; otherwise it is the value at
   * that time.
   */
  public boolean stepMean() {
    return stepMean;
  }
}
