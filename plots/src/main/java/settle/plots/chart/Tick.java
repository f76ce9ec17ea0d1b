package settle.plots.chart;

/**
 * A place on an axis.
 *
 * @param value where
 * @param label what stands there; empty for a line only
 * @param strong whether its grid line separates, as midnight does
 * @param note what stands below the label; empty for nothing
 */
record Tick(double value, String label, boolean strong, String note) {

  /** A plain tick. */
  Tick(double value, String label) {
    this(value, label, false, "");
  }
}
