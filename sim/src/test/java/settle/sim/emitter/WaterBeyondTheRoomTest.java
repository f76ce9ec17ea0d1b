package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Water whose room becomes warmer or cooler: what it holds, and what it emits to a room at another
 * temperature than that of the step. Closed forms, with integrals by Simpson's rule.
 */
class WaterBeyondTheRoomTest {

  private static final double LENGTH = 12;
  private static final double CAPACITY = 1500;
  private static final double COEFFICIENT = 7;

  /** Time constant with which heat the parcels do not show is given off [s]. */
  private static final double SETTLING = 600;

  private static double w(double y, double n) {
    return n == 1 ? -Math.log(y) : Math.pow(y, 1 - n);
  }

  private static double y(double w, double n) {
    return n == 1 ? Math.exp(-w) : Math.pow(w, 1 / (1 - n));
  }

  private static double aged(double y, double n, double time) {
    double rate = COEFFICIENT / LENGTH / CAPACITY;
    return y(w(y, n) + (n == 1 ? 1 : n - 1) * rate * time, n);
  }

  /** Mean of a power of the excess over a stretch along which w is linear. */
  private static double mean(double upper, double lower, double n, double shift, double power) {
    double sum = 0;
    int intervals = 200;
    for (int i = 0; i <= intervals; i++) {
      double share = (double) i / intervals;
      double value = y(w(upper, n) * (1 - share) + w(lower, n) * share, n) - shift;
      sum += (i == 0 || i == intervals ? 1 : i % 2 == 0 ? 2 : 4) * Math.pow(value, power);
    }
    return sum / 3 / intervals;
  }

  private static double time(double upper, double lower, double n) {
    double rate = COEFFICIENT / LENGTH / CAPACITY;
    return (w(lower, n) - w(upper, n)) / (n == 1 ? 1 : n - 1) / rate;
  }

  /** A path of one stretch, seen from a room at 20 degrees. */
  private static PlugFlow stretch(double upper, double lower, double n) {
    PlugFlow path = new PlugFlow(LENGTH, CAPACITY, COEFFICIENT, n, 20);
    double time = time(upper - 20, lower - 20, n);
    path.attempt(1.01 * time, LENGTH * CAPACITY / time, upper, 20);
    path.accept();
    assertThat(path.parcels()).isOne();
    return path;
  }

  /**
   * Seen from a warmer or cooler room the same ends hold less or more. The difference is neither
   * emitted at once nor forgotten: it is given off with its own time constant.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 40, 60",
    "1, 5, 60",
    "1, 40, 900",
    "1.3, 40, 60",
    "1.3, 40, 300",
    "1.3, 5, 60",
    "1.8, 35, 60"
  })
  void whatParcelsDoNotShowIsGivenOffSlowly(double n, double room, double step) {
    PlugFlow path = stretch(80, 61, n);
    double heat = CAPACITY * LENGTH;
    assertThat(path.stored()).isCloseTo(heat * (20 + mean(60, 41, n, 0, 1)), within(1e-6 * heat));
    double upper = 80 - room;
    double lower = 61 - room;
    double unseen = heat * (20 + mean(60, 41, n, 0, 1) - room - mean(upper, lower, n, 0, 1));
    assertThat(Math.abs(unseen)).isGreaterThan(0.05 * heat);
    for (int i = 1; i <= 3; i++) {
      double before = path.stored();
      path.attempt(step, 0, Double.NaN, room);
      path.accept();
      upper = aged(upper, n, step);
      lower = aged(lower, n, step);
      unseen *= Math.exp(-step / SETTLING);
      double shown = heat * (room + mean(upper, lower, n, 0, 1));
      assertThat(path.stored()).as("step %d", i).isCloseTo(shown + unseen, within(1e-6 * heat));
      assertThat(path.emitted()).isCloseTo(before - path.stored(), within(1e-6));
      assertThat(path.meanReturn()).isCloseTo(room + lower, within(1e-6));
    }
  }

  /** A room that moves so little that powers are followed by their series, and back. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 1.1, 1.3, 1.8})
  void waterAlikeAllAlongFollowsItsRoom(double n) {
    PlugFlow path = new PlugFlow(LENGTH, CAPACITY, COEFFICIENT, n, 70);
    double y = 50;
    double[] moves = {0, 0.9, -0.8, 0.3, 5, -4, 0.1, -9};
    double room = 20;
    for (double move : moves) {
      room += move;
      y = aged(y - move, n, 100);
      path.attempt(100, 0, Double.NaN, room);
      assertThat(path.emissionNow(room))
          .isCloseTo(COEFFICIENT * Math.pow(y, n), within(1e-6 * COEFFICIENT * Math.pow(y, n)));
      assertThat(path.emissionNow(room + 3))
          .isCloseTo(COEFFICIENT * Math.pow(y - 3, n), within(1e-6 * COEFFICIENT * Math.pow(y, n)));
      assertThat(path.emissionNow(room + y + 1)).isZero();
      path.accept();
      assertThat(path.stored()).isCloseTo(CAPACITY * LENGTH * (room + y), within(1e-3));
    }
  }

  /**
   * To a room half a kelvin or five warmer than in the step; a parcel's ends stay, its middle
   * nearly.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1, 1.3, 1.8})
  void aStretchEmitsToARoomElsewhere(double n) {
    PlugFlow path = stretch(80, 66, n);
    path.attempt(1e-6, 0, Double.NaN, 20);
    for (double shift : new double[] {0, 0.5, 5, -5}) {
      double expected = COEFFICIENT * mean(60, 46, n, shift, n);
      assertThat(path.emissionNow(20 + shift))
          .as("moved by %s K", shift)
          .isCloseTo(expected, within((1e-5 + 5e-4 * Math.abs(shift)) * expected));
    }
    assertThat(path.emissionNow(90)).isZero();
  }

  /** The room's temperature lies between the ends: what is above it emits. */
  @ParameterizedTest
  @CsvSource({"1, 70", "1.3, 70", "1.8, 75", "1.3, 61"})
  void onlyWhatIsWarmerThanTheRoomEmits(double n, double room) {
    PlugFlow path = stretch(80, 61, n);
    path.attempt(1e-6, 0, Double.NaN, room);
    double warm = 80 - room;
    double expected = COEFFICIENT * warm / 19 * Math.pow(warm, n) / (n + 1);
    assertThat(path.emissionNow(room)).isCloseTo(expected, within(1e-6 * expected));
    path.accept();
    assertThat(path.stored())
        .isCloseTo(CAPACITY * LENGTH * (20 + mean(60, 41, n, 0, 1)), within(0.01));
  }

  /** Hardly any cooling along the path, where the mean of a stretch is taken by its series. */
  @ParameterizedTest
  @CsvSource({
    "1, 5e-4",
    "1, 9.9e-4",
    "1, 1.1e-3",
    "1.3, 2e-3",
    "1.3, 3.2e-3",
    "1.3, 3.5e-3",
    "1.8, 1e-3"
  })
  void fastWaterHoldsItsMean(double n, double fallen) {
    PlugFlow path = stretch(80, 80 - 60 * fallen, n);
    double expected = 20 + mean(60, 60 * (1 - fallen), n, 0, 1);
    // A rounding of the two ends counts some thousand times where their difference is divided by.
    assertThat(path.stored() / CAPACITY / LENGTH).isCloseTo(expected, within(1e-9));
  }

  @Test
  void withoutFlowTheInletDoesNotMatter() {
    PlugFlow one = stretch(70, 60, 1.3);
    PlugFlow other = stretch(70, 60, 1.3);
    one.attempt(30, 0, Double.NaN, 19);
    other.attempt(30, 0, 500, 19);
    assertThat(one.emitted()).isEqualTo(other.emitted()).isPositive();
    assertThat(one.meanReturn()).isEqualTo(other.meanReturn());
  }
}
