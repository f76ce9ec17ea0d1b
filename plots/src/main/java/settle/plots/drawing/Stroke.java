package settle.plots.drawing;

/**
 * How a line is drawn, whatever its colour.
 *
 * @param width [px]
 * @param dash how it is interrupted
 * @param round whether its ends are
 */
public record Stroke(double width, Dash dash, boolean round) {

  /** How lines are interrupted: told apart on a photocopy. */
  public enum Dash {
    SOLID,
    DASHED(10, 5),
    DOTTED(2.5, 4),
    DASH_DOTTED(12, 4, 2.5, 4),
    FINE(5, 4),
    SHORT(7, 4),
    LONG(14, 4);

    private final double[] lengths;

    Dash(double... lengths) {
      this.lengths = lengths;
    }

    /** Lengths of dashes and gaps in turn [px]; none for a line without. */
    public double[] lengths() {
      return lengths.clone();
    }
  }

  public static final Stroke HAIRLINE = new Stroke(1);
  public static final Stroke THIN = new Stroke(1.4);
  public static final Stroke FINE_DASH = new Stroke(1.4, Dash.FINE);

  /** A heavy line carries across a room and survives a photocopy. */
  public static final Stroke HEAVY = new Stroke(2.6);

  public Stroke(double width) {
    this(width, Dash.SOLID);
  }

  public Stroke(double width, Dash dash) {
    this(width, dash, false);
  }

  /** This line with round ends. */
  public Stroke rounded() {
    return new Stroke(width, dash, true);
  }
}
