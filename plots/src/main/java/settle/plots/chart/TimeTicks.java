package settle.plots.chart;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How time is counted along an axis of hours.
 *
 * @param sinceSomething whether from an instant on; otherwise it is the time of day, midnight being
 *     where time is a multiple of 24 h, days counted from the first
 * @param firstDay the day at whose midnight time is 0: then a season has its months
 */
public record TimeTicks(boolean sinceSomething, Optional<LocalDate> firstDay) {

  /** Steps between labels that people read without arithmetic [h]. */
  private static final double[] STEPS = {
    1 / 60.0, 2 / 60.0, 5 / 60.0, 10 / 60.0, 0.25, 0.5, 1, 2, 3, 6, 12, 24, 48, 168, 336, 672
  };

  private static final double LABEL_WIDTH = 58;
  private static final double MONTH_WIDTH = 36;

  /** From here on days are too many to tell apart by their hours [h]. */
  private static final double SEASON = 14 * 24;

  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

  Axis on(Axis axis, double length) {
    return firstDay.isPresent() && axis.max() - axis.min() >= SEASON
        ? season(axis, length)
        : hours(axis, length);
  }

  private Axis hours(Axis axis, double length) {
    double step = step(axis.max() - axis.min(), length);
    List<Tick> ticks = new ArrayList<>();
    long first = (long) Math.ceil(axis.min() / step - 1e-9);
    for (long k = first; k * step <= axis.max() + 1e-9; k++) {
      ticks.add(sinceSomething ? since(k * step) : clock(k * step, step));
    }
    return new Axis(
        axis.min(),
        axis.max(),
        ticks,
        sinceSomething
            ? axis.caption()
            : said(axis, step >= 24 ? "days from midnight to midnight" : "time of day, h:min"));
  }

  private static String said(Axis axis, String time) {
    return axis.caption().isEmpty() ? time : axis.caption() + "; " + time;
  }

  private static Tick since(double hour) {
    Tick.Kind kind = Math.abs(hour) < 1e-9 ? Tick.Kind.STRONG : Tick.Kind.PLAIN;
    return new Tick(hour, hoursAndMinutes(hour), kind, "");
  }

  private static Tick clock(double hour, double step) {
    boolean midnight = Math.abs(hour / 24 - Math.rint(hour / 24)) < 1e-9;
    Tick.Kind kind = midnight ? Tick.Kind.STRONG : Tick.Kind.PLAIN;
    String day = "day " + (Math.round(hour / 24) + 1);
    return step >= 24
        ? new Tick(hour, day, kind, "")
        : new Tick(
            hour,
            hoursAndMinutes(hour - 24 * Math.floor(hour / 24 + 1e-9)),
            kind,
            midnight ? day : "");
  }

  private Axis season(Axis axis, double length) {
    LocalDate first = firstDay.orElseThrow();
    int every = (int) Math.ceil(MONTH_WIDTH * (axis.max() - axis.min()) / (length * 30 * 24));
    List<Tick> ticks = new ArrayList<>();
    LocalDate day = first.plusDays((long) Math.ceil(axis.min() / 24));
    if (day.getDayOfMonth() != 1) {
      day = day.withDayOfMonth(1).plusMonths(1);
    }
    for (int k = 0; ; k++) {
      double hour = 24.0 * (day.toEpochDay() - first.toEpochDay());
      if (hour > axis.max()) {
        break;
      }
      Tick.Kind kind = day.getDayOfYear() == 1 ? Tick.Kind.STRONG : Tick.Kind.PLAIN;
      String name = k % every == 0 ? MONTHS.get(day.getMonthValue() - 1) : "";
      ticks.add(new Tick(hour, name, kind, ""));
      day = day.plusMonths(1);
    }
    return new Axis(axis.min(), axis.max(), ticks, said(axis, "months from their first day"));
  }

  private static double step(double hours, double length) {
    for (double step : STEPS) {
      if (step * length / hours >= LABEL_WIDTH) {
        return step;
      }
    }
    double longest = STEPS[STEPS.length - 1];
    return longest * Math.ceil(LABEL_WIDTH * hours / length / longest);
  }

  private static String hoursAndMinutes(double hour) {
    long minutes = Math.round(Math.abs(hour) * 60);
    String sign = hour < 0 && minutes > 0 ? "\u2212" : "";
    return sign + minutes / 60 + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
  }
}
