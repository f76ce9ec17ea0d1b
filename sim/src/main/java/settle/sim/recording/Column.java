package settle.sim.recording;

/** A column of a trace. */
public interface Column {

  /** What it holds. */
  Heading heading();

  /**
   * Its values; the trace's own array, not to be modified.
   *
   * @param trace where they were recorded
   * @param which position of the room, branch or main it is about; of no account for the house
   */
  double[] of(Trace trace, int which);

  /** Whether every room has it. */
  default boolean ofRoom() {
    return false;
  }

  /** Whether every branch has it. */
  default boolean ofBranch() {
    return false;
  }

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
