package settle.sim.units;

/**
 * Range checks for parameters. A violation throws {@link IllegalArgumentException} naming the
 * quantity, the value found, the bound and the unit; not-a-number and infinite values never pass.
 */
public final class Range {

  private Range() {}

  /**
   * Requires a finite value above zero.
   *
   * @param quantity what the value is, in words
   * @param value the value
   * @param unit its unit, "1" for a ratio
   * @return the value
   */
  public static double positive(String quantity, double value, String unit) {
    if (!(value > 0) || value == Double.POSITIVE_INFINITY) {
      throw violation(quantity, value, "above 0", unit);
    }
    return value;
  }

  /**
   * Requires a finite value of zero or more.
   *
   * @param quantity what the value is, in words
   * @param value the value
   * @param unit its unit, "1" for a ratio
   * @return the value
   */
  public static double notNegative(String quantity, double value, String unit) {
    if (!(value >= 0) || value == Double.POSITIVE_INFINITY) {
      throw violation(quantity, value, "0 or more", unit);
    }
    return value;
  }

  /**
   * Requires a value between two bounds, both allowed.
   *
   * @param quantity what the value is, in words
   * @param value the value
   * @param least the smallest allowed value
   * @param most the largest allowed value
   * @param unit the unit of value and bounds, "1" for a ratio
   * @return the value
   */
  public static double within(
      String quantity, double value, double least, double most, String unit) {
    if (!(value >= least && value <= most)) {
      throw violation(quantity, value, "from " + least + " to " + most, unit);
    }
    return value;
  }

  private static IllegalArgumentException violation(
      String quantity, double value, String bound, String unit) {
    String suffix = unit.equals("1") ? "" : " " + unit;
    return new IllegalArgumentException(
        quantity + " is " + value + suffix + ", must be " + bound + suffix);
  }
}
