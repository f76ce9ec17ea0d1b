package settle.sim.recording;

/** What is recorded for each branch. */
public enum BranchColumn implements Column {
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
  OPENING("opening", "-", true),
  /** Differential pressure between flow and return where the branch is connected [Pa]. */
  PRESSURE("pressure", "Pa", true),
  /** Temperature of the face at the end of the run that is farthest from the inlet [°C]. */
  FAR_END("far end", "°C", false);

  private final Heading heading;

  BranchColumn(String label, String unit, boolean stepMean) {
    heading = new Heading(label, unit, stepMean);
  }

  @Override
  public Heading heading() {
    return heading;
  }

  @Override
  public double[] of(Trace trace, int which) {
    return trace.column(this, which);
  }

  @Override
  public boolean ofBranch() {
    return true;
  }
}
