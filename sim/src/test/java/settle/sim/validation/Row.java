package settle.sim.validation;

import java.util.Objects;
import java.util.function.DoubleSupplier;

/**
 * One line of the validation table: what is claimed, by which source, what it expects, what the
 * code gives. Built by a single statement that starts with {@link #claim}.
 */
final class Row {

  private final Draft draft;
  private final DoubleSupplier code;
  private double value;
  private boolean evaluated;

  private Row(Draft draft, DoubleSupplier code) {
    this.draft = draft;
    this.code = code;
  }

  /** Starts a row. */
  static Draft claim(String claim) {
    return new Draft(claim);
  }

  String claim() {
    return draft.claim;
  }

  Source source() {
    return draft.source;
  }

  String place() {
    return draft.place;
  }

  Kind kind() {
    return draft.kind;
  }

  String inputs() {
    return draft.inputs;
  }

  String unit() {
    return draft.unit;
  }

  /** What the code gives; worked out once. */
  double value() {
    if (!evaluated) {
      value = code.getAsDouble();
      evaluated = true;
    }
    return value;
  }

  boolean holds() {
    return value() >= draft.least && value() <= draft.most;
  }

  /** Whether it holds, or is known not to hold and does not. */
  boolean isAsStated() {
    return holds() == (draft.miss == null);
  }

  /** Why it is known not to hold; null where it has to. */
  String miss() {
    return draft.miss;
  }

  /** What of the program's main results it bears on; null for none in particular. */
  MainResult bearsOn() {
    return draft.bearsOn;
  }

  /** How far off it is, in allowances: 1 is at the edge of what is allowed. */
  double shareOfAllowed() {
    double middle = (draft.least + draft.most) / 2;
    return Math.abs(value() - middle) / ((draft.most - draft.least) / 2);
  }

  double least() {
    return draft.least;
  }

  double most() {
    return draft.most;
  }

  String expectedWords() {
    return draft.tolerance == null
        ? Figures.plain(draft.least) + " to " + Figures.plain(draft.most)
        : draft.expectedText;
  }

  String valueWords() {
    return Figures.rounded(value(), resolution());
  }

  String deviationWords() {
    return draft.tolerance == null
        ? (holds() ? "inside" : "**outside**")
        : Figures.rounded(value() - draft.expected, resolution());
  }

  String toleranceWords() {
    return draft.tolerance == null
        ? "band: " + draft.bandReason
        : draft.tolerance.words() + ": " + draft.tolerance.reason();
  }

  private double resolution() {
    return draft.tolerance == null ? (draft.most - draft.least) / 10 : draft.resolution();
  }

  @Override
  public String toString() {
    return claim()
        + " ("
        + inputs()
        + "): expected "
        + expectedWords()
        + " "
        + unit()
        + " by "
        + source().shortName()
        + ", "
        + place()
        + "; code gives "
        + value()
        + "; allowed "
        + toleranceWords()
        + (miss() == null ? "" : "; said not to hold, " + miss());
  }

  /** A row being written. */
  static final class Draft {
    private final String claim;
    private Source source;
    private String place;
    private Kind kind;
    private String inputs = "";
    private String unit;
    private double expected;
    private String expectedText;
    private double least;
    private double most;
    private Tolerance tolerance;
    private String bandReason;
    private MainResult bearsOn;
    private String miss;

    private Draft(String claim) {
      this.claim = claim;
    }

    /** Which source, and where in it. */
    Draft source(Source source, String place) {
      this.source = source;
      this.place = place;
      return this;
    }

    Draft kind(Kind kind) {
      this.kind = kind;
      return this;
    }

    /** Inputs in words, with units. */
    Draft given(String inputs) {
      this.inputs = inputs;
      return this;
    }

    /** An expected value; unit "1" for a ratio. */
    Draft expects(double expected, String unit, Tolerance tolerance) {
      return expects(expected, null, unit, tolerance);
    }

    /** An expected value with its digits as printed. */
    Draft expects(double expected, String asPrinted, String unit, Tolerance tolerance) {
      this.expected = expected;
      this.unit = unit;
      this.tolerance = tolerance;
      double margin = tolerance.absoluteFor(expected);
      this.least = expected - margin;
      this.most = expected + margin;
      this.expectedText =
          asPrinted == null ? Figures.rounded(expected, 10 * resolution()) : asPrinted;
      return this;
    }

    /**
     * What a figure is printed to, times ten: the tolerance, or four significant digits if that is
     * finer.
     */
    private double resolution() {
      double amount = tolerance.absoluteFor(expected);
      return expected == 0 ? amount : Math.min(amount, 1e-3 * Math.abs(expected));
    }

    /** A plausibility band, both ends allowed. */
    Draft expectsBetween(double least, double most, String unit, String reason) {
      this.least = least;
      this.most = most;
      this.unit = unit;
      this.bandReason = reason;
      return this;
    }

    /** What of the program's main results it bears on. */
    Draft bearingOn(MainResult result) {
      this.bearsOn = result;
      return this;
    }

    /** Known not to hold, and why: it fails as soon as it does hold. */
    Draft missedBecause(String why) {
      this.miss = why;
      return this;
    }

    /** Completes the row. */
    Row codeGives(DoubleSupplier code) {
      Objects.requireNonNull(source, "source of: " + claim);
      Objects.requireNonNull(kind, "kind of: " + claim);
      Objects.requireNonNull(unit, "expectation of: " + claim);
      if (kind == Kind.MEMORY && tolerance != null) {
        throw new IllegalStateException("a value from memory is a band, never a value: " + claim);
      }
      return new Row(this, code);
    }
  }
}
