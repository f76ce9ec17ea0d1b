package settle.plots.gallery;

import java.util.Arrays;
import settle.plots.chart.Curve;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.units.Times;

/** Columns of a trace as curves over time, in hours from midnight of the first day. */
final class Courses {

  private Courses() {}

  /** A state, known at instants: straight lines between. */
  static Curve ofState(Trace trace, double[] values, TimeWindow window) {
    double[] time = trace.time();
    int first = firstIndex(time, window.from());
    int last = lastIndex(time, window.to());
    double[] x = new double[last - first + 1];
    double[] y = new double[x.length];
    for (int i = first; i <= last; i++) {
      x[i - first] = time[i] / Times.HOUR;
      y[i - first] = values[i];
    }
    return new Curve(x, y);
  }

  /** A mean over each step: level during the step. */
  static Curve ofMeans(Trace trace, double[] values, TimeWindow window, double scale) {
    double[] time = trace.time();
    int first = Math.max(1, firstIndex(time, window.from()));
    int last = lastIndex(time, window.to());
    double[] x = new double[2 * Math.max(0, last - first + 1)];
    double[] y = new double[x.length];
    for (int i = first; i <= last; i++) {
      int k = 2 * (i - first);
      x[k] = time[i - 1] / Times.HOUR;
      x[k + 1] = time[i] / Times.HOUR;
      y[k] = values[i] * scale;
      y[k + 1] = y[k];
    }
    return new Curve(x, y);
  }

  /**
   * Means over equal intervals from the window's beginning, times without a value left out: for
   * what a burner's starts would turn into a comb.
   */
  static Curve ofIntervalMeans(
      Trace trace, double[] values, TimeWindow window, double interval, double scale) {
    double[] time = trace.time();
    int count = (int) Math.max(1, Math.floor(window.length() / interval + 1e-9));
    double[] x = new double[2 * count];
    double[] y = new double[2 * count];
    int i = Math.max(1, firstIndex(time, window.from()));
    for (int k = 0; k < count; k++) {
      double from = window.from() + k * interval;
      double to = from + interval;
      double sum = 0;
      double weight = 0;
      while (i < time.length) {
        double overlap = Math.min(time[i], to) - Math.max(time[i - 1], from);
        if (overlap > 0 && !Double.isNaN(values[i])) {
          sum += values[i] * overlap;
          weight += overlap;
        }
        if (time[i] >= to) {
          break;
        }
        i++;
      }
      x[2 * k] = from / Times.HOUR;
      x[2 * k + 1] = to / Times.HOUR;
      y[2 * k] = weight > 0 ? sum / weight * scale : Double.NaN;
      y[2 * k + 1] = y[2 * k];
    }
    return new Curve(x, y);
  }

  /** Every step, or means over intervals that can be told apart. */
  static Curve of(
      Trace trace, double[] values, TimeWindow window, boolean everyStep, double scale) {
    return everyStep
        ? ofMeans(trace, values, window, scale)
        : ofIntervalMeans(trace, values, window, window.readableInterval(), scale);
  }

  /**
   * Mean of each day from the window's beginning, over the times at which want is at its highest:
   * how warm a room is while it is wanted, night set-backs left out. Drawn at noon.
   */
  static Curve ofDays(Trace trace, double[] values, double[] want, TimeWindow window) {
    double most = Arrays.stream(want).filter(w -> !Double.isNaN(w)).max().orElse(0);
    double[] wanted = new double[values.length];
    for (int i = 1; i < wanted.length; i++) {
      wanted[i] = want[i] >= most ? (values[i - 1] + values[i]) / 2 : Double.NaN;
    }
    Curve days = ofIntervalMeans(trace, wanted, window, 24 * Times.HOUR, 1);
    double[] x = new double[days.x().length / 2];
    double[] y = new double[x.length];
    for (int k = 0; k < x.length; k++) {
      x[k] = (days.x()[2 * k] + days.x()[2 * k + 1]) / 2;
      y[k] = days.y()[2 * k];
    }
    return new Curve(x, y);
  }

  /** Last index whose time is not after, or the first. */
  private static int firstIndex(double[] time, double at) {
    int i = Arrays.binarySearch(time, at);
    return i >= 0 ? i : Math.max(0, -i - 2);
  }

  /** First index whose time is not before, or the last. */
  private static int lastIndex(double[] time, double at) {
    int i = Arrays.binarySearch(time, at);
    return i >= 0 ? i : Math.min(time.length - 1, -i - 1);
  }

  /** Values while water flows; a gap while the pump rests, which would only draw a comb. */
  static double[] whileFlowing(Trace trace, double[] values) {
    double[] flow = trace.column(HouseColumn.MASS_FLOW);
    double[] flowing = values.clone();
    for (int i = 0; i < flowing.length; i++) {
      flowing[i] = flow[i] > 0 ? values[i] : Double.NaN;
    }
    return flowing;
  }

  /**
   * Whether values while water flows can be shown step by step: neither they nor the flow as a
   * whole come and go so often that a line turns into a comb, or its gaps into dashes.
   *
   * @param most so many times at most
   */
  static boolean canBeTold(Trace trace, double[] values, TimeWindow window, int most) {
    return changes(trace, trace.column(HouseColumn.MASS_FLOW), window) <= most
        && changes(trace, whileFlowing(trace, values), window) <= most;
  }

  /** How often values come from or go to nothing within a window. */
  private static int changes(Trace trace, double[] values, TimeWindow window) {
    double[] time = trace.time();
    int changes = 0;
    for (int i = 2; i < time.length; i++) {
      if (time[i] >= window.from()
          && time[i] <= window.to()
          && ((values[i] == 0 && values[i - 1] > 0) || (values[i] > 0 && values[i - 1] == 0))) {
        changes++;
      }
    }
    return changes;
  }
}
