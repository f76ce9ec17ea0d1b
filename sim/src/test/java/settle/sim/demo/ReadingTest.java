package settle.sim.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;

/** Readings of a run of four steps, checked by hand. */
class ReadingTest {

  private static final double HOUR = 3600;

  /** Steps of 1, 1, 2 and 1 h. */
  private static final double[] TIME = {0, HOUR, 2 * HOUR, 4 * HOUR, 5 * HOUR};

  private static final RunResult RUN = run();

  private static RunResult run() {
    double[][] columns = new double[Trace.columnCount(1, 1, 0)][TIME.length];
    for (double[] column : columns) {
      Arrays.fill(column, Double.NaN);
    }
    columns[Trace.index(RoomColumn.OPERATIVE, 0)] = new double[] {18, 20, 22, 20, 20};
    columns[Trace.index(BranchColumn.MASS_FLOW, 0, 1)] = new double[] {Double.NaN, 4, 3, 0, 1};
    columns[Trace.index(BranchColumn.RETURN, 0, 1)] =
        new double[] {Double.NaN, 40, 40, Double.NaN, 20};
    columns[Trace.index(HouseColumn.MASS_FLOW)] = new double[] {Double.NaN, 4, 3, 0, 1};
    columns[Trace.index(HouseColumn.CALL)] = new double[] {Double.NaN, 1, 1, 1, 0};
    columns[Trace.index(HouseColumn.SOURCE_HEAT)] = new double[] {Double.NaN, 500, 100, 0, 50};
    Trace trace = new Trace(List.of("room"), List.of("room: a"), List.of(), TIME, columns);
    return new RunResult(
        null, trace, List.of(), null, null, null, List.of(), 0, true, 4, 0, List.of());
  }

  private static double read(Reading reading, double hours) {
    return reading.of(RUN, 0, 0, hours * HOUR);
  }

  @Test
  void onlyTheEndOfTheRunIsRead() {
    assertThat(read(Reading.ROOM_TEMPERATURE, 1)).isCloseTo(20, within(1e-9));
    assertThat(read(Reading.FLOW, 1)).isCloseTo(1, within(1e-9));
    // The last 3 h: 2 h without flow, 1 h at 1 kg/s.
    assertThat(read(Reading.FLOW, 3)).isCloseTo(1.0 / 3, within(1e-9));
  }

  @Test
  void aPeakIsLookedForInAllOfTheRun() {
    assertThat(read(Reading.LARGEST_FLOW, 1)).isEqualTo(4);
    assertThat(read(Reading.HIGHEST_TEMPERATURE, 1)).isEqualTo(20);
  }

  /** From 22 °C at 2 h to 20 °C at 4 h; the value at 1 min after the beginning is the first. */
  @Test
  void aSwingIsHighestLessLowest() {
    assertThat(read(Reading.SWING, 3)).isCloseTo(2 - 1.0 / 60, within(1e-9));
    assertThat(read(Reading.LOWEST_TEMPERATURE, 3)).isCloseTo(20, within(1e-9));
  }

  /** (4 kg/s x 40 °C + 3 x 40 + 1 x 20)/8; the two hours without flow have no temperature. */
  @Test
  void aReturnTemperatureIsWeightedByFlow() {
    assertThat(read(Reading.EMITTER_RETURN, 5)).isCloseTo(37.5, within(1e-9));
  }

  @Test
  void heatIsAddedUp() {
    assertThat(read(Reading.SOURCE_HEAT, 5)).isCloseTo(650 * HOUR, within(1e-3));
  }

  /** Called for 2 h without flow, of 5 h. */
  @Test
  void aDeadEndIsACallWithoutFlow() {
    assertThat(read(Reading.DEAD_END, 5)).isCloseTo(0.4, within(1e-9));
    assertThat(read(Reading.CALL, 5)).isCloseTo(0.8, within(1e-9));
  }
}
