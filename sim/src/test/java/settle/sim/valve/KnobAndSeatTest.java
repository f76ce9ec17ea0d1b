package settle.sim.valve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read off a knob, what a head's water comes to, and when a valve leaves its seat. */
class KnobAndSeatTest {

  /** Common practice: frost 7 °C, then 12, 16, 20, 24, 28 °C for 1 to 5. */
  @ParameterizedTest
  @CsvSource({
    "0, 7",
    "0.5, 9.5",
    "1, 12",
    "2, 16",
    "2.25, 17",
    "3, 20",
    "4, 24",
    "4.5, 26",
    "5, 28"
  })
  void aKnobIsReadBothWays(double position, double set) {
    assertThat(KnobScale.set(position)).isCloseTo(set, within(1e-12));
    assertThat(KnobScale.position(set)).isCloseTo(position, within(1e-12));
  }

  /** Beyond its ends the scale goes on as it last did: a setting that no knob has shows as one. */
  @Test
  void aSettingNoKnobHasLiesBeyondItsNumbers() {
    assertThat(KnobScale.position(32)).isCloseTo(6, within(1e-12));
    assertThat(KnobScale.position(2)).isCloseTo(-1, within(1e-12));
    assertThat(KnobScale.set(6)).isCloseTo(32, within(1e-12));
    assertThat(KnobScale.set(-1)).isCloseTo(2, within(1e-12));
  }

  @Test
  void aKnobHasNumbersAndThreeStrokesBetween() {
    assertThat(KnobScale.marks(16, 20)).containsExactly(16, 17, 18, 19, 20);
    assertThat(KnobScale.marks(7, 12)).containsExactly(7, 8.25, 9.5, 10.75, 12);
    assertThat(KnobScale.marks(16.5, 16.9)).isEmpty();
    assertThat(KnobScale.marks(0, 40)).hasSize(21).startsWith(7).endsWith(28);
  }

  /** A trickle of 0.1 g/s renews 50 g in 500 s, the room cools it in 1200 s: 48.2 °C between. */
  @Test
  void waterAtTheHeadLiesBetweenInletAndRoom() {
    assertThat(HeadWater.USUAL.atRest(1e-4, 60, 20))
        .isCloseTo((60.0 / 500 + 20.0 / 1200) / (1.0 / 500 + 1.0 / 1200), within(1e-9))
        .isCloseTo(48.235, within(1e-3));
    assertThat(HeadWater.USUAL.atRest(1, 60, 20)).isCloseTo(60, within(0.01));
    assertThat(HeadWater.USUAL.atRest(0, 60, 20)).isEqualTo(20);
  }

  @Test
  void errorAndLiftAtRestUndoEachOther() {
    for (double lift : new double[] {0.1, 0.5, 0.9}) {
      assertThat(OnOffActuator.meanLift(OnOffActuator.meanError(lift)))
          .isCloseTo(lift, within(1e-9));
      for (double integral : new double[] {900, Double.POSITIVE_INFINITY}) {
        MotorHead head = new MotorHead("m", 20, 0.4, integral, 60, 1, RoomSensing.AIR);
        assertThat(head.liftAtRest(head.errorAtRest(lift))).isCloseTo(lift, within(1e-9));
      }
    }
    // In proportion 0.4 per kelvin: 1.25 K below want for half open.
    assertThat(
            new MotorHead("m", 20, 0.4, Double.POSITIVE_INFINITY, 60, 1, RoomSensing.AIR)
                .errorAtRest(0.5))
        .isCloseTo(1.25, within(1e-12));
  }

  private static WaxDrive wax(double play, double start) {
    return new WaxDrive(
        new WaxValve(
            "head",
            20,
            2,
            play,
            new WaxValve.Lags(1200, 0, 0),
            0,
            0,
            0,
            0.5,
            0.8,
            RoomSensing.OPERATIVE),
        start);
  }

  /**
   * Shut at 22 °C with a play of 0.4 K: the pin follows once the element is down to 21.8 °C, after
   * tau ln((T_0 - T)/(21.8 - T)). The element is taken as straight over each half of the step.
   */
  @ParameterizedTest
  @ValueSource(doubles = {100, 160, 240})
  void aValveLeavesItsSeatWhenThePlayIsTakenUp(double length) {
    WaxDrive head = wax(0.4, 22.3);
    head.lookAhead(length, 0);
    double kv = head.feel(length, 15, 15, 0, 0, 0);
    double expected = 1200 * Math.log((22.3 - 15) / (21.8 - 15));
    assertThat(head.leavesSeatAfter()).isCloseTo(expected, within(1.5));
    // From there it opens as the element falls on: 0.25 m³/h per kelvin.
    int parts = 20_000;
    double mean = 0;
    for (int i = 0; i < parts; i++) {
      double element = 15 + 7.3 * Math.exp(-(i + 0.5) / parts * length / 1200);
      mean += Math.max(0.25 * (21.8 - element), 0) / parts;
    }
    assertThat(kv).isCloseTo(mean, within(1e-3));
  }

  @Test
  void aValveOffItsSeatOrOnItToTheEndDoesNotLeaveIt() {
    WaxDrive open = wax(0.4, 21.9);
    open.lookAhead(240, 0);
    open.feel(240, 15, 15, 0, 0, 0);
    assertThat(open.leavesSeatAfter()).isInfinite();
    WaxDrive shut = wax(0.4, 22.3);
    shut.lookAhead(60, 0);
    assertThat(shut.feel(60, 15, 15, 0, 0, 0)).isZero();
    assertThat(shut.leavesSeatAfter()).isInfinite();
  }

  /** The first to leave its seat counts; a fixed opening has none. */
  @Test
  void ofSeveralValvesTheFirstToLeaveItsSeatCounts() {
    WaxValve head =
        new WaxValve(
            "head",
            20,
            2,
            0,
            new WaxValve.Lags(1200, 0, 0),
            0,
            0,
            0,
            0.5,
            0.8,
            RoomSensing.OPERATIVE);
    ValveStepper valves =
        new ValveStepper(List.of(head, head.raised(0.2), new FixedOpening("f", 1)), 22.5);
    valves.lookAhead(240, new double[3]);
    for (int i = 0; i < 3; i++) {
      valves.feel(i, 240, 15, 15, 0, 0, 0);
    }
    // Shut at 22.2 °C: tau ln(7.5/7.2).
    assertThat(valves.leavesSeatAfter()).isCloseTo(1200 * Math.log(7.5 / 7.2), within(2.0));
  }

  private static MotorDrive motor(double gain, double integralTime, double start) {
    return new MotorDrive(
        new MotorHead("motor", 20, gain, integralTime, 1, 1, RoomSensing.AIR), start);
  }

  private static void step(MotorDrive motor, double length, double mean, double end) {
    motor.lookAhead(length, 0);
    motor.feel(length, mean, 0, 0, 0, 0);
    motor.accept(length);
    motor.see(length, end, 0);
  }

  /**
   * A room that warms from 17 to 18 °C in 600 s, want 20 °C, K_p 0.1 and T_i 1200 s: error 2 K at
   * the end, its integral 2.5 K x 600 s.
   */
  @Test
  void aMotorHeadAddsUpTheErrorOfARoomThatWarms() {
    MotorDrive motor = motor(0.1, 1200, 17);
    step(motor, 600, 17.5, 18);
    assertThat(motor.lift()).isCloseTo(0.1 * (2 + 2.5 * 600 / 1200), within(1e-3));
    // It goes on so: 1 K at the end, 1.5 K x 600 s more.
    step(motor, 600, 18.5, 19);
    assertThat(motor.lift()).isCloseTo(0.1 * (1 + 4.0 * 600 / 1200), within(1e-3));
  }

  /** Hours at either end of the stroke leave no trace when the error turns. */
  @ParameterizedTest
  @ValueSource(doubles = {10, 30})
  void aMotorHeadDoesNotWindUpAtTheEndsOfItsStroke(double room) {
    MotorDrive motor = motor(0.2, 1800, room);
    for (int k = 0; k < 60; k++) {
      step(motor, 600, room, room);
    }
    assertThat(motor.lift()).isEqualTo(room < 20 ? 1 : 0);
    step(motor, 1, 19, 19);
    step(motor, 60, 19, 19);
    // 0.2 x (1 K + 60 s/1800 s x 1 K), and what the turn itself adds.
    assertThat(motor.lift()).isCloseTo(0.2 * (1 + 60.0 / 1800), within(0.004));
  }

  /** A stroke of 180 s, of which a tenth a step; at rest as long as its thermostat rests. */
  @Test
  void anActuatorOnItsWayGetsShortSteps() {
    ValveStepper valves =
        new ValveStepper(List.of(new OnOffActuator("a", 20, 0.5, 180, 0.8, RoomSensing.AIR)), 18);
    valves.decide();
    valves.lookAhead(18, new double[1]);
    valves.feel(0, 18, 18, 18, 0, 0, 0);
    valves.correct();
    valves.accept(18);
    valves.see(0, 18, 18, 18);
    assertThat(valves.steadyFor(0.1)).isCloseTo(18, within(1e-9));
    assertThat(valves.opening(0)).as("mean of its first tenth").isCloseTo(0.05, within(1e-9));
    for (int k = 0; k < 20; k++) {
      valves.decide();
      valves.lookAhead(18, new double[1]);
      valves.feel(0, 18, 18, 18, 0, 0, 0);
      valves.correct();
      valves.accept(18);
      valves.see(0, 18, 18, 18);
    }
    assertThat(valves.opening(0)).isOne();
    assertThat(valves.steadyFor(0.1)).isGreaterThan(1000);
  }
}
