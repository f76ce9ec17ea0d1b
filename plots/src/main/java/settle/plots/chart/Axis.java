package settle.plots.chart;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import settle.plots.words.Quantities;

/**
 * The scale along one side of a panel.
 *
 * @param min value at its beginning
 * @param max value at its end, > min
 * @param ticks where lines and labels stand; none where time decides
 * @param caption what it shows, with its unit; of time, what to say of it beside
 * @param time how time is counted along it, if it is one of hours
 */
public record Axis(
    double min, double max, List<Tick> ticks, String caption, Optional<TimeTicks> time) {

  public Axis {
    ticks = List.copyOf(ticks);
    if (!(max > min)) {
      throw new IllegalArgumentException("axis '" + caption + "' runs from " + min + " to " + max);
    }
  }

  /** An axis with its ticks. */
  public Axis(double min, double max, List<Tick> ticks, String caption) {
    this(min, max, ticks, caption, Optional.empty());
  }

  /**
   * An axis over round numbers that takes in the given values.
   *
   * @param least smallest value to show
   * @param most largest value to show
   * @param intervals about how many intervals
   * @param caption what it shows, with its unit
   */
  public static Axis round(double least, double most, int intervals, String caption) {
    double span = most > least ? most - least : Math.max(1, Math.abs(most));
    double step = roundStep(span / intervals);
    double min = step * Math.floor(least / step + 1e-9);
    double max = step * Math.ceil((most > least ? most : least + span) / step - 1e-9);
    return stepped(min, max, step, caption);
  }

  /** An axis that ends exactly at the given values, round or not. */
  public static Axis exact(double min, double max, int intervals, String caption) {
    return stepped(min, max, roundStep((max - min) / intervals), caption);
  }

  /**
   * An exact axis, padded to at least so wide a span, so that what hardly moves does not look as if
   * it did.
   *
   * @param leastSpan smallest span, > 0
   */
  public static Axis padded(
      double least, double most, double leastSpan, int intervals, String caption) {
    double missing = Math.max(0, leastSpan - (most - least));
    return exact(least - missing / 2, most + missing / 2, intervals, caption);
  }

  /** From bottom to top, a row for each name, the first on top. */
  public static Axis names(List<String> names) {
    List<Tick> ticks = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      ticks.add(new Tick(names.size() - i - 0.5, names.get(i), Tick.Kind.NAME, ""));
    }
    return new Axis(0, names.size(), ticks, "");
  }

  /** Time of day in hours, days counted from the first; months where the first day is known. */
  public static Axis time(double from, double to, Optional<LocalDate> firstDay) {
    return new Axis(from, to, List.of(), "", Optional.of(new TimeTicks(false, firstDay)));
  }

  /** Hours since something happened, which the caption names. */
  public static Axis since(double from, double to, String caption) {
    TimeTicks ticks = new TimeTicks(true, Optional.empty());
    return new Axis(from, to, List.of(), caption, Optional.of(ticks));
  }

  /** This axis with another caption. */
  public Axis captioned(String words) {
    return new Axis(min, max, ticks, words, time);
  }

  /** This axis with the ticks and the caption it has if it is so long [px]. */
  Axis at(double length) {
    return time.map(t -> t.on(this, length)).orElse(this);
  }

  private static Axis stepped(double min, double max, double step, String caption) {
    int decimals = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
    List<Tick> ticks = new ArrayList<>();
    for (long k = (long) Math.ceil(min / step - 1e-9); k * step <= max + 1e-9 * step; k++) {
      ticks.add(new Tick(k * step, Quantities.number(k * step, decimals)));
    }
    return new Axis(min, max, ticks, caption);
  }

  /** The round number (1, 2, 5 times a power of ten) at or next above. */
  private static double roundStep(double raw) {
    double decade = Math.pow(10, Math.floor(Math.log10(raw)));
    double mantissa = raw / decade;
    if (mantissa <= 1 + 1e-9) {
      return decade;
    }
    return decade * (mantissa <= 2 + 1e-9 ? 2 : mantissa <= 5 + 1e-9 ? 5 : 10);
  }
}
