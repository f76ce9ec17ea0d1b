package settle.sim.validation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Numbers as the table prints them: to a tenth of the tolerance, so that the last bits, which may
 * differ between machines, never show.
 */
final class Figures {

  private Figures() {}

  /** The value rounded to a tenth of the resolution, rounded up to a power of ten. */
  static String rounded(double value, double resolution) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    int scale = (int) Math.ceil(-Math.log10(resolution) - 1e-9) + 1;
    BigDecimal number = new BigDecimal(value).setScale(scale, RoundingMode.HALF_EVEN);
    if (number.signum() == 0) {
      return "0";
    }
    return scale >= 0 || number.abs().doubleValue() < 1e7
        ? number.setScale(Math.max(scale, 0), RoundingMode.HALF_EVEN).toPlainString()
        : String.format(Locale.ROOT, "%." + (number.precision() - 1) + "e", number);
  }

  /** A typed constant without trailing noise. */
  static String plain(double value) {
    BigDecimal number = new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros();
    double size = Math.abs(value);
    return size == 0 || (size >= 1e-4 && size < 1e7)
        ? number.toPlainString()
        : number.unscaledValue().abs().bitLength() <= 4
            ? number.unscaledValue() + "e" + -number.scale()
            : String.format(Locale.ROOT, "%.4e", value);
  }
}
