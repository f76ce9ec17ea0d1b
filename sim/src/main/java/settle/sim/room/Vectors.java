package settle.sim.room;

/** Products and sums of short vectors, in a fixed order. */
final class Vectors {

  private Vectors() {}

  /** Products of rows with one vector, two rows at a time. */
  static void products(double[][] rows, double[] v, double[] result) {
    int y = 0;
    for (; y + 1 < rows.length; y += 2) {
      double[] a = rows[y];
      double[] b = rows[y + 1];
      double a0 = 0;
      double a1 = 0;
      double b0 = 0;
      double b1 = 0;
      int i = 0;
      for (; i + 1 < v.length; i += 2) {
        double v0 = v[i];
        double v1 = v[i + 1];
        a0 += a[i] * v0;
        a1 += a[i + 1] * v1;
        b0 += b[i] * v0;
        b1 += b[i + 1] * v1;
      }
      if (i < v.length) {
        a0 += a[i] * v[i];
        b0 += b[i] * v[i];
      }
      result[y] = a0 + a1;
      result[y + 1] = b0 + b1;
    }
    if (y < rows.length) {
      result[y] = dot(rows[y], v);
    }
  }

  /**
   * Sum of products; four partial sums, in a fixed order, so that additions need not wait for each
   * other.
   */
  static double dot(double[] a, double[] b) {
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    int n = a.length;
    int i = 0;
    for (; i + 3 < n; i += 4) {
      s0 += a[i] * b[i];
      s1 += a[i + 1] * b[i + 1];
      s2 += a[i + 2] * b[i + 2];
      s3 += a[i + 3] * b[i + 3];
    }
    for (; i < n; i++) {
      s0 += a[i] * b[i];
    }
    return (s0 + s1) + (s2 + s3);
  }

  /** Sum of products of three, summed likewise. */
  static double dot(double[] a, double[] b, double[] c) {
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    int n = a.length;
    int i = 0;
    for (; i + 3 < n; i += 4) {
      s0 += a[i] * b[i] * c[i];
      s1 += a[i + 1] * b[i + 1] * c[i + 1];
      s2 += a[i + 2] * b[i + 2] * c[i + 2];
      s3 += a[i + 3] * b[i + 3] * c[i + 3];
    }
    for (; i < n; i++) {
      s0 += a[i] * b[i] * c[i];
    }
    return (s0 + s1) + (s2 + s3);
  }

  /** Adds a vector so many times. */
  static void add(double[] f, double[] b, double value) {
    for (int m = 0; m < f.length; m++) {
      f[m] += b[m] * value;
    }
  }

  /** Adds vectors from one on, each so many times, two at a time. */
  static void addAll(double[] f, double[][] b, double[] value, int from) {
    int u = from;
    for (; u + 1 < value.length; u += 2) {
      double[] first = b[u];
      double[] second = b[u + 1];
      double v = value[u];
      double w = value[u + 1];
      for (int m = 0; m < f.length; m++) {
        f[m] += first[m] * v + second[m] * w;
      }
    }
    if (u < value.length) {
      add(f, b[u], value[u]);
    }
  }
}
