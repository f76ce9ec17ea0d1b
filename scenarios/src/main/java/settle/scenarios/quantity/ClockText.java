package settle.scenarios.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import settle.sim.units.Times;

/** Times of day and periods of the day on a 24-hour clock. */
public final class ClockText {

  private static final Pattern TIME = Pattern.compile("([01]?\\d|2[0-4]):([0-5]\\d)");
  private static final Pattern SPAN = Pattern.compile("(.+?)\\s*(?:-|–|to)\\s*(.+)");

  private ClockText() {}

  /**
   * A time of day.
   *
   * @param text such as {@code 06:30}
   * @return seconds since midnight, 0 to 86 400
   * @throws QuantityException where it is none
   */
  public static double timeOfDay(String text) throws QuantityException {
    Matcher matcher = TIME.matcher(text.strip());
    if (matcher.matches()) {
      double seconds =
          Integer.parseInt(matcher.group(1)) * 3600.0 + Integer.parseInt(matcher.group(2)) * 60.0;
      if (seconds <= Times.DAY) {
        return seconds;
      }
    }
    throw new QuantityException(
        "found "
            + (text.isBlank() ? "nothing" : text.strip())
            + ", expected a time of day such as 06:30");
  }

  /**
   * A period of the day.
   *
   * @param text such as {@code 06:30-09:00}; the end may lie after midnight, {@code 22:00-06:00}
   * @return start and end in seconds since midnight, the end above the start, at most a day later
   * @throws QuantityException where it is none
   */
  public static double[] span(String text) throws QuantityException {
    Matcher matcher = SPAN.matcher(text.strip());
    if (!matcher.matches()) {
      throw new QuantityException(
          "found "
              + (text.isBlank() ? "nothing" : text.strip())
              + ", expected a period such as 06:30-09:00");
    }
    double start = timeOfDay(matcher.group(1));
    double end = timeOfDay(matcher.group(2));
    if (start == end || start == Times.DAY) {
      throw new QuantityException(
          "found "
              + text.strip()
              + ", expected a period that ends after it begins, such as 06:30-09:00");
    }
    return new double[] {start, end > start ? end : end + Times.DAY};
  }

  /**
   * A time of day as it is written.
   *
   * @param seconds since midnight
   * @return such as {@code 06:30}
   */
  public static String show(double seconds) {
    long minutes = Math.round(seconds / 60);
    long hour = minutes / 60;
    long minute = minutes % 60;
    return (hour < 10 ? "0" : "") + hour + ":" + (minute < 10 ? "0" : "") + minute;
  }
}
