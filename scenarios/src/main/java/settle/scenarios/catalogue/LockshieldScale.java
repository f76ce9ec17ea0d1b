package settle.scenarios.catalogue;

/**
 * Flow coefficient of a typical 15 mm lockshield over its turns open. Invented, of the usual order:
 * fine over the first turn, nearly open after three.
 */
public final class LockshieldScale {

  private static final double[] TURNS = {0, 0.25, 0.5, 1, 1.5, 2, 3, 4};
  private static final double[] KV = {0, 0.05, 0.11, 0.26, 0.44, 0.66, 1.05, 1.3};

  private LockshieldScale() {}

  /**
   * Flow coefficient.
   *
   * @param turns turns open, held at the ends of the scale
   * @return [m3/h at 1 bar]
   */
  public static double kv(double turns) {
    return between(TURNS, KV, turns);
  }

  /**
   * Turns open.
   *
   * @param kv flow coefficient [m3/h at 1 bar], held at the ends of the scale
   * @return turns
   */
  public static double turns(double kv) {
    return between(KV, TURNS, kv);
  }

  private static double between(double[] from, double[] to, double x) {
    int i = 0;
    while (i + 2 < from.length && x > from[i + 1]) {
      i++;
    }
    double share = Math.min(Math.max((x - from[i]) / (from[i + 1] - from[i]), 0), 1);
    return to[i] + share * (to[i + 1] - to[i]);
  }
}
