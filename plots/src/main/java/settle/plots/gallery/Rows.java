package settle.plots.gallery;

/**
 * Groups of rows below one another, one row per arrangement, on an axis of names.
 *
 * @param groups how many
 * @param inGroup rows in each
 * @param row height of a row [px]
 * @param gap between groups [px]
 */
record Rows(int groups, int inGroup, double row, double gap) {

  private double group() {
    return inGroup * row + gap;
  }

  /** Height of it all [px]. */
  int height() {
    return (int) Math.round(groups * group());
  }

  /** Middle of a row [unit of the axis]. */
  double y(int group, int inGroup) {
    return groups - group - (gap / 2 + (inGroup + 0.5) * row) / group();
  }

  /** Height of a bar that leaves a little paper between rows [unit of the axis]. */
  double width() {
    return (row - 2) / group();
  }
}
