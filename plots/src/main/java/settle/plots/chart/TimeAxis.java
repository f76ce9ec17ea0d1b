package settle.plots.chart;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Axes along which time runs, in hours. */
final class TimeAxis {

  /** Steps between labels that people read without reckoning [h]. */
  private static final double[] STEPS = {
    1 / 60.0, 2 / 60.0, 5 / 60.0, 10 / 60.0, 0.25, 0.5, 1, 2, 3, 6, 12, 24, 48, 168, 336, 672
  };

  private static final double LABEL_WIDTH = 58;
  private static final double MONTH_WIDTH = 36;
  private static final double HOUR = 3600;

  private TimeAxis() {}

  /**
   * Time of day, midnight being where time is a multiple of 24 h; days counted from the first.
   *
   * @param window what is shown
   * @param width of the panel [px]
   */
  static Axis clock(TimeWindow window, double width) {
    double from = window.from() / HOUR;
    double to = window.to() / HOUR;
    double step = step(to - from, width);
    List<Tick> ticks = new ArrayList<>();
    for (long k = (long) Math.ceil(from / step - 1e-9); k * step <= to + 1e-9; k++) {
      double hour = k * step;
      boolean midnight = Math.abs(hour / 24 - Math.rint(hour / 24)) < 1e-9;
      String day = "day " + (Math.round(hour / 24) + 1);
      ticks.add(
          step >= 24
              ? new Tick(hour, day, midnight, "")
              : new Tick(hour, timeOfDay(hour), midnight, midnight ? day : ""));
    }
    return new Axis(
        from, to, ticks, step >= 24 ? "days from midnight to midnight" : "time of day, h:min");
  }

  /**
   * Months of the year where a season's days are known, otherwise as {@link #clock}.
   *
   * @param window what is shown
   * @param width of the panel [px]
   * @param firstDay the day at whose midnight time is 0
   */
  static Axis season(TimeWindow window, double width, Optional<LocalDate> firstDay) {
    if (firstDay.isEmpty() || !window.isSeason()) {
      return clock(window, width);
    }
    LocalDate first = firstDay.get();
    double from = window.from() / HOUR;
    double to = window.to() / HOUR;
    double month = width * 30 * 24 / (to - from);
    int every = (int) Math.ceil(MONTH_WIDTH / month);
    List<Tick> ticks = new ArrayList<>();
    LocalDate day = first.plusDays((long) Math.ceil(from / 24));
    if (day.getDayOfMonth() != 1) {
      day = day.withDayOfMonth(1).plusMonths(1);
    }
    for (int k = 0; ; k++) {
      double hour = 24.0 * ChronoUnit.DAYS.between(first, day);
      if (hour > to) {
        break;
      }
      String name =
          k % every == 0 ? day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH) : "";
      ticks.add(new Tick(hour, name, day.getDayOfYear() == 1, ""));
      day = day.plusMonths(1);
    }
    return new Axis(from, to, ticks, "months from their first day");
  }

  /**
   * Time since an instant.
   *
   * @param window what is shown
   * @param zero the instant that counts as zero [s]
   * @param width of the panel [px]
   * @param since what happened then, as "the first call"
   */
  static Axis since(TimeWindow window, double zero, double width, String since) {
    double from = (window.from() - zero) / HOUR;
    double to = (window.to() - zero) / HOUR;
    double step = step(to - from, width);
    List<Tick> ticks = new ArrayList<>();
    for (long k = (long) Math.ceil(from / step - 1e-9); k * step <= to + 1e-9; k++) {
      ticks.add(new Tick(k * step, hoursAndMinutes(k * step), k == 0, ""));
    }
    return new Axis(from, to, ticks, "time since " + since + ", h:min");
  }

  private static double step(double hours, double width) {
    for (double step : STEPS) {
      if (step * width / hours >= LABEL_WIDTH) {
        return step;
      }
    }
    return STEPS[STEPS.length - 1]
        * Math.ceil(LABEL_WIDTH * hours / width / STEPS[STEPS.length - 1]);
  }

  private static String timeOfDay(double hour) {
    return hoursAndMinutes(hour - 24 * Math.floor(hour / 24 + 1e-9));
  }

  private static String hoursAndMinutes(double hour) {
    long minutes = Math.round(Math.abs(hour) * 60);
    String sign = hour < 0 && minutes > 0 ? "\u2212" : "";
    return sign + minutes / 60 + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
  }
}
