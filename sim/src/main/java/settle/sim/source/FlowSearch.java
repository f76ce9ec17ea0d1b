package settle.sim.source;

/**
 * Looks for the flow temperature at which a source and what it feeds agree: what the source answers
 * to the return that a guess brings is the guess. Secant method until the residual has changed its
 * sign; from then on inside what is known to lie below and above, by false position with the
 * residual of an end that stays put halved (the Illinois method). A source that switches within the
 * step bends the answer, and at worst breaks it, where the secant alone would run away.
 */
public final class FlowSearch {

  private double lastGuess;
  private double lastResidual;
  private double below;
  private double above;

  /** Residuals there, that of an end that stays put halved [K]. */
  private double residualBelow;

  private double residualAbove;

  /** Begins anew. */
  public void begin() {
    lastGuess = Double.NaN;
    lastResidual = Double.NaN;
    below = Double.NEGATIVE_INFINITY;
    above = Double.POSITIVE_INFINITY;
  }

  /**
   * The next guess [°C].
   *
   * @param guess the last one [°C]
   * @param answer the source's to it [°C]
   */
  public double next(double guess, double answer) {
    double residual = answer - guess;
    // The residual falls by 1 per kelvin where the source does not mind, less where it follows its
    // return; other slopes come from switching and lead away.
    double slope = (residual - lastResidual) / (guess - lastGuess);
    if (residual > 0) {
      below = guess;
      residualBelow = residual;
      if (lastResidual > 0) {
        residualAbove /= 2;
      }
    } else {
      above = guess;
      residualAbove = residual;
      if (lastResidual <= 0) {
        residualBelow /= 2;
      }
    }
    lastGuess = guess;
    lastResidual = residual;
    if (Double.isInfinite(above - below)) {
      return slope < -1e-6 && slope > -5 ? guess - residual / slope : answer;
    }
    double next = (below * residualAbove - above * residualBelow) / (residualAbove - residualBelow);
    return next > below && next < above ? next : (below + above) / 2;
  }
}
