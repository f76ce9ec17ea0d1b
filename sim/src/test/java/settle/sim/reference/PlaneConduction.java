package settle.sim.reference;

import java.util.Arrays;

/**
 * Steady conduction in a rectangle, two-dimensional: finite volumes between grid lines, each of one
 * conductivity, solved by conjugate gradients. Sides are adiabatic until a film is put on them.
 */
public final class PlaneConduction {

  /** Residual at which the solution ends, as a share of the first. */
  private static final double CLOSE = 1e-12;

  private final double[] width;
  private final double[] height;
  private final double[] conductivity;
  private final int columns;
  private final int rows;

  private final double[] toRight;
  private final double[] toAbove;
  private final double[] own;
  private final double[] source;
  private double[] temperature;

  /**
   * @param width of each column of cells, from left [m]
   * @param conductivity of each column [W/(m K)]
   * @param height of each row of cells, from below [m]
   */
  public PlaneConduction(double[] width, double[] conductivity, double[] height) {
    this.width = width;
    this.height = height;
    this.conductivity = conductivity;
    columns = width.length;
    rows = height.length;
    int cells = columns * rows;
    toRight = new double[cells];
    toAbove = new double[cells];
    own = new double[cells];
    source = new double[cells];
    temperature = new double[cells];
    for (int i = 0; i < columns; i++) {
      for (int j = 0; j < rows; j++) {
        if (i + 1 < columns) {
          toRight[at(i, j)] = height[j] / (across(i) + across(i + 1));
        }
        if (j + 1 < rows) {
          toAbove[at(i, j)] = width[i] * conductivity[i] / ((height[j] + height[j + 1]) / 2);
        }
      }
    }
  }

  /** Resistance from the middle of a column to its edge [m²K/W]. */
  private double across(int column) {
    return width[column] / 2 / conductivity[column];
  }

  private int at(int i, int j) {
    return i * rows + j;
  }

  /** Conductance of the left edge of a cell with a film, per metre of depth [W/(m K)]. */
  private double leftEdge(int j, double film) {
    return height[j] / (across(0) + film);
  }

  /** Puts a film [m²K/W] and a temperature [°C] on the left side of a row. */
  public void left(int j, double film, double there) {
    hold(at(0, j), leftEdge(j, film), there);
  }

  /** Puts a film and a temperature on the right side of a row. */
  public void right(int j, double film, double there) {
    hold(at(columns - 1, j), height[j] / (across(columns - 1) + film), there);
  }

  /** Puts a temperature on the lower edge of a column. */
  public void below(int i, double there) {
    hold(at(i, 0), width[i] * conductivity[i] / (height[0] / 2), there);
  }

  /** Puts a temperature on the upper edge of a column. */
  public void above(int i, double there) {
    hold(at(i, rows - 1), width[i] * conductivity[i] / (height[rows - 1] / 2), there);
  }

  private void hold(int cell, double g, double there) {
    own[cell] += g;
    source[cell] += g * there;
  }

  /** Finds the temperatures. */
  public void solve() {
    int n = own.length;
    double[] x = new double[n];
    double[] r = source.clone();
    double[] diagonal = diagonal();
    double[] z = new double[n];
    double[] p = new double[n];
    double[] q = new double[n];
    Arrays.setAll(z, k -> r[k] / diagonal[k]);
    System.arraycopy(z, 0, p, 0, n);
    double rz = dot(r, z);
    double enough = CLOSE * CLOSE * rz;
    for (int round = 0; rz > enough; round++) {
      if (round > 20 * n) {
        throw new IllegalStateException("conduction came to no solution");
      }
      flows(p, q);
      double step = rz / dot(p, q);
      for (int k = 0; k < n; k++) {
        x[k] += step * p[k];
        r[k] -= step * q[k];
        z[k] = r[k] / diagonal[k];
      }
      double next = dot(r, z);
      double share = next / rz;
      for (int k = 0; k < n; k++) {
        p[k] = z[k] + share * p[k];
      }
      rz = next;
    }
    temperature = x;
  }

  private double[] diagonal() {
    double[] diagonal = own.clone();
    for (int i = 0; i < columns; i++) {
      for (int j = 0; j < rows; j++) {
        int cell = at(i, j);
        diagonal[cell] += toRight[cell] + toAbove[cell];
        if (i + 1 < columns) {
          diagonal[at(i + 1, j)] += toRight[cell];
        }
        if (j + 1 < rows) {
          diagonal[at(i, j + 1)] += toAbove[cell];
        }
      }
    }
    return diagonal;
  }

  /** Heat that leaves each cell at temperatures t. */
  private void flows(double[] t, double[] out) {
    for (int k = 0; k < t.length; k++) {
      out[k] = own[k] * t[k];
    }
    for (int i = 0; i < columns; i++) {
      for (int j = 0; j < rows; j++) {
        int cell = at(i, j);
        if (i + 1 < columns) {
          pass(toRight[cell], t, out, cell, at(i + 1, j));
        }
        if (j + 1 < rows) {
          pass(toAbove[cell], t, out, cell, at(i, j + 1));
        }
      }
    }
  }

  private static void pass(double g, double[] t, double[] out, int a, int b) {
    double flow = g * (t[a] - t[b]);
    out[a] += flow;
    out[b] -= flow;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int k = 0; k < a.length; k++) {
      sum += a[k] * b[k];
    }
    return sum;
  }

  /** Temperature of a cell [°C]. */
  public double temperature(int i, int j) {
    return temperature[at(i, j)];
  }

  /** Heat that enters a row at its left side from behind a film [W/m]. */
  public double enteringLeft(int j, double film, double there) {
    return leftEdge(j, film) * (there - temperature(0, j));
  }
}
