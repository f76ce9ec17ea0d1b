package settle.sim.valve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** A wax head told temperatures, against the equations it stands for; no room answers. */
class WaxDriveTest {

  private static final double SET = 20;
  private static final double BAND = 2;
  private static final double KV = 0.5;
  private static final double KVS = 0.8;
  private static final double TAU = 1200;
  private static final double SCALE_PRESSURE = 10_000;

  /** A head without any influence: what a test is about is put in by name. */
  private record Head(
      double play,
      double tau,
      double second,
      double dead,
      double water,
      double bias,
      double pressure,
      RoomSensing sensing) {

    static final Head PLAIN = new Head(0, TAU, 0, 0, 0, 0, 0, RoomSensing.OPERATIVE);

    Head play(double value) {
      return new Head(value, tau, second, dead, water, bias, pressure, sensing);
    }

    Head lags(double first, double then) {
      return new Head(play, first, then, dead, water, bias, pressure, sensing);
    }

    Head dead(double value) {
      return new Head(play, tau, second, value, water, bias, pressure, sensing);
    }

    Head water(double value) {
      return new Head(play, tau, second, dead, value, bias, pressure, sensing);
    }

    Head bias(double value) {
      return new Head(play, tau, second, dead, water, value, pressure, sensing);
    }

    Head pressure(double value) {
      return new Head(play, tau, second, dead, water, bias, value, sensing);
    }

    Head senses(RoomSensing value) {
      return new Head(play, tau, second, dead, water, bias, pressure, value);
    }

    WaxDrive at(double start) {
      return new WaxDrive(
          new WaxValve(
              "head",
              SET,
              BAND,
              play,
              new WaxValve.Lags(tau, second, dead),
              water,
              bias,
              pressure,
              KV,
              KVS,
              sensing),
          start);
    }
  }

  /** A step in a room that is as warm all through it; mean K_v over the step. */
  private static double step(WaxDrive head, double length, double room) {
    return step(head, length, room, 0, 0);
  }

  private static double step(
      WaxDrive head, double length, double room, double massFlow, double inlet) {
    return step(head, length, room, room, massFlow, inlet, SCALE_PRESSURE);
  }

  /** As the engine does it: looked ahead at, felt, accepted. */
  private static double step(
      WaxDrive head,
      double length,
      double air,
      double operative,
      double massFlow,
      double inlet,
      double pressure) {
    head.lookAhead(length, pressure);
    double kv = head.feel(length, air, operative, massFlow, inlet, pressure);
    head.accept(length);
    return kv;
  }

  private static double kv(double position) {
    return Math.min(Math.max(KV * (SET + BAND - position) / BAND, 0), KVS);
  }

  @Test
  void theElementFollowsARoomThatChangedAtOnce() {
    WaxDrive head = Head.PLAIN.at(18);
    for (int i = 1; i <= 60; i++) {
      step(head, 60, 21);
      assertThat(head.sensed()).isEqualTo(21 - 3 * Math.exp(-i * 60 / TAU), within(1e-9));
    }
    assertThat(head.lift()).isEqualTo(kv(head.sensed()) / KVS, within(1e-12));
  }

  /** Behind a room that warms evenly it lags by tau times the rate. */
  @Test
  void theElementLagsBehindARamp() {
    WaxDrive head = Head.PLAIN.at(18);
    double rate = 1.5 / 3600;
    for (int i = 0; i < 1200; i++) {
      step(head, 10, 18 + rate * (i + 0.5) * 10);
    }
    assertThat(head.sensed()).isEqualTo(18 + rate * (12_000 - TAU), within(1e-4));
  }

  /** A step looked ahead at goes on along the line that the last two drew. */
  @Test
  void whatIsLookedAheadAtIsWhatComesIfTheRoomGoesOn() {
    WaxDrive head = Head.PLAIN.at(19);
    double rate = 2.0 / 3600;
    for (int i = 0; i < 20; i++) {
      step(head, 30, 19 + rate * (i + 0.5) * 30);
    }
    double ahead = head.lookAhead(60, SCALE_PRESSURE);
    double felt = head.feel(60, 0, 19 + rate * (600 + 30), 0, 0, SCALE_PRESSURE);
    assertThat(ahead).isEqualTo(felt, within(1e-9)).isPositive().isLessThan(KVS);
  }

  @Test
  void itFeelsTheAirOrWhatPeopleFeel() {
    for (RoomSensing sensing : RoomSensing.values()) {
      WaxDrive head = Head.PLAIN.lags(1, 0).senses(sensing).at(20);
      step(head, 600, 17, 23, 0, 0, SCALE_PRESSURE);
      assertThat(head.sensed()).isEqualTo(sensing == RoomSensing.AIR ? 17 : 23, within(1e-9));
    }
  }

  @Test
  void itFeelsItsPlace() {
    WaxDrive head = Head.PLAIN.lags(1, 0).bias(1.5).at(20);
    step(head, 600, 20);
    assertThat(head.sensed()).isEqualTo(21.5, within(1e-9));
  }

  /**
   * Water in the body, dT/dt = m/M (T_in - T) + (T_a - T)/tau_w with M = 0.05 kg and tau_w = 1200
   * s: a head with a lag of a hundredth of a second shows it.
   */
  @Test
  void waterInTheBodyIsRenewedAndCools() {
    double b = 0.1;
    double flow = 2e-4;
    WaxDrive head = Head.PLAIN.lags(0.001, 0).water(b).at(20);
    double rate = flow / 0.05 + 1.0 / 1200;
    double rest = (flow / 0.05 * 60 + 20.0 / 1200) / rate;
    double water = 20;
    for (int i = 0; i < 5; i++) {
      step(head, 40, 20, flow, 60);
      double mean = rest + (water - rest) * (1 - Math.exp(-rate * 40)) / (rate * 40);
      water = rest + (water - rest) * Math.exp(-rate * 40);
      // The step's mean, carried to its end along the line through the last two.
      assertThat(head.sensed())
          .isBetween(20 + b * (mean - 50) - 0.01, 20 + b * (water - 50) + 0.25);
    }
    step(head, 50_000, 20, flow, 60);
    step(head, 50_000, 20, flow, 60);
    step(head, 50_000, 20, flow, 60);
    assertThat(head.sensed()).isEqualTo(20 + b * (rest - 50), within(1e-3));
    // Standing, it cools to the room.
    step(head, 1200, 20, 0, 99);
    double mean = 20 + (rest - 20) * (1 - Math.exp(-1));
    WaxDrive other = Head.PLAIN.lags(1e9, 0).water(b).at(20);
    assertThat(head.sensed()).isLessThan(20 + b * (rest - 50));
    assertThat(other.sensed()).isEqualTo(20, within(1e-12));
    step(head, 1200, 20, 0, 99);
    double after = 20 + (rest - 20) * Math.exp(-1) * (1 - Math.exp(-1));
    assertThat(head.sensed())
        .isEqualTo(20 + b * (after - 50) + b * (after - mean) / 2, within(1e-3));
  }

  /** A flood of hot water fills the body at once, whatever the length of the step. */
  @Test
  void aFloodFillsTheBody() {
    WaxDrive head = Head.PLAIN.lags(0.001, 0).water(0.1).at(20);
    for (int i = 0; i < 4; i++) {
      step(head, 3600, 20, 1, 60);
    }
    assertThat(head.sensed()).isEqualTo(20 + 0.1 * 10, within(1e-2));
  }

  @Test
  void nothingIsFeltBeforeTheDeadTimeIsOver() {
    WaxDrive head = Head.PLAIN.lags(1, 0).dead(300).at(20);
    for (int i = 0; i < 60; i++) {
      step(head, 10, 20);
    }
    for (int i = 1; i <= 29; i++) {
      step(head, 10, 22);
      assertThat(head.sensed()).as("after %s s", i * 10).isEqualTo(20, within(1e-6));
    }
    for (int i = 0; i < 6; i++) {
      step(head, 10, 22);
    }
    assertThat(head.sensed()).isEqualTo(22, within(1e-3));
  }

  /** On a ramp what is felt is the ramp as it was a dead time ago, whatever the steps. */
  @Test
  void aRampIsFeltLate() {
    WaxDrive head = Head.PLAIN.lags(0.01, 0).dead(100).at(20);
    double rate = 1e-3;
    double time = 0;
    for (int i = 0; i < 3000; i++) {
      double length = i % 3 == 0 ? 7 : 4;
      step(head, length, 20 + rate * (time + length / 2));
      time += length;
    }
    assertThat(head.sensed()).isEqualTo(20 + rate * (time - 100), within(2e-5));
  }

  /** Two lags in series: 1 - (a e^(-t/a) - b e^(-t/b))/(a - b). */
  @Test
  void twoLagsInSeries() {
    double a = 900;
    double b = 300;
    WaxDrive head = Head.PLAIN.lags(a, b).at(18);
    for (int i = 1; i <= 900; i++) {
      step(head, 5, 20);
      double t = i * 5;
      double left = (a * Math.exp(-t / a) - b * Math.exp(-t / b)) / (a - b);
      assertThat(head.sensed()).isEqualTo(20 - 2 * left, within(2e-3));
    }
  }

  /** EN 215: under more pressure than 0.1 bar it shuts at less. */
  @Test
  void pressureMovesTheSetPoint() {
    WaxDrive head = Head.PLAIN.pressure(2).at(20);
    assertThat(step(head, 60, 20, 20, 0, 0, 60_000)).isEqualTo(kv(20 + 1), within(1e-12));
    assertThat(step(head, 60, 20, 20, 0, 0, 10_000)).isEqualTo(kv(20), within(1e-12));
    assertThat(step(head, 60, 20, 20, 0, 0, 0)).as("not below").isEqualTo(kv(20), within(1e-12));
    assertThat(head.lookAhead(60, 60_000)).isEqualTo(kv(20 + 1), within(1e-12));
  }

  @Test
  void aShiftedSetPointMovesTheBand() {
    WaxDrive head = Head.PLAIN.at(20);
    head.shiftSetPoint(-1);
    assertThat(step(head, 60, 20)).isEqualTo(kv(21), within(1e-12));
    assertThat(head.lift()).isEqualTo(kv(21) / KVS, within(1e-12));
    head.shiftSetPoint(-4);
    assertThat(head.lift()).isZero();
    head.shiftSetPoint(4);
    assertThat(head.lift()).isOne();
  }

  /** The pin stands until the element has taken up the play, both ways. */
  @Test
  void playIsTakenUpBothWays() {
    WaxDrive head = Head.PLAIN.play(0.6).lags(0.001, 0).at(20);
    double[] rooms = {20.2, 20.3, 20.5, 21, 20.6, 20.4, 20, 19};
    double[] pins = {20, 20, 20.2, 20.7, 20.7, 20.7, 20.3, 19.3};
    for (int i = 0; i < rooms.length; i++) {
      // Long enough to forget the line through the last two rooms.
      step(head, 600, rooms[i]);
      step(head, 600, rooms[i]);
      step(head, 600, rooms[i]);
      double overshoot = 0.5 * Math.abs(rooms[i] - (i == 0 ? 20 : rooms[i - 1]));
      assertThat(head.lift() * KVS).isEqualTo(kv(pins[i]), within(KV / BAND * overshoot + 1e-6));
    }
  }

  /**
   * Mean opening over a step against the same head in thousands of small steps: through play, seat
   * and full opening. Element and opening curve are taken as straight over each half of the step,
   * which bounds the difference by the square of its share of the lag.
   */
  @Property(tries = 300, shrinking = ShrinkingMode.OFF)
  void theMeanOpeningIsThatOfManySmallSteps(
      @ForAll @DoubleRange(min = 16, max = 24) double start,
      @ForAll @DoubleRange(min = 14, max = 26) double room,
      @ForAll @DoubleRange(min = 0, max = 1.5) double play,
      @ForAll @DoubleRange(min = 1, max = 300) double length) {
    WaxDrive head = Head.PLAIN.play(play).at(start);
    double mean = step(head, length, room);
    int parts = 4000;
    double element = start;
    double pin = start;
    double sum = 0;
    for (int i = 0; i < parts; i++) {
      double next = room + (element - room) * Math.exp(-length / parts / TAU);
      double middle = (element + next) / 2;
      double at = Math.min(Math.max(pin, middle - play / 2), middle + play / 2);
      sum += kv(at);
      pin = Math.min(Math.max(pin, next - play / 2), next + play / 2);
      element = next;
    }
    double bend = KV / BAND * Math.abs(room - start) * Math.pow(length / TAU, 2) / 32;
    assertThat(mean).isEqualTo(sum / parts, within(bend + 2e-4));
    assertThat(head.sensed()).isEqualTo(element, within(1e-9));
    assertThat(head.lift() * KVS).isEqualTo(kv(pin), within(1e-9));
  }

  /** Within its band a head may go the asked share of its way from shut, 0.3 K added. */
  @Test
  void aStepIsNoLongerThanTheHeadsWayAllows() {
    WaxDrive head = Head.PLAIN.at(21);
    step(head, 1e-3, 20);
    double way = 0.2 * (1 + 0.3);
    assertThat(head.steadyFor(0.2)).isEqualTo(way / (1 / TAU), within(0.01));
    assertThat(head.steadyFor(0.1)).isEqualTo(way / 2 / (1 / TAU), within(0.01));
    WaxDrive slower = Head.PLAIN.at(21);
    step(slower, 1e-3, 20.5);
    assertThat(slower.steadyFor(0.2)).isEqualTo(way / (0.5 / TAU), within(0.01));
  }

  @Test
  void farFromItsBandAHeadMayGoHalfWayToIt() {
    WaxDrive hot = Head.PLAIN.at(32);
    step(hot, 1e-3, 20);
    assertThat(hot.steadyFor(0.2)).isEqualTo((0.2 * 0.3 + 10 / 2.0) / (12 / TAU), within(0.01));
    WaxDrive cold = Head.PLAIN.at(8.8);
    step(cold, 1e-3, 20);
    // Fully open below 18.8 °C: 3.2 K under shut.
    assertThat(cold.steadyFor(0.2))
        .isEqualTo((0.2 * (3.2 + 0.3) + 10 / 2.0) / (11.2 / TAU), within(0.01));
    WaxDrive still = Head.PLAIN.at(20);
    step(still, 1e-3, 20);
    assertThat(still.steadyFor(0.2)).isGreaterThan(1e6);
  }

  /** Where it stands still while its room turns, the step follows the turn: d = a t²/2. */
  @Test
  void aTurningPointIsNotStridenOver() {
    WaxDrive head = Head.PLAIN.at(20);
    double rate = 1e-3;
    step(head, 10, 20 - 2 * rate * 10);
    step(head, 10, 20 - rate * 10);
    double travel = 0.2 * (2 + (20 - head.sensed()) + 0.3);
    assertThat(head.steadyFor(0.2))
        .isLessThanOrEqualTo(Math.sqrt(2 * travel * TAU / rate) * 1.001)
        .isGreaterThan(0.2 * TAU);
  }
}
