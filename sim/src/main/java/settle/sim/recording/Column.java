package settle.sim.recording;

/** A column of a trace. */
public interface Column {

  /** What it holds. */
  Heading heading();

  /** Name for headings. */
  default String label() {
    return heading().label();
  }

  /** Unit for headings. */
  default String unit() {
    return heading().unit();
  }

  /**
   * Whether a value is the mean over the step that ends at its time; otherwise it is the value at
   * that time.
   */
  default boolean stepMean() {
    return heading().stepMean();
  }

  /**
   * What a column holds.
   *
   * @param label name for headings
   * @param unit unit for headings
   * @param stepMean whether values are means over the step that ends at their time
   */
  record Heading(String label, String unit, boolean stepMean) {}
}
