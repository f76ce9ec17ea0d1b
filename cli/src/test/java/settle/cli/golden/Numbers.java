package settle.cli.golden;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lines that say the same. */
final class Numbers {

  /**
   * Numbers as machines write them, with more digits than people read, and what rounding left of a
   * zero. Of those the last digits go with the order of a sum; whatever is rounded for a reader has
   * to be the same.
   */
  private static final Pattern LONG =
      Pattern.compile("-?\\d+\\.\\d{5,}(?:[eE]-?\\d+)?|-?\\d+(?:\\.\\d+)?[eE]-\\d+");

  private static final double RELATIVE = 1e-6;
  private static final double ABSOLUTE = 1e-9;

  private Numbers() {}

  static boolean same(String one, String other) {
    if (one.equals(other)) {
      return true;
    }
    if (!LONG.matcher(one).replaceAll("#").equals(LONG.matcher(other).replaceAll("#"))) {
      return false;
    }
    Matcher a = LONG.matcher(one);
    Matcher b = LONG.matcher(other);
    while (a.find() && b.find()) {
      double x = Double.parseDouble(a.group());
      double y = Double.parseDouble(b.group());
      if (Math.abs(x - y) > Math.max(ABSOLUTE, RELATIVE * Math.abs(x))) {
        return false;
      }
    }
    return true;
  }
}
