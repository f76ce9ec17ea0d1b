package settle.sim.validation;

/**
 * How far from the expected value the code may be, and why that much.
 *
 * @param amount absolute amount in the row's unit, or a ratio of the expected value
 * @param relative whether amount is a ratio
 * @param reason why this much is allowed
 */
record Tolerance(double amount, boolean relative, String reason) {

  Tolerance {
    if (!(amount > 0)) {
      throw new IllegalArgumentException("tolerance is " + amount + ", must be above 0");
    }
    if (reason.isBlank()) {
      throw new IllegalArgumentException("a tolerance needs its reason");
    }
  }

  static Tolerance absolute(double amount, String reason) {
    return new Tolerance(amount, false, reason);
  }

  static Tolerance relative(double ratio, String reason) {
    return new Tolerance(ratio, true, reason);
  }

  /** Reads "1e-4, reason" or "0.5 %, reason". */
  static Tolerance parse(String text) {
    int comma = text.indexOf(',');
    if (comma < 0) {
      throw new IllegalArgumentException("tolerance \"" + text + "\" has no reason after a comma");
    }
    String amount = text.substring(0, comma).strip();
    String reason = text.substring(comma + 1).strip();
    return amount.endsWith("%")
        ? relative(Double.parseDouble(amount.substring(0, amount.length() - 1)) / 100, reason)
        : absolute(Double.parseDouble(amount), reason);
  }

  double absoluteFor(double expected) {
    return relative ? amount * Math.abs(expected) : amount;
  }

  String words() {
    return relative ? Figures.plain(100 * amount) + " %" : Figures.plain(amount);
  }
}
