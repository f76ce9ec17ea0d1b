package settle.plots.chart;

/**
 * A place on an axis.
 *
 * @param value where
 * @param label what stands there; empty for a line only
 * @param kind what its line and label are like
 * @param note what stands below the label; empty for nothing
 */
public record Tick(double value, String label, Kind kind, String note) {

  /** What a tick is like. */
  public enum Kind {
    /** A pale line. */
    PLAIN,
    /** A line that separates, as midnight does. */
    STRONG,
    /** A name without a line. */
    NAME
  }

  /** A plain tick. */
  public Tick(double value, String label) {
    this(value, label, Kind.PLAIN, "");
  }
}
