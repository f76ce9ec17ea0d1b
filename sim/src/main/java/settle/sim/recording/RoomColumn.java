package settle.sim.recording;

/** What is recorded for each room. */
public enum RoomColumn {
  /** Air temperature at the step's end [°C]. */
  AIR("air", "°C", false),
  /** Mean radiant temperature at the step's end [°C]. */
  RADIANT("radiant", "°C", false),
  /** Operative temperature at the step's end [°C]. */
  OPERATIVE("operative", "°C", false),
  /** Want-temperature in force during the step [°C]. */
  WANT("want", "°C", true),
  /** Mean output of the room's emitters over the step [W]. */
  HEAT("heat", "W", true);

  private final String label;
  private final String unit;
  private final boolean stepMean;

  RoomColumn(String label, String unit, boolean stepMean) {
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
