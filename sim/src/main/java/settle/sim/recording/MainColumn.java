package settle.sim.recording;

/** What is recorded for each pair of mains. */
public enum MainColumn implements Column {
  /** Mean mass flow over the step [kg/s]. */
  MASS_FLOW("mass flow", "kg/s", true),
  /** Mean temperature of the water that arrives at its end [°C]; not a number without flow. */
  FLOW("flow", "°C", true),
  /** Mean temperature of the water that comes back from its end [°C]; not a number without flow. */
  RETURN("return", "°C", true),
  /** Differential pressure between flow and return at its end [Pa]. */
  PRESSURE("pressure", "Pa", true);

  private final Heading heading;

  MainColumn(String label, String unit, boolean stepMean) {
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
}
