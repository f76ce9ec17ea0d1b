package settle.sim.weather;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import settle.sim.units.Times;

/**
 * Outdoor conditions over time. Times are seconds from the start of the run; before it, negative.
 */
public sealed interface Weather {

  /** Outdoor air temperature at an instant [°C]. */
  double outdoorAt(double time);

  /** Mean outdoor air temperature over an interval [°C]; {@code to > from}. */
  double meanOutdoor(double from, double to);

  /** Solar irradiance on the glazing at an instant [W/m²]. */
  default double irradianceAt(double time) {
    return 0;
  }

  /** Mean solar irradiance on the glazing over an interval [W/m²]. */
  default double meanIrradiance(double from, double to) {
    return 0;
  }

  /**
   * First instant after {@code time} at which temperature or its slope jumps [s]; infinite if
   * never.
   */
  default double nextBreak(double time) {
    return Double.POSITIVE_INFINITY;
  }

  /** The day at whose midnight the run begins, where the weather is that of known days. */
  default Optional<LocalDate> firstDay() {
    return Optional.empty();
  }

  /** What follows from each kind. */
  <R> R fold(
      Function<Constant, R> constant,
      Function<Change, R> change,
      Function<DesignDay, R> day,
      Function<Series, R> series);

  /** Always the same. */
  record Constant(double temperature) implements Weather {
    @Override
    public <R> R fold(
        Function<Constant, R> constant,
        Function<Change, R> change,
        Function<DesignDay, R> day,
        Function<Series, R> series) {
      return constant.apply(this);
    }

    @Override
    public double outdoorAt(double time) {
      return temperature;
    }

    @Override
    public double meanOutdoor(double from, double to) {
      return temperature;
    }
  }

  /**
   * From one temperature to another, at once or evenly.
   *
   * @param before [°C]
   * @param after [°C]
   * @param start when the change begins [s]
   * @param duration how long it takes [s]; 0 for at once
   */
  record Change(double before, double after, double start, double duration) implements Weather {

    public Change {
      if (!(duration >= 0)) {
        throw new IllegalArgumentException("duration " + duration + " s must be >= 0");
      }
    }

    @Override
    public <R> R fold(
        Function<Constant, R> constant,
        Function<Change, R> change,
        Function<DesignDay, R> day,
        Function<Series, R> series) {
      return change.apply(this);
    }

    @Override
    public double outdoorAt(double time) {
      if (time < start) {
        return before;
      }
      return time >= start + duration
          ? after
          : before + (after - before) * (time - start) / duration;
    }

    @Override
    public double meanOutdoor(double from, double to) {
      return (integral(to) - integral(from)) / (to - from);
    }

    private double integral(double time) {
      double t = time - start;
      if (t <= 0) {
        return before * t;
      }
      if (t < duration) {
        return before * t + (after - before) * t * t / (2 * duration);
      }
      return (before + after) / 2 * duration + after * (t - duration);
    }

    @Override
    public double nextBreak(double time) {
      if (time + 1e-6 < start) {
        return start;
      }
      return time + 1e-6 < start + duration ? start + duration : Double.POSITIVE_INFINITY;
    }
  }

  /**
   * A day that repeats: mean plus a sine.
   *
   * @param mean daily mean [°C]
   * @param amplitude half of the daily range [K], >= 0
   * @param coldestTime time of day of the lowest temperature [s]
   */
  record DesignDay(double mean, double amplitude, double coldestTime) implements Weather {

    private static final double OMEGA = 2 * Math.PI / Times.DAY;

    @Override
    public <R> R fold(
        Function<Constant, R> constant,
        Function<Change, R> change,
        Function<DesignDay, R> day,
        Function<Series, R> series) {
      return day.apply(this);
    }

    @Override
    public double outdoorAt(double time) {
      return mean - amplitude * Math.cos(OMEGA * (time - coldestTime));
    }

    @Override
    public double meanOutdoor(double from, double to) {
      double half = OMEGA * (to - from) / 2;
      return mean
          - amplitude * Math.cos(OMEGA * ((from + to) / 2 - coldestTime)) * Math.sin(half) / half;
    }
  }

  /**
   * Measured or typical values at equal intervals, linear between; held at the ends.
   *
   * @param begins day at whose midnight the run begins; null for values of no known days
   * @param firstTime time of the first value [s]
   * @param interval between values [s], > 0
   * @param temperature outdoor air temperature [°C], at least one; not modified
   * @param irradiance solar irradiance on the glazing [W/m²], same length, or empty for none
   */
  record Series(
      LocalDate begins,
      double firstTime,
      double interval,
      double[] temperature,
      double[] irradiance)
      implements Weather {

    public Series {
      if (!(interval > 0)) {
        throw new IllegalArgumentException("interval " + interval + " s must be > 0");
      }
      if (temperature.length == 0) {
        throw new IllegalArgumentException("a series needs at least one temperature");
      }
      if (irradiance.length != 0 && irradiance.length != temperature.length) {
        throw new IllegalArgumentException(
            irradiance.length + " irradiances against " + temperature.length + " temperatures");
      }
    }

    /** Values of no known days. */
    public Series(double firstTime, double interval, double[] temperature, double[] irradiance) {
      this(null, firstTime, interval, temperature, irradiance);
    }

    @Override
    public <R> R fold(
        Function<Constant, R> constant,
        Function<Change, R> change,
        Function<DesignDay, R> day,
        Function<Series, R> series) {
      return series.apply(this);
    }

    @Override
    public Optional<LocalDate> firstDay() {
      return Optional.ofNullable(begins);
    }

    @Override
    public double outdoorAt(double time) {
      return valueAt(temperature, time);
    }

    @Override
    public double meanOutdoor(double from, double to) {
      return mean(temperature, from, to);
    }

    @Override
    public double irradianceAt(double time) {
      return irradiance.length == 0 ? 0 : valueAt(irradiance, time);
    }

    @Override
    public double meanIrradiance(double from, double to) {
      return irradiance.length == 0 ? 0 : mean(irradiance, from, to);
    }

    private double valueAt(double[] values, double time) {
      double position = (time - firstTime) / interval;
      if (position <= 0) {
        return values[0];
      }
      int i = (int) position;
      if (i >= values.length - 1) {
        return values[values.length - 1];
      }
      return values[i] + (values[i + 1] - values[i]) * (position - i);
    }

    /** Exact mean of the broken line: trapezoids between the values inside the interval. */
    private double mean(double[] values, double from, double to) {
      double sum = 0;
      double t = from;
      double value = valueAt(values, from);
      while (t < to) {
        double next = firstTime + interval * (Math.floor((t - firstTime) / interval + 1e-9) + 1);
        double end = Math.min(next, to);
        double endValue = valueAt(values, end);
        sum += (value + endValue) / 2 * (end - t);
        t = end;
        value = endValue;
      }
      return sum / (to - from);
    }
  }
}
