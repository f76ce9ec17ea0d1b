package settle.sim.recording;

/** What is recorded for the house as a whole. */
public enum HouseColumn implements Column {
  /** Mean outdoor temperature over the step [°C]. */
  OUTDOOR("outdoor", "°C", true),
  /**
   * Mean temperature of the water that goes into the mains, behind source and buffer [°C]; not a
   * number without flow.
   */
  FLOW("flow", "°C", true),
  /**
   * Mean temperature of the water that comes back from the mains [°C]; not a number without flow.
   */
  RETURN("return", "°C", true),
  /** Mean mass flow through the mains, bypass counted [kg/s]. */
  MASS_FLOW("mass flow", "kg/s", true),
  /** Mean heat given to the water by the source over the step [W]; below 0 in a defrost. */
  SOURCE_HEAT("source heat", "W", true),
  /** Mean fuel (gross) or electrical power taken by the source over the step [W]. */
  SOURCE_INPUT("source input", "W", true),
  /** 1 while heat is called for, 0 otherwise [-]. */
  CALL("call for heat", "-", true),
  /** Flow temperature asked of the source [°C]. */
  SET_POINT("flow set-point", "°C", true),
  /** Mean temperature of the water leaving the source, before any buffer [°C]. */
  SOURCE_FLOW("source flow", "°C", true),
  /**
   * Mean temperature of the water entering the source, behind any buffer and mixed by a by-pass of
   * its own [°C].
   */
  SOURCE_RETURN("source return", "°C", true),
  /** Mean heat from the backup heater, part of the source's heat [W]. */
  BACKUP_HEAT("backup heat", "W", true),
  /** Source starts since the recording began, at the step's end [-]. */
  STARTS("starts", "-", false),
  /** Mean differential pressure over the pump [Pa]; 0 while it rests. */
  PUMP_HEAD("pump head", "Pa", true),
  /** Mean electrical power of the pump [W]. */
  PUMP_POWER("pump power", "W", true),
  /** Mean mass flow through the automatic bypass [kg/s]. */
  BYPASS_FLOW("bypass flow", "kg/s", true),
  /** Mean heat lost by mains and branch pipes, to rooms or elsewhere [W]. */
  PIPE_LOSS("pipe loss", "W", true);

  private final Heading heading;

  HouseColumn(String label, String unit, boolean stepMean) {
    heading = new Heading(label, unit, stepMean);
  }

  @Override
  public Heading heading() {
    return heading;
  }

  @Override
  public double[] of(Trace trace, int which) {
    return trace.column(this);
  }
}
