package settle.sim.source;

/** Tables over two temperatures: bilinear inside, held at the edge outside. */
final class Grid {

  private Grid() {}

  /**
   * Value of a table at a point.
   *
   * @param rows ascending
   * @param columns ascending
   * @param values one row per entry of {@code rows}, one column per entry of {@code columns}
   */
  static double bilinear(
      double[] rows, double[] columns, double[][] values, double row, double column) {
    int i = cell(rows, row);
    int j = cell(columns, column);
    double s = share(rows, i, row);
    double r = share(columns, j, column);
    int i1 = Math.min(i + 1, rows.length - 1);
    int j1 = Math.min(j + 1, columns.length - 1);
    return (1 - s) * ((1 - r) * values[i][j] + r * values[i][j1])
        + s * ((1 - r) * values[i1][j] + r * values[i1][j1]);
  }

  private static int cell(double[] grid, double x) {
    int i = 0;
    while (i + 2 < grid.length && x >= grid[i + 1]) {
      i++;
    }
    return i;
  }

  private static double share(double[] grid, int i, double x) {
    if (grid.length == 1) {
      return 0;
    }
    return Math.min(Math.max((x - grid[i]) / (grid[i + 1] - grid[i]), 0), 1);
  }

  static void requireAscending(String what, double[] grid) {
    if (grid.length == 0) {
      throw new IllegalArgumentException("no " + what);
    }
    for (int i = 1; i < grid.length; i++) {
      if (!(grid[i] > grid[i - 1])) {
        throw new IllegalArgumentException(what + " must ascend");
      }
    }
  }

  static void requireShape(String what, double[][] values, int rows, int columns) {
    if (values.length != rows) {
      throw new IllegalArgumentException(what + " needs " + rows + " rows, has " + values.length);
    }
    for (double[] row : values) {
      if (row.length != columns) {
        throw new IllegalArgumentException(
            what + " needs " + columns + " columns, has " + row.length);
      }
    }
  }
}
