package settle.sim.valve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What valves do at rest, what they refuse to be, and how the stepper keeps several of them. */
class ValveLawsTest {

  private static final WaxValve WAX =
      new WaxValve(
          "wax",
          20,
          2,
          0.4,
          new WaxValve.Lags(1200, 0, 0),
          0.02,
          1,
          0.5,
          0.5,
          0.8,
          RoomSensing.AIR);
  private static final OnOffActuator ACTUATOR =
      new OnOffActuator("actuator", 20, 0.5, 180, 0.8, RoomSensing.OPERATIVE);
  private static final MotorHead MOTOR =
      new MotorHead("motor", 20, 0.5, Double.POSITIVE_INFINITY, 60, 0.8, RoomSensing.OPERATIVE);

  @Test
  void capacityIsStraightBetweenShutAndOpen() {
    assertThat(CapacityCurve.kv(20, 2, 0.5, 0.8, 20)).isEqualTo(0.5);
    assertThat(CapacityCurve.kv(20, 2, 0.5, 0.8, 21)).isEqualTo(0.25);
    assertThat(CapacityCurve.kv(20, 2, 0.5, 0.8, 19)).isEqualTo(0.75);
    assertThat(CapacityCurve.kv(20, 2, 0.5, 0.8, 23)).isZero();
    assertThat(CapacityCurve.kv(20, 2, 0.5, 0.8, 10)).isEqualTo(0.8);
  }

  @Test
  void aHeadFeelsItsWaterAndItsPlace() {
    assertThat(CapacityCurve.sensed(20, 0.02, 70, 1.5)).isEqualTo(21.9, within(1e-12));
    assertThat(CapacityCurve.sensed(20, 0.02, 30, 0)).isEqualTo(19.6, within(1e-12));
    assertThat(CapacityCurve.underPressure(20, 0.5, 60_000)).isEqualTo(19.75, within(1e-12));
    assertThat(CapacityCurve.underPressure(20, 0.5, 0)).isEqualTo(20);
  }

  @Test
  void aWaxValveIsMovedWithoutBeingChanged() {
    assertThat(WAX.raised(1.5))
        .isEqualTo(
            new WaxValve(
                "wax",
                21.5,
                2,
                0.4,
                new WaxValve.Lags(1200, 0, 0),
                0.02,
                1,
                0.5,
                0.5,
                0.8,
                RoomSensing.AIR));
    assertThat(WAX.withBias(3))
        .isEqualTo(
            new WaxValve(
                "wax",
                20,
                2,
                0.4,
                new WaxValve.Lags(1200, 0, 0),
                0.02,
                3,
                0.5,
                0.5,
                0.8,
                RoomSensing.AIR));
  }

  @Test
  void electricHeadsAreMovedWithoutBeingChanged() {
    assertThat(ACTUATOR.raised(-2))
        .isEqualTo(new OnOffActuator("actuator", 18, 0.5, 180, 0.8, RoomSensing.OPERATIVE));
    assertThat(MOTOR.raised(2))
        .isEqualTo(
            new MotorHead(
                "motor", 22, 0.5, Double.POSITIVE_INFINITY, 60, 0.8, RoomSensing.OPERATIVE));
    assertThat(MOTOR.tuned(new Valve.Controller(0.8, 900)))
        .isEqualTo(new MotorHead("motor", 20, 0.8, 900, 60, 0.8, RoomSensing.OPERATIVE));
    FixedOpening fixed = new FixedOpening("fixed", 1);
    assertThat(fixed.raised(3)).isSameAs(fixed);
  }

  @Test
  void whatNothingCanBeIsRefused() {
    assertThatThrownBy(() -> new FixedOpening("f", -1)).hasMessageContaining("'f'");
    assertThatThrownBy(() -> new FixedOpening("f", Double.NaN)).hasMessageContaining("Kv");
    for (double none : new double[] {0, -1, Double.NaN}) {
      assertThatThrownBy(() -> new OnOffActuator("a", 20, none, 60, 1, RoomSensing.AIR))
          .hasMessageContaining("differential of 'a'");
      assertThatThrownBy(() -> new OnOffActuator("a", 20, 1, none, 1, RoomSensing.AIR))
          .hasMessageContaining("travel time of 'a'");
      assertThatThrownBy(() -> new OnOffActuator("a", 20, 1, 60, none, RoomSensing.AIR))
          .hasMessageContaining("Kvs of 'a'");
      assertThatThrownBy(() -> new MotorHead("m", 20, none, 60, 60, 1, RoomSensing.AIR))
          .hasMessageContaining("gain of 'm'");
      assertThatThrownBy(() -> new MotorHead("m", 20, 1, none, 60, 1, RoomSensing.AIR))
          .hasMessageContaining("integral time of 'm'");
      assertThatThrownBy(() -> new MotorHead("m", 20, 1, 60, none, 1, RoomSensing.AIR))
          .hasMessageContaining("travel time of 'm'");
      assertThatThrownBy(() -> new MotorHead("m", 20, 1, 60, 60, none, RoomSensing.AIR))
          .hasMessageContaining("Kvs of 'm'");
      assertThatThrownBy(() -> wax(none, 0, 60, 0, 0, 1, 1)).hasMessageContaining("band");
      assertThatThrownBy(() -> wax(1, 0, none, 0, 0, 1, 1)).hasMessageContaining("time constant");
      assertThatThrownBy(() -> wax(1, 0, 60, 0, 0, none, 1)).hasMessageContaining("Kv nominal");
    }
    assertThatThrownBy(() -> wax(1, -1e-9, 60, 0, 0, 1, 1)).hasMessageContaining("play");
    assertThatThrownBy(() -> wax(1, 0, 60, -1e-9, 0, 1, 1)).hasMessageContaining("second");
    assertThatThrownBy(() -> wax(1, 0, 60, 0, -1e-9, 1, 1)).hasMessageContaining("dead time");
    assertThatThrownBy(() -> wax(1, 0, 60, 0, 0, 1, 0.9)).hasMessageContaining("Kvs");
    assertThat(wax(1, 0, 60, 0, 0, 1, 1).kvMaximum()).isOne();
  }

  private static WaxValve wax(
      double band, double play, double lag, double second, double dead, double kv, double kvs) {
    return new WaxValve(
        "w",
        20,
        band,
        play,
        new WaxValve.Lags(lag, second, dead),
        0,
        0,
        0,
        kv,
        kvs,
        RoomSensing.AIR);
  }

  /** At rest, what switches or integrates holds its set-point; what does not has a band. */
  @Test
  void liftAtRest() {
    assertThat(OnOffActuator.meanLift(1)).isOne();
    assertThat(OnOffActuator.meanLift(-1)).isZero();
    assertThat(OnOffActuator.meanLift(0)).isEqualTo(0.5);
    assertThat(OnOffActuator.meanLift(0.0025)).isEqualTo(0.75, within(1e-12));
    assertThat(MOTOR.liftAtRest(1)).isEqualTo(0.5);
    assertThat(MOTOR.liftAtRest(-1)).isZero();
    assertThat(MOTOR.liftAtRest(9)).isOne();
    assertThat(MOTOR.tuned(new Valve.Controller(0.5, 600)).liftAtRest(1)).isOne();
    assertThat(MOTOR.tuned(new Valve.Controller(0.5, 600)).liftAtRest(-0.0025))
        .isEqualTo(0.25, within(1e-12));
  }

  @Test
  void severalValvesKeepToThemselves() {
    ValveStepper valves =
        new ValveStepper(List.of(new FixedOpening("f", 0.3), WAX.withBias(0), ACTUATOR, MOTOR), 21);
    double[] drop = {10_000, 10_000, 10_000, 10_000};
    assertThat(valves.count()).isEqualTo(4);
    assertThat(valves.electric(0)).isFalse();
    assertThat(valves.electric(1)).isFalse();
    assertThat(valves.electric(2)).isTrue();
    assertThat(valves.electric(3)).isTrue();
    assertThat(valves.element(0)).isNaN();
    assertThat(valves.element(1)).isEqualTo(21);
    assertThat(valves.element(3)).isEqualTo(21);
    double[] kv = valves.lookAhead(60, drop);
    assertThat(kv[0]).isEqualTo(0.3);
    // Standing water at room temperature: 0.02 (21 - 50) = -0.58 K felt less.
    assertThat(kv[1]).isEqualTo(0.25, within(0.02));
    assertThat(valves.feel(0, 60, 15, 15, 0.01, 60, 10_000)).isZero();
    double apart = valves.feel(1, 60, 15, 15, 0.01, 60, 10_000);
    double before = kv[1];
    double[] corrected = valves.correct();
    assertThat(corrected[1]).isGreaterThan(before);
    assertThat(apart)
        .isEqualTo((corrected[1] - before) / (before + 0.01 * 0.8), within(1e-12))
        .isPositive();
    assertThat(valves.opening(1)).isEqualTo(corrected[1] / 0.8);
    assertThat(valves.opening(0)).isOne();
    assertThat(new ValveStepper(List.of(new FixedOpening("shut", 0)), 20).opening(0)).isZero();
  }

  /** Only the step in which a valve leaves its seat lets hot water reach a cold head. */
  @Test
  void leavingTheSeatIsToldOnce() {
    ValveStepper valves = new ValveStepper(List.of(ACTUATOR, new FixedOpening("f", 1)), 21);
    assertThat(step(valves, 21)).as("shut").isFalse();
    assertThat(step(valves, 19)).as("about to open").isFalse();
    assertThat(step(valves, 19)).as("leaves its seat").isTrue();
    assertThat(step(valves, 19)).as("open").isFalse();
  }

  private static boolean step(ValveStepper valves, double room) {
    valves.decide();
    valves.lookAhead(60, new double[] {0, 0});
    valves.feel(0, 60, room, room, 0, 0, 0);
    valves.correct();
    boolean opened = valves.accept(60);
    valves.see(0, 60, room, room);
    return opened;
  }

  @Test
  void anActuatorFeelsWhatItIsMadeToFeel() {
    ValveStepper air =
        new ValveStepper(List.of(new OnOffActuator("a", 20, 0.5, 60, 1, RoomSensing.AIR)), 20);
    ValveStepper operative =
        new ValveStepper(
            List.of(new OnOffActuator("a", 20, 0.5, 60, 1, RoomSensing.OPERATIVE)), 20);
    for (ValveStepper valves : List.of(air, operative)) {
      for (int i = 0; i < 3; i++) {
        valves.decide();
        valves.lookAhead(60, new double[] {0});
        valves.feel(0, 60, 18, 22, 0, 0, 0);
        valves.correct();
        valves.accept(60);
        valves.see(0, 60, 18, 22);
      }
    }
    assertThat(air.opening(0)).isOne();
    assertThat(air.element(0)).isEqualTo(18);
    assertThat(operative.opening(0)).isZero();
    assertThat(operative.element(0)).isEqualTo(22);
  }
}
