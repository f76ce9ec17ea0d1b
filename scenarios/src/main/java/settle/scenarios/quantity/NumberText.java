package settle.scenarios.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers for people: four significant digits, no exponent, no trailing zeros. */
public final class NumberText {

  private static final MathContext FOUR_DIGITS = new MathContext(4);

  private NumberText() {}

  /** A number with so many decimals; with as many fewer before the point where that is negative. */
  public static double rounded(double value, int decimals) {
    double scale = Math.pow(10, decimals);
    return Math.rint(value * scale) / scale;
  }

  /**
   * A number for a message.
   *
   * @param value finite
   * @return its decimal text
   */
  public static String write(double value) {
    BigDecimal exact = BigDecimal.valueOf(value);
    BigDecimal short4 = exact.round(FOUR_DIGITS);
    // Whole numbers keep all their digits: 12345 W must not read 12350 W.
    BigDecimal shown = value == Math.rint(value) && Math.abs(value) < 1e9 ? exact : short4;
    BigDecimal plain = shown.stripTrailingZeros();
    return plain.signum() == 0 ? "0" : plain.toPlainString();
  }
}
