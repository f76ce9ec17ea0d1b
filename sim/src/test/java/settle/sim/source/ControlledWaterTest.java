package settle.sim.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Water under its controller against C dT/dt = P - m c (T - T_ret) - G (T - T_s), P being what the
 * controller asks for between its limits, integrated by the classical Runge-Kutta method.
 */
class ControlledWaterTest {

  private static final double CAPACITY = 40_000;
  private static final double LOSS = 3;
  private static final double SURROUNDINGS = 18;
  private static final double CONTROL_TIME = 60;

  private static ControlledWater water() {
    return new ControlledWater(CAPACITY, LOSS, SURROUNDINGS, CONTROL_TIME);
  }

  /** The same water stepped finely. */
  private static final class Fine {

    private final double flow;
    private final double returning;
    private final double setPoint;
    private final double least;
    private final double most;
    private final double fall;
    private final double from;
    double temperature;
    double area;
    double heat;

    Fine(
        double flow,
        double returning,
        double setPoint,
        double least,
        double most,
        double fall,
        double from) {
      this.flow = flow;
      this.returning = returning;
      this.setPoint = setPoint;
      this.least = least;
      this.most = most;
      this.fall = fall;
      this.from = from;
      temperature = from;
    }

    private double taken(double t) {
      return flow * (t - returning) + LOSS * (t - SURROUNDINGS);
    }

    private double power(double t) {
      double asked = CAPACITY * (setPoint - t) / CONTROL_TIME + taken(t);
      return Math.max(least, Math.min(asked, most - fall * (t - from)));
    }

    private double slope(double t) {
      return (power(t) - taken(t)) / CAPACITY;
    }

    void advance(double time, double h) {
      for (long k = Math.round(time / h); k > 0; k--) {
        double was = temperature;
        double a = slope(was);
        double b = slope(was + h / 2 * a);
        double c = slope(was + h / 2 * b);
        double d = slope(was + h * c);
        temperature += h / 6 * (a + 2 * b + 2 * c + d);
        area += h * (was + temperature) / 2;
        heat += h * (power(was) + power(temperature)) / 2;
      }
    }
  }

  /**
   * Called from stretch to stretch, as it asks for: limits met, held and left. A largest output
   * that falls is straight from where the stretch began, so that falls are tried in single ones.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void followsItsController(long seed) {
    Random random = new Random(seed);
    ControlledWater water = water();
    for (int trial = 0; trial < 25; trial++) {
      double flow = random.nextInt(5) == 0 ? 0 : 900 * random.nextDouble();
      double returning = 15 + 30 * random.nextDouble();
      double setPoint = 30 + 30 * random.nextDouble();
      double least = 500 + 2500 * random.nextDouble();
      double most = least + 8000 * random.nextDouble();
      double from = 15 + 50 * random.nextDouble();
      double time = 20 + 580 * random.nextDouble();
      water.begin(flow, returning);
      Fine fine = new Fine(flow, returning, setPoint, least, most, 0, from);
      fine.advance(Math.round(time / 0.05) * 0.05, 0.05);
      double left = Math.round(time / 0.05) * 0.05;
      double total = left;
      double t = from;
      double area = 0;
      double heat = 0;
      int stretches = 0;
      while (left > 1e-9) {
        left -= water.modulate(t, setPoint, least, most, 0, Double.POSITIVE_INFINITY, left);
        t = water.end();
        area += water.area();
        heat += water.heat();
        stretches++;
      }
      assertThat(stretches).as("trial %d", trial).isLessThan(10);
      assertThat(t).as("trial %d", trial).isCloseTo(fine.temperature, within(1e-3));
      assertThat(area).as("trial %d", trial).isCloseTo(fine.area, within(1e-3 * total));
      assertThat(heat).as("trial %d", trial).isCloseTo(fine.heat, within(2e-3 * most * 10));
      // What is made is stored, carried off or lost, exactly.
      double carried = flow > 0 ? flow * (area - returning * total) : 0;
      assertThat(heat - CAPACITY * (t - from) - carried - water.loss(area, total))
          .isCloseTo(0, within(1e-6 * CAPACITY));
    }
  }

  /** One stretch at most: the compressor's capacity falls with the water that it warms. */
  @ParameterizedTest
  @CsvSource({"0, 100", "300, 100", "600, 200"})
  void aCapacityThatFallsIsHeld(double flow, double fall) {
    ControlledWater water = water();
    water.begin(flow, 25);
    Fine fine = new Fine(flow, 25, 60, 1000, 6000, fall, 28);
    fine.advance(120, 0.05);
    double stretch = water.modulate(28, 60, 1000, 6000, fall, Double.POSITIVE_INFINITY, 120);
    assertThat(stretch).isEqualTo(120);
    assertThat(water.end()).isCloseTo(fine.temperature, within(1e-4));
    assertThat(water.area()).isCloseTo(fine.area, within(1e-3));
    assertThat(water.heat()).isCloseTo(fine.heat, within(5.0));
    // Held output plus its fall: what the area says.
    assertThat(water.held(6000, fall, 28, 120))
        .isCloseTo(6000 * 120 - fall * (fine.area - 28 * 120), within(1.0));
    assertThat(water.ranAt(6000)).isTrue();
    assertThat(water.ranAt(1000)).isFalse();
  }

  /**
   * From 28 °C at 4 kW less 100 W/K, 300 W/K from 25 °C, towards 33 °C: where the controller asks
   * for no more than that it takes over, 263.33 W over 263.67 W/K further up.
   */
  @Test
  void theControllerTakesOverWhereItAsksForWhatAFallingCapacityGives() {
    ControlledWater water = water();
    water.begin(300, 25);
    double asked = CAPACITY * 5 / CONTROL_TIME + 300 * 3 + LOSS * 10;
    double way = (asked - 4000) / (CAPACITY / CONTROL_TIME - 300 - LOSS - 100);
    double rate = (300 + LOSS + 100) / CAPACITY;
    double settled = (4000 - 300 * 3 - LOSS * 10) / CAPACITY / rate;
    double stretch = water.modulate(28, 33, 1000, 4000, 100, Double.POSITIVE_INFINITY, 1000);
    assertThat(way).isCloseTo(263.333 / 263.667, within(1e-5));
    assertThat(water.end()).isCloseTo(28 + way, within(1e-6));
    assertThat(stretch).isCloseTo(-Math.log(1 - way / settled) / rate, within(1e-6));
  }

  /**
   * 1500 W/K take more per kelvin than the controller asks for less: from 30 °C on its way to 36 °C
   * it meets a capacity of 13 kW less 100 W/K.
   */
  @Test
  void theControllerMeetsAFallingCapacityOnItsWayUp() {
    ControlledWater water = water();
    water.begin(1500, 25);
    for (double all : new double[] {6, 4}) {
      double asked = CAPACITY * all / CONTROL_TIME + 1500 * 5 + LOSS * 12;
      double way = (13_000 - asked) / (1500 + LOSS - CAPACITY / CONTROL_TIME + 100);
      double stretch =
          water.modulate(30, 30 + all, 1000, 13_000, 100, Double.POSITIVE_INFINITY, 1000);
      assertThat(water.end()).isCloseTo(30 + way, within(1e-6));
      assertThat(stretch).isCloseTo(CONTROL_TIME * Math.log(all / (all - way)), within(1e-6));
    }
    // At 33 °C it would be met 3.7 K further up: never.
    assertThat(water.modulate(30, 33, 1000, 13_000, 100, Double.POSITIVE_INFINITY, 1000))
        .isEqualTo(1000);
  }

  /** Without flow or loss 2 kW warm 40 kJ/K by a kelvin in 20 s. */
  @Test
  void aStretchEndsWhereItIsTo() {
    ControlledWater water = new ControlledWater(CAPACITY, 0, 0, CONTROL_TIME);
    water.begin(0, Double.NaN);
    assertThat(water.hold(30, 2000, 33, 1000)).isCloseTo(60, within(1e-9));
    assertThat(water.end()).isCloseTo(33, within(1e-9));
    assertThat(water.area()).isCloseTo(60 * 31.5, within(1e-6));
    assertThat(water.heat()).isCloseTo(120_000, within(1e-6));
    assertThat(water.hold(30, 2000, 33, 20)).isEqualTo(20);
    assertThat(water.end()).isCloseTo(31, within(1e-9));
    // It moves away from a threshold behind it.
    assertThat(water.hold(30, 2000, 29, 500)).isEqualTo(500);
    assertThat(water.hold(30, -2000, 29, 500)).isCloseTo(20, within(1e-9));
    // At rest nothing is met; a threshold just here does not stop the clock.
    assertThat(water.hold(30, 0, 30, 500)).isEqualTo(500);
  }

  /** 1 kW/K towards a return of 30 °C: from 50 to 40 °C in C/(m c) ln 2, 30 °C never. */
  @Test
  void aStretchUnderFlowEndsByItsExponential() {
    ControlledWater water = new ControlledWater(CAPACITY, 0, 0, CONTROL_TIME);
    water.begin(1000, 30);
    assertThat(water.hold(50, 0, 40, 1000)).isCloseTo(40 * Math.log(2), within(1e-9));
    assertThat(water.hold(50, 0, 30, 1000)).isEqualTo(1000);
    assertThat(water.end()).isCloseTo(30 + 20 * Math.exp(-25), within(1e-9));
    assertThat(water.hold(50, 0, 29, 1000)).isEqualTo(1000);
  }

  /** At set-point, with a return 10 K below and 500 W/K, the controller asks for 5 kW and G. */
  @Test
  void asksForWhatHoldsTheSetPointAndMoreBelowIt() {
    ControlledWater water = water();
    water.begin(500, 30);
    double holding = 500 * 10 + LOSS * (40 - SURROUNDINGS);
    assertThat(water.asksMoreThan(holding - 1, 40, 40)).isTrue();
    assertThat(water.asksMoreThan(holding + 1, 40, 40)).isFalse();
    assertThat(water.asksLessThan(holding + 1, 40, 40)).isTrue();
    assertThat(water.asksLessThan(holding - 1, 40, 40)).isFalse();
    // A kelvin below set-point: C/tau more, less what a kelvin takes less.
    double below = holding + CAPACITY / CONTROL_TIME - 500 - LOSS;
    assertThat(water.asksMoreThan(below - 1, 39, 40)).isTrue();
    assertThat(water.asksMoreThan(below + 1, 39, 40)).isFalse();
    assertThat(water.asksLessThan(below + 1, 39, 40)).isTrue();
    assertThat(water.asksLessThan(below - 1, 39, 40)).isFalse();
  }
}
