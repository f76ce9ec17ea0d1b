package settle.sim.recording;

/** What is recorded for each room. */
public enum RoomColumn implements Column {
  /** Air temperature at the step's end [°C]. */
  AIR("air", "°C", false),
  /** Mean radiant temperature at the step's end [°C]. */
  RADIANT("radiant", "°C", false),
  /** Operative temperature at the step's end [°C]. */
  OPERATIVE("operative", "°C", false),
  /** Want-temperature in force during the step [°C]. */
  WANT("want", "°C", true),
  /** Mean output of the room's emitters over the step, pipes not counted [W]. */
  HEAT("heat", "W", true),
  /** Mean heat over the step from pipes that lie in the room [W]. */
  PIPE_HEAT("heat from pipes", "W", true);

  private final Heading heading;

  RoomColumn(String label, String unit, boolean stepMean) {
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
  public boolean ofRoom() {
    return true;
  }
}
