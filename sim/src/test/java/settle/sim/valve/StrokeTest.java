package settle.sim.valve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class StrokeTest {

  @Property
  void meanIsTheAreaUnderTheStroke(
      @ForAll @DoubleRange(min = 0, max = 1) double from,
      @ForAll @DoubleRange(min = 0, max = 1) double goalStart,
      @ForAll @DoubleRange(min = 0, max = 1) double goalEnd,
      @ForAll @DoubleRange(min = 0.01, max = 3) double reach) {
    int parts = 4000;
    double most = reach / parts;
    double sum = 0;
    double lift = from;
    for (int k = 0; k < parts; k++) {
      double goal = goalStart + (goalEnd - goalStart) * (k + 1) / parts;
      double next = lift + Math.min(Math.max(goal - lift, -most), most);
      sum += (lift + next) / 2;
      lift = next;
    }
    // Written down as small moves, the stroke is late by up to one of them.
    assertThat(Stroke.mean(from, goalStart, goalEnd, reach))
        .isEqualTo(sum / parts, within(2 * (most + 1.0 / parts)));
    assertThat(Stroke.end(from, goalStart, goalEnd, reach))
        .isEqualTo(lift, within(2 * (most + 1.0 / parts)));
  }

  @Test
  void catchesAGoalThatComesAndLosesOneThatRunsAway() {
    assertThat(Stroke.end(0, 1, 0.5, 0.5)).as("met at the end").isEqualTo(0.5, within(1e-12));
    assertThat(Stroke.end(0, 0, 1, 0.5)).as("too quick").isEqualTo(0.5, within(1e-12));
    assertThat(Stroke.mean(0, 0, 0.4, 0.5)).as("followed").isEqualTo(0.2, within(1e-12));
    assertThat(Stroke.mean(0.2, 1, 1, 1.6))
        .as("there after half the time")
        .isEqualTo(0.5 * 0.6 + 0.5, within(1e-12));
    assertThat(Stroke.mean(0.3, 0.3, 0.3, 1)).as("at rest").isEqualTo(0.3, within(1e-12));
  }
}
