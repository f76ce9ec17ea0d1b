package settle.scenarios.survey;

import java.util.Collection;
import java.util.regex.Pattern;
import settle.scenarios.quantity.QuantityException;

/**
 * How the numbers of a table are written: with a decimal point or a decimal comma. A number by
 * itself does not always say (1,450 may be either side of a thousand), but all of them together
 * mostly do.
 */
enum Decimals {
  POINT,
  COMMA,
  UNKNOWN;

  private static final String SPACE = "[ \\u00A0\\u2009\\u202F]";
  private static final Pattern WITH_COMMA = Pattern.compile(mark(","));
  private static final Pattern WITH_POINT = Pattern.compile(mark("\\."));
  private static final Pattern GROUPED =
      Pattern.compile("[-+]?[1-9]\\d{0,2}([.,]\\d{3})+", Pattern.CASE_INSENSITIVE);

  /** A mark that no thousands begin behind: other than three figures follow, or a nought leads. */
  private static String mark(String mark) {
    return "(?<![\\d.,])(\\d+" + mark + "(\\d{1,2}|\\d{4,})|0" + mark + "\\d+)(?![\\d.,])";
  }

  /**
   * How the numbers of some cells are written.
   *
   * @param cells of the table
   * @param separator what parts its cells
   */
  static Decimals of(Collection<String> cells, char separator) {
    boolean comma = false;
    boolean point = false;
    for (String cell : cells) {
      comma |= WITH_COMMA.matcher(cell).find();
      point |= WITH_POINT.matcher(cell).find();
    }
    if (comma != point) {
      return comma ? COMMA : POINT;
    }
    return !comma && separator == ',' ? POINT : UNKNOWN;
  }

  /**
   * A number.
   *
   * @param typed figures with marks, without its unit
   */
  double read(String typed) throws QuantityException {
    String plain = typed.replace('\u2212', '-').replaceAll(SPACE + "+", "");
    boolean bothMarks = plain.indexOf(',') >= 0 && plain.indexOf('.') >= 0;
    if (bothMarks) {
      char last = plain.lastIndexOf(',') > plain.lastIndexOf('.') ? ',' : '.';
      plain = plain.replace(last == ',' ? "." : ",", "").replace(last, '.');
    } else if (GROUPED.matcher(plain).matches()) {
      plain = this == UNKNOWN ? ambiguous(typed, plain) : grouped(plain);
    } else {
      plain = plain.replace(',', '.');
    }
    if (!plain.matches("[-+]?(\\d+\\.?\\d*|\\.\\d+)")) {
      throw new QuantityException("found " + typed + ", expected a number");
    }
    return Double.parseDouble(plain);
  }

  private String grouped(String plain) {
    boolean thousands = plain.indexOf(this == POINT ? ',' : '.') >= 0;
    return thousands ? plain.replaceAll("[.,]", "") : plain.replace(',', '.');
  }

  private static String ambiguous(String typed, String plain) throws QuantityException {
    throw new QuantityException(
        "found "
            + typed
            + ", which may be "
            + plain.replaceFirst("[.,]", ".").replaceAll("0+$", "").replaceAll("\\.$", "")
            + " or "
            + plain.replaceAll("[.,]", "")
            + "; expected no mark between thousands");
  }
}
