package settle.sim.hydraulics;

/**
 * Flow coefficient of a lockshield over its turns open, straight between points.
 *
 * @param turns ascending from 0 [-]; not modified
 * @param kv ascending from 0, same length [m³/h at 1 bar]; not modified
 */
public record LockshieldScale(double[] turns, double[] kv) {

  /**
   * A typical 15 mm lockshield. Invented, of the usual order: fine over the first turn, nearly open
   * after three.
   */
  public static final LockshieldScale TYPICAL =
      new LockshieldScale(
          new double[] {0, 0.25, 0.5, 1, 1.5, 2, 3, 4},
          new double[] {0, 0.05, 0.11, 0.26, 0.44, 0.66, 1.05, 1.3});

  public LockshieldScale {
    turns = turns.clone();
    kv = kv.clone();
    if (turns.length < 2 || turns.length != kv.length || turns[0] != 0 || kv[0] != 0) {
      throw new IllegalArgumentException(
          "a lockshield's scale needs two points or more, the first at 0 turns and Kv 0");
    }
    for (int i = 1; i < turns.length; i++) {
      if (!(turns[i] > turns[i - 1] && kv[i] > kv[i - 1])) {
        throw new IllegalArgumentException("along a lockshield's scale turns and Kv must rise");
      }
    }
  }

  /**
   * The lockshield so many turns open.
   *
   * @param open turns open [-], held at the ends of the scale
   */
  public Lockshield atTurns(double open) {
    return new Lockshield("lockshield", open, between(turns, kv, open));
  }

  /**
   * The lockshield that has a flow coefficient.
   *
   * @param wanted [m³/h at 1 bar]; turns are held at the ends of the scale
   */
  public Lockshield atKv(double wanted) {
    return new Lockshield("lockshield", between(kv, turns, wanted), wanted);
  }

  /** The lockshield fully open. */
  public Lockshield open() {
    return atTurns(turns[turns.length - 1]);
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
