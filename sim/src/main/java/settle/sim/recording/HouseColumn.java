package settle.sim.recording;

/** What is recorded for the house as a whole. */
public enum HouseColumn {
  /** Mean outdoor temperature over the step [°C]. */
  OUTDOOR("outdoor", "°C", true),
  /** Mean flow temperature leaving the source over the step [°C]; not a number without flow. */
  FLOW("flow", "°C", true),
  /** Mean, flow-weighted return temperature over the step [°C]; not a number without flow. */
  RETURN("return", "°C", true),
  /** Mean mass flow through the source over the step [kg/s]. */
  MASS_FLOW("mass flow", "kg/s", true),
  /** Mean heat given to the water by the source over the step [W]. */
  SOURCE_HEAT("source heat", "W", true),
  /** Mean fuel (gross) or electrical power taken by the source over the step [W]. */
  SOURCE_INPUT("source input", "W", true),
  /** 1 while heat is called for, 0 otherwise [-]. */
  CALL("call for heat", "-", true);

  private final String label;
  private final String unit;
  private final boolean stepMean;

  HouseColumn(String label, String unit, boolean stepMean) {
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
