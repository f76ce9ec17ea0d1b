package settle.sim.atrest;

/**
 * Speeds up what is repeated until it stays, x = g(x): from the last few rounds it reads how the
 * change answers to where one stands, and goes where by that there would be none left (Anderson,
 * Journal of the ACM 12, 1965, from memory). Without it two heads that share a room, each nearly
 * undoing what the other did, take thousands of rounds.
 */
final class Anderson {

  /** What is left of a direction once those before are taken out, below which it tells nothing. */
  private static final double INDEPENDENT = 1e-8;

  private final int size;
  private final int depth;
  private final double[] lastX;
  private final double[] lastChange;
  private final double[][] stepped;
  private final double[][] changed;
  private final double[][] basis;
  private final double[][] triangle;
  private final double[] share;
  private final double[] left;
  private int count;
  private int next;
  private boolean begun;

  /**
   * @param size of x
   * @param depth rounds remembered
   */
  Anderson(int size, int depth) {
    this.size = size;
    this.depth = depth;
    lastX = new double[size];
    lastChange = new double[size];
    stepped = new double[depth][size];
    changed = new double[depth][size];
    basis = new double[depth][size];
    triangle = new double[depth][depth];
    share = new double[depth];
    left = new double[size];
  }

  /** Forgets all rounds. */
  void begin() {
    count = 0;
    next = 0;
    begun = false;
  }

  /**
   * Notes a round and moves on.
   *
   * @param x where one stood; on return where to go
   * @param gx what came of it; not modified
   */
  void go(double[] x, double[] gx) {
    if (begun) {
      for (int i = 0; i < size; i++) {
        stepped[next][i] = x[i] - lastX[i];
        changed[next][i] = gx[i] - x[i] - lastChange[i];
      }
      next = (next + 1) % depth;
      count = Math.min(count + 1, depth);
    }
    begun = true;
    for (int i = 0; i < size; i++) {
      lastX[i] = x[i];
      lastChange[i] = gx[i] - x[i];
    }
    leastSquares();
    System.arraycopy(gx, 0, x, 0, size);
    for (int j = 0; j < count; j++) {
      int k = slot(j);
      for (int i = 0; i < size; i++) {
        x[i] -= share[j] * (stepped[k][i] + changed[k][i]);
      }
    }
  }

  /** Slot of the j-th youngest round. */
  private int slot(int j) {
    return (next - 1 - j + 2 * depth) % depth;
  }

  /** Shares of the remembered changes that come nearest to the last change. */
  private void leastSquares() {
    System.arraycopy(lastChange, 0, left, 0, size);
    boolean[] used = new boolean[depth];
    double[] projected = new double[depth];
    for (int j = 0; j < count; j++) {
      double[] q = basis[j];
      System.arraycopy(changed[slot(j)], 0, q, 0, size);
      double before = norm(q);
      for (int k = 0; k < j; k++) {
        triangle[k][j] = used[k] ? product(basis[k], q) : 0;
        add(q, -triangle[k][j], basis[k]);
      }
      double after = norm(q);
      used[j] = after > INDEPENDENT * before && before > 0;
      if (used[j]) {
        triangle[j][j] = after;
        for (int i = 0; i < size; i++) {
          q[i] /= after;
        }
        projected[j] = product(q, left);
      }
    }
    for (int j = count - 1; j >= 0; j--) {
      double sum = projected[j];
      for (int k = j + 1; k < count; k++) {
        sum -= triangle[j][k] * share[k];
      }
      share[j] = used[j] ? sum / triangle[j][j] : 0;
    }
  }

  private double norm(double[] a) {
    return Math.sqrt(product(a, a));
  }

  private double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private void add(double[] a, double factor, double[] b) {
    for (int i = 0; i < size; i++) {
      a[i] += factor * b[i];
    }
  }
}
