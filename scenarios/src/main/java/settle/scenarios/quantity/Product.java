package settle.scenarios.quantity;

import java.util.regex.Pattern;

/**
 * Lengths multiplied out as a tape measure gives them: {@code 4.2 x 2.4 m}, {@code 4.2 x 3.6 x 2.4
 * m}.
 */
public final class Product {

  private static final Pattern TIMES = Pattern.compile("\\s*[x×]\\s*");
  private static final Pattern BARE_NUMBER = Pattern.compile("[-+.\\deE]+");

  private Product() {}

  /**
   * Whether a text is a product at all.
   *
   * @param text as typed
   * @return true where lengths are multiplied
   */
  public static boolean is(String text) {
    return TIMES.matcher(text).find();
  }

  /**
   * The factors of a product of lengths. A factor without a unit has that of the last one.
   *
   * @param text such as {@code 4.2 x 2.4 m}
   * @param count how many factors it must have
   * @param expected what was expected, for the message
   * @return the lengths [m], {@code count} of them
   * @throws QuantityException where the text is not such a product
   */
  public static double[] lengths(String text, int count, String expected) throws QuantityException {
    String[] parts = TIMES.split(text.strip(), -1);
    if (parts.length != count) {
      throw new QuantityException(
          "found " + (text.isBlank() ? "nothing" : text.strip()) + ", expected " + expected);
    }
    String last = parts[count - 1].strip();
    String unit = last.replaceFirst("^[-+.\\d]+\\s*", "");
    double[] lengths = new double[count];
    for (int i = 0; i < count; i++) {
      String part = parts[i].strip();
      lengths[i] =
          Dimension.LENGTH.parse(BARE_NUMBER.matcher(part).matches() ? part + " " + unit : part);
      if (!(lengths[i] > 0)) {
        throw new QuantityException("found " + text.strip() + ", expected lengths above 0 m");
      }
    }
    return lengths;
  }
}
