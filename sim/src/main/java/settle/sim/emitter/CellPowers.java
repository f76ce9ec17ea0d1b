package settle.sim.emitter;

/**
 * y^(n-1) of cells whose excess y moves little from one question to the next: kept until it has
 * moved far, and followed by the Taylor series in between, to 1e-6 of itself.
 */
final class CellPowers {

  /** Excess moved from where the power was last computed in full [K]. */
  private static final double KEEP = 0.5;

  private final double n1;
  private final double c2;
  private final double c3;

  // Excess at which the power was last computed, and the value; 0 K is too far from any other
  private final double[] anchor;
  private final double[] anchorPower;

  /**
   * @param exponent n [-]
   * @param cells how many
   */
  CellPowers(double exponent, int cells) {
    n1 = exponent - 1;
    c2 = (n1 - 1) / 2;
    c3 = (n1 - 2) / 3;
    anchor = new double[cells];
    anchorPower = new double[cells];
  }

  /** y^(n-1) of a cell at an excess above 0 [K]. */
  double at(int cell, double y) {
    double d = y - anchor[cell];
    if (!(Math.abs(d) < KEEP && Math.abs(d) < 0.05 * y)) {
      anchor[cell] = y;
      anchorPower[cell] = Math.pow(y, n1);
      return anchorPower[cell];
    }
    double r = d / anchor[cell];
    return anchorPower[cell] * (1 + n1 * r * (1 + c2 * r * (1 + c3 * r)));
  }
}
