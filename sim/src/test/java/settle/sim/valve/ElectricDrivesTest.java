package settle.sim.valve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** What actuators and motor heads do when told temperatures; no room answers. */
class ElectricDrivesTest {

  private static final double[] NO_DROP = {0};
  private static final double KVS = 0.8;

  private static ValveStepper actuator() {
    return new ValveStepper(
        List.of(new OnOffActuator("actuator", 20, 0.5, 180, KVS, RoomSensing.OPERATIVE)), 20);
  }

  private static ValveStepper motor(double gain, double integralTime, double travelTime) {
    return new ValveStepper(
        List.of(new MotorHead("motor", 20, gain, integralTime, travelTime, KVS, RoomSensing.AIR)),
        20);
  }

  /** A step in which the room goes straight from where it was; returns the mean opening. */
  private static double step(ValveStepper valve, double length, double from, double to) {
    valve.decide();
    valve.lookAhead(length, NO_DROP);
    double mean = (from + to) / 2;
    valve.feel(0, length, mean, mean, 0.01, 50, 0);
    valve.correct();
    valve.accept(length);
    valve.see(0, length, to, to);
    return valve.opening(0);
  }

  @Test
  void anActuatorOpensBelowAndShutsAboveItsDifferential() {
    ValveStepper valve = actuator();
    assertThat(step(valve, 60, 20, 19.76)).as("shut at first").isZero();
    assertThat(step(valve, 60, 19.76, 19.74)).as("inside").isZero();
    assertThat(step(valve, 60, 19.74, 20.24)).as("one third of its stroke").isEqualTo(1 / 6.0);
    assertThat(step(valve, 60, 20.24, 20.24)).as("the second third").isEqualTo(0.5, within(1e-12));
    assertThat(step(valve, 90, 20.24, 20.26))
        .as("the last third, open after it")
        .isEqualTo((60 * 5 / 6.0 + 30) / 90, within(1e-12));
    assertThat(step(valve, 180, 20.26, 20.26)).as("shutting").isEqualTo(0.5, within(1e-12));
    assertThat(step(valve, 60, 20.26, 19.8)).isZero();
  }

  @Test
  void anActuatorFollowsItsProgramme() {
    ValveStepper valve = actuator();
    step(valve, 60, 20, 19);
    step(valve, 180, 19, 19);
    assertThat(step(valve, 60, 19, 19)).isOne();
    valve.shiftSetPoint(0, -4);
    assertThat(step(valve, 60, 19, 19))
        .as("set back: shutting at once")
        .isEqualTo(5 / 6.0, within(1e-12));
  }

  @Test
  void stepsStayShortWhileAnActuatorMovesOrIsAboutTo() {
    ValveStepper valve = actuator();
    step(valve, 60, 20, 20);
    step(valve, 60, 20, 20);
    assertThat(valve.steadyFor(0.2)).isInfinite();
    // 3.6 K/h downwards, 0.13 K above the edge.
    step(valve, 60, 20, 19.94);
    step(valve, 60, 19.94, 19.88);
    assertThat(valve.steadyFor(0.2)).isEqualTo(130, within(1e-6));
    step(valve, 120, 19.88, 19.74);
    valve.decide();
    assertThat(valve.steadyFor(0.2)).isEqualTo(0.2 * 180, within(1e-9));
  }

  @Test
  void theInterlockWaitsForAnOpening() {
    ValveStepper valve = actuator();
    assertThat(valve.anyElectricOpen()).isFalse();
    step(valve, 10, 20, 19);
    assertThat(valve.anyElectricOpen()).isFalse();
    step(valve, 10, 19, 19);
    assertThat(valve.anyElectricOpen()).isTrue();
    ValveStepper fixed = new ValveStepper(List.of(new FixedOpening("fixed", 1)), 20);
    assertThat(fixed.anyElectricOpen()).as("nothing to wait for").isTrue();
  }

  /** Lift asked under a steady error: K_p e (1 + t/T_i). */
  @Property
  void aMotorHeadIntegratesASteadyError(
      @ForAll @DoubleRange(min = 0.05, max = 0.4) double gain,
      @ForAll @DoubleRange(min = 600, max = 7200) double integralTime,
      @ForAll @DoubleRange(min = 10, max = 300) double length) {
    ValveStepper valve = motor(gain, integralTime, 1);
    double error = 0.5;
    step(valve, 1e-6, 20, 20 - error);
    step(valve, 10, 20 - error, 20 - error);
    double t = 10;
    double opening = step(valve, length, 20 - error, 20 - error);
    double middle = gain * error * (1 + (t + length / 2) / integralTime);
    assertThat(opening).isEqualTo(middle, within(1e-9));
  }

  @Test
  void aProportionalMotorHeadHasAFixedBand() {
    ValveStepper valve = motor(0.5, Double.POSITIVE_INFINITY, 1);
    step(valve, 60, 20, 19);
    assertThat(step(valve, 60, 19, 19)).isEqualTo(0.5, within(1e-12));
    step(valve, 60, 19, 10);
    assertThat(step(valve, 60, 10, 10)).isOne();
    step(valve, 60, 10, 19);
    assertThat(step(valve, 60, 19, 19)).as("as before saturation").isEqualTo(0.5, within(1e-12));
  }

  @Test
  void theMotorHasItsSpeed() {
    ValveStepper valve = motor(10, Double.POSITIVE_INFINITY, 150);
    step(valve, 1e-6, 20, 15);
    assertThat(step(valve, 60, 15, 15)).as("60 of 150 s").isEqualTo(0.2, within(1e-6));
    assertThat(step(valve, 120, 15, 15))
        .as("open after 90 s")
        .isEqualTo((90 * 0.7 + 30) / 120, within(1e-3));
  }

  /** Ten hours 2 K short at full lift leave nothing behind: half a kelvin above shuts at once. */
  @Test
  void theIntegralDoesNotWindUp() {
    ValveStepper valve = motor(0.8, 1800, 60);
    step(valve, 60, 20, 18);
    for (int i = 0; i < 600; i++) {
      step(valve, 60, 18, 18);
    }
    assertThat(valve.opening(0)).isOne();
    step(valve, 60, 18, 20.5);
    // Asked just left of saturation when the error was 2 K: 1 + K_p (-0.5 - 2) < 0.
    step(valve, 60, 20.5, 20.5);
    assertThat(step(valve, 60, 20.5, 20.5)).isZero();
  }

  @Test
  void aMotorHeadLimitsStepsWhileItMoves() {
    ValveStepper valve = motor(0.5, 3600, 150);
    step(valve, 10, 20, 18);
    // Full lift asked, shut still: a fifth of a tenth of the stroke.
    assertThat(valve.steadyFor(0.2)).isLessThan(0.2 * 0.25 * 150);
  }
}
