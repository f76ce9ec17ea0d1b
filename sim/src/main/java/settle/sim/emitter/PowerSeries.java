package settle.sim.emitter;

/**
 * (1 + s)^q for s near 0, by its series: as good as the power itself, and several times cheaper.
 */
final class PowerSeries {

  /** |s| below which the series does, to 1e-8 of itself for q above -10 [-]. */
  static final double WIDEST = 0.02;

  /** Distance of the values about which further powers are expanded [-]. */
  private static final double APART = 2 * WIDEST;

  /** Up to where there are such values [-]. */
  private static final double FURTHEST = 1;

  /** |s| below which four terms do as well. */
  private static final double NARROW = 1e-3;

  private final double c1;
  private final double c2;
  private final double c3;
  private final double c4;
  private final double c5;
  private final double c6;

  private final double[] inverse;
  private final double[] power;

  PowerSeries(double q) {
    c1 = q;
    c2 = c1 * (q - 1) / 2;
    c3 = c2 * (q - 2) / 3;
    c4 = c3 * (q - 3) / 4;
    c5 = c4 * (q - 4) / 5;
    c6 = c5 * (q - 5) / 6;
    inverse = new double[(int) Math.round(FURTHEST / APART) + 1];
    power = new double[inverse.length];
    for (int k = 0; k < power.length; k++) {
      inverse[k] = 1 / (1 + k * APART);
      power[k] = Math.pow(1 + k * APART, q);
    }
  }

  /** (1 + s)^q for |s| below {@link #WIDEST}. */
  double at(double s) {
    double further = Math.abs(s) < NARROW ? c4 : c4 + s * (c5 + s * c6);
    return 1 + s * (c1 + s * (c2 + s * (c3 + s * further)));
  }

  /** Whether {@link #above} has the power for an s >= 0. */
  boolean reaches(double s) {
    return s < FURTHEST;
  }

  /** (1 + s)^q for s from 0 to where it {@link #reaches}: about the nearest of some values. */
  double above(double s) {
    int k = (int) (s * (1 / APART) + 0.5);
    return power[k] * at((s - k * APART) * inverse[k]);
  }
}
