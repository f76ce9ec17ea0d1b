package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A drift keeps its direction and is not taken for rest, however slow; a wobble is averaged. */
class DailyCourseTest {

  /** Adds days of one room that stands still within each. */
  private static DailyCourse of(double... means) {
    DailyCourse course = new DailyCourse(1);
    for (double mean : means) {
      course.add(new double[] {mean}, new double[] {0});
    }
    return course;
  }

  @Test
  void oneDayIsNotEnough() {
    assertThat(of(20).drifts()).isTrue();
    assertThat(of(20, 20).drifts()).isFalse();
  }

  @Test
  void whatHardlyMovesRests() {
    DailyCourse course = of(20, 20.004);
    assertThat(course.drifts()).isFalse();
    assertThat(course.mean(0)).isEqualTo(20.004);
    assertThat(course.lastChange()).isCloseTo(0.004, within(1e-12));
  }

  @Test
  void aSlowDriftIsNeverTakenForRest() {
    DailyCourse course = new DailyCourse(1);
    for (int day = 0; day < 30; day++) {
      course.add(new double[] {20 + 0.006 * day}, new double[] {0});
      assertThat(course.drifts()).as("day %d", day).isTrue();
    }
  }

  @Test
  void aWobbleIsAveragedOverFourDays() {
    assertThat(of(20.00, 20.03, 20.00).drifts()).as("three days").isTrue();
    DailyCourse course = of(19.0, 20.00, 20.03, 19.99, 20.02);
    assertThat(course.drifts()).isFalse();
    assertThat(course.mean(0)).isCloseTo(20.01, within(1e-12));
  }

  @Test
  void aWideWobbleIsNoRest() {
    assertThat(of(20, 20.06, 20, 20.06, 20).drifts()).isTrue();
  }

  /** Of a room that goes up and down by 2 K its mean may move by a hundredth of that. */
  @Test
  void aSwingLeavesItsMeanUneven() {
    DailyCourse course = new DailyCourse(1);
    course.add(new double[] {20}, new double[] {2});
    course.add(new double[] {20.019}, new double[] {2});
    assertThat(course.drifts()).isFalse();
    course.add(new double[] {20.041}, new double[] {2});
    assertThat(course.drifts()).isTrue();
  }

  @Test
  void oneRoomThatMovesKeepsTheHouseGoing() {
    DailyCourse course = new DailyCourse(2);
    course.add(new double[] {20, 18}, new double[2]);
    course.add(new double[] {20, 18.1}, new double[2]);
    assertThat(course.drifts()).isTrue();
  }
}
