package settle.plots.gallery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import settle.plots.chart.Curve;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;

class CoursesTest {

  private static final double NONE = Double.NaN;

  /** Steps of unequal length: 10, 20 and 30 min. */
  private final Trace trace =
      trace(new double[] {0, 600, 1800, 3600}, new double[] {NONE, 3, 6, NONE});

  @Test
  void aStepMeanIsLevelOverItsOwnStep() {
    Curve curve = Courses.ofMeans(trace, source(), new TimeWindow(0, 3600), 1);
    assertThat(curve.x()).containsExactly(0, 1 / 6.0, 1 / 6.0, 0.5, 0.5, 1);
    assertThat(curve.y()).containsExactly(3, 3, 6, 6, NONE, NONE);
  }

  @Test
  void intervalMeansWeighByTimeAndLeaveGapsOut() {
    Curve curve = Courses.ofIntervalMeans(trace, source(), new TimeWindow(0, 3600), 1800, 1);
    assertThat(curve.y()[0]).isCloseTo((3 * 600 + 6 * 1200) / 1800.0, within(1e-12));
    assertThat(curve.y()[2]).isNaN();
  }

  /** Two days in steps of 12 h, wanted in the first half of each. */
  @Test
  void daysAreMeansWhileItIsWanted() {
    double half = 12 * 3600.0;
    Trace days = trace(new double[] {0, half, 2 * half, 3 * half, 4 * half}, new double[5]);
    Curve curve =
        Courses.ofDays(
            days,
            new double[] {18, 20, 16, 22, 17},
            new double[] {NONE, 21, 16, 21, 16},
            new TimeWindow(0, 4 * half));
    assertThat(curve.x()).containsExactly(12, 36);
    assertThat(curve.y()).containsExactly(19, 19);
  }

  @Test
  void aWindowTakesOneEntryBeforeAndAfter() {
    Curve curve = Courses.ofState(trace, source(), new TimeWindow(700, 1700));
    assertThat(curve.x()).containsExactly(1 / 6.0, 0.5);
  }

  private double[] source() {
    return trace.column(HouseColumn.SOURCE_HEAT);
  }

  private static Trace trace(double[] time, double[] sourceHeat) {
    double[][] columns = new double[Trace.columnCount(0, 0, 0)][time.length];
    columns[Trace.index(HouseColumn.SOURCE_HEAT)] = sourceHeat;
    return new Trace(List.of(), List.of(), List.of(), time, columns);
  }
}
