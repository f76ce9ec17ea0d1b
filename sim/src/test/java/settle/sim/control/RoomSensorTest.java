package settle.sim.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RoomSensorTest {

  /** tau dS/dt = a + r t - S from S_0 = a: S = a + r (t - tau (1 - e^(-t/tau))). */
  @Property
  void followsARampExactlyWhateverTheSteps(
      @ForAll @DoubleRange(min = 10, max = 3000) double tau,
      @ForAll @DoubleRange(min = -2, max = 2) double perHour,
      @ForAll @DoubleRange(min = 5, max = 600) double step) {
    RoomSensor sensor = new RoomSensor(tau, 20);
    double rate = perHour / 3600;
    double t = 0;
    for (int i = 0; i < 50; i++) {
      double length = step * (1 + i % 3);
      sensor.follow(length, 20 + rate * (t + length / 2), 20 + rate * (t + length));
      t += length;
    }
    double expected = 20 + rate * (t - tau * (1 - Math.exp(-t / tau)));
    assertThat(sensor.value()).isEqualTo(expected, within(1e-9));
    assertThat(sensor.slope()).isEqualTo(rate * (1 - Math.exp(-t / tau)), within(1e-12));
  }

  @Test
  void foreseesAStraightCrossing() {
    RoomSensor sensor = new RoomSensor(0, 20);
    sensor.follow(100, 20.05, 20.1);
    sensor.follow(100, 20.15, 20.2);
    assertThat(sensor.timeTo(20.5, true)).isEqualTo(300, within(1e-6));
    assertThat(sensor.timeTo(19.5, false)).isInfinite();
    assertThat(sensor.timeTo(20.1, true)).as("already passed").isZero();
  }

  /** T = 20 + 1e-6 t²: the bend is 2e-6 K/s², known from two steps. */
  @Test
  void foreseesAnAcceleratingCrossing() {
    RoomSensor sensor = new RoomSensor(0, 20);
    double t = 0;
    for (int i = 0; i < 2; i++) {
      double end = t + 100;
      double mean = 20 + 1e-6 * (end * end * end - t * t * t) / 3 / 100;
      sensor.follow(100, mean, 20 + 1e-6 * end * end);
      t = end;
    }
    // 20.16 is passed at 400 s.
    assertThat(sensor.timeTo(20.16, true)).isEqualTo(200, within(1e-3));
  }

  @Test
  void aLaggingSensorKnowsItWillTurn() {
    RoomSensor sensor = new RoomSensor(600, 20);
    sensor.follow(60, 20.5, 21);
    // The room has run ahead: the sensor follows though it has hardly moved.
    assertThat(sensor.value()).isLessThan(20.1);
    assertThat(sensor.timeTo(20.3, true)).isBetween(60.0, 300.0);
  }
}
