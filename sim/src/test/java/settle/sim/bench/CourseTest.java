package settle.sim.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What is read off a course, on courses known in closed form. */
class CourseTest {

  private static final double HOUR = 3600;

  private static Course course(DoubleUnaryOperator temperature) {
    int n = 96 * 60;
    double[] time = new double[n + 1];
    double[] operative = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      time[i] = -24 * HOUR + i * 60;
      operative[i] = temperature.applyAsDouble(time[i]);
    }
    return new Course(Disturbance.WANT, "", time, operative, new double[n + 1], 21, 21.2);
  }

  @Test
  void anExponentialSettlesWhenItsDistanceHasShrunkToTheTolerance() {
    double tau = 2 * HOUR;
    Course course = course(t -> t < 0 ? 19 : 21.2 - 2.2 * Math.exp(-t / tau));
    assertThat(course.before()).isCloseTo(19, within(0.002));
    assertThat(course.after()).isCloseTo(21.2, within(1e-6));
    assertThat(course.droop()).isCloseTo(-0.2, within(1e-6));
    assertThat(course.settlingTime()).isCloseTo(tau * Math.log(22), within(61.0));
    assertThat(course.above()).isCloseTo(0, within(1e-9));
    assertThat(course.below()).isCloseTo(0, within(1e-9));
    assertThat(course.hunting(0, 12 * HOUR)).isZero();
  }

  @Test
  void aSwingIsMeasuredFromPeakToPeakAndNeverSettles() {
    Course course = course(t -> 21 + 0.3 * Math.sin(2 * Math.PI * t / HOUR));
    assertThat(course.swing()).isCloseTo(0.6, within(0.01));
    assertThat(course.settlingTime()).isInfinite();
    assertThat(course.hunting(0, 3 * HOUR)).isCloseTo(0.6, within(0.01));
  }

  @Test
  void upOnceAndDownAgainIsNoHunting() {
    Course course = course(t -> 21 + (t > 0 ? t / HOUR * Math.exp(1 - t / HOUR) : 0));
    assertThat(course.above()).isCloseTo(1, within(0.01));
    assertThat(course.hunting(0, 6 * HOUR)).isZero();
    assertThat(course.swing()).isLessThan(0.01);
  }

  @Test
  void whatDoesNotMoveIsSettledAtOnce() {
    assertThat(course(t -> 21).settlingTime()).isZero();
  }
}
