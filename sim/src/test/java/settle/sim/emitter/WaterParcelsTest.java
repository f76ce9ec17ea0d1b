package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Into which parcels moving water is cut, and which of them become one. What is expected follows
 * from the law of cooling C' dy/dt = -K' y^n, solved by hand for one or two stretches of water that
 * came in steadily.
 */
class WaterParcelsTest {

  private static final double LENGTH = 10;
  private static final double CAPACITY = 2000;
  private static final double COEFFICIENT = 8;
  private static final double ROOM = 20;
  private static final double INLET = 65;

  /** Change up to which two parcels become one, and ratio of excesses that none exceeds. */
  private static final double TOLERANCE = 0.004;

  private static final double WIDEST = 1.5;

  private final double[] middle = new double[1];

  /** Excess after a time. */
  private static double cooled(double excess, double n, double coefficient, double time) {
    double reach = coefficient / LENGTH / CAPACITY * time;
    return n == 1
        ? excess * Math.exp(-reach)
        : Math.pow(Math.pow(excess, 1 - n) + (n - 1) * reach, 1 / (1 - n));
  }

  /** Time in which one excess falls to another. */
  private static double timeBetween(double high, double low, double n, double coefficient) {
    double reach =
        n == 1 ? Math.log(high / low) : (Math.pow(low, 1 - n) - Math.pow(high, 1 - n)) / (n - 1);
    return reach * CAPACITY * LENGTH / coefficient;
  }

  private static void step(PlugFlow path, double time, double moved, double inlet, double room) {
    path.attempt(time, moved * CAPACITY / time, inlet, room);
    assertThat(path.agreed()).isTrue();
    path.accept();
  }

  /** A path that one long step filled, so slowly that its water cooled by a ratio on the way. */
  private static PlugFlow filled(double n, double coefficient, double ratio, double parcels) {
    PlugFlow path = new PlugFlow(LENGTH, CAPACITY, coefficient, n, ROOM, parcels);
    double excess = INLET - ROOM;
    double through = timeBetween(excess, excess / ratio, n, coefficient);
    step(path, 1.01 * through, 1.01 * LENGTH, INLET, ROOM);
    return path;
  }

  /** Where a rising or falling function passes a value. */
  private static double solve(DoubleUnaryOperator f, double value, double from, double to) {
    double a = from;
    double b = to;
    boolean rises = f.applyAsDouble(to) > f.applyAsDouble(from);
    for (int i = 0; i < 100; i++) {
      double c = (a + b) / 2;
      if (f.applyAsDouble(c) < value == rises) {
        a = c;
      } else {
        b = c;
      }
    }
    return (a + b) / 2;
  }

  /**
   * Two stretches behind one another: the second came in within {@code time} and fills {@code
   * share}; what is left of the first had taken {@code firstTime} for the whole path.
   */
  private record Two(double n, double share, double time, double firstTime) {

    double joint() {
      return cooled(INLET - ROOM, n, COEFFICIENT, time);
    }

    double end() {
      return cooled(INLET - ROOM, n, COEFFICIENT, time + (1 - share) * firstTime);
    }

    /** How far a line in w = y^(1-n), or ln y, between the ends passes the joint [K]. */
    double bentWarm() {
      double start = INLET - ROOM;
      if (n == 1) {
        return start * Math.pow(end() / start, share) - joint();
      }
      double w = (1 - share) * Math.pow(start, 1 - n) + share * Math.pow(end(), 1 - n);
      return Math.pow(w, 1 / (1 - n)) - joint();
    }

    /** How far a straight line does [K]. */
    double bentCold() {
      return (1 - share) * (INLET - ROOM) + share * end() - joint();
    }
  }

  /** What came in so slowly that it cooled to an eighth: parts, each of them exact. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 1.33, 1.8})
  void slowWaterIsCutWhereItHasCooledByHalf(double n) {
    double ratio = Math.pow(WIDEST, 5.5);
    PlugFlow path = new PlugFlow(LENGTH, CAPACITY, COEFFICIENT, n, ROOM);
    double excess = INLET - ROOM;
    double last = excess / ratio;
    double through = timeBetween(excess, last, n, COEFFICIENT);
    double time = 1.25 * through;
    double flow = CAPACITY * LENGTH / through;
    path.attempt(time, flow, INLET, ROOM);
    assertThat(path.meanReturn()).isCloseTo(ROOM + last / 5, within(1e-6));
    assertThat(path.emissionNow(ROOM)).isCloseTo(flow * (excess - last), within(1e-5));
    path.accept();
    assertThat(path.parcels()).isEqualTo(6);
    double[] shares = new double[101];
    Arrays.setAll(shares, i -> i / 100.0);
    double[] profile = new double[shares.length];
    path.profile(shares, profile);
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      double y = cooled(excess, n, COEFFICIENT, shares[i] * through);
      assertThat(profile[i]).as("%s of the way", shares[i]).isCloseTo(ROOM + y, within(1e-6));
      sum += (i == 0 || i == 100 ? 1 : i % 2 == 0 ? 2 : 4) * y / 300;
    }
    // Simpson's rule, whose error over hundredths of the way is some millionths of the excess.
    double stored = CAPACITY * LENGTH * (ROOM + sum);
    assertThat(path.stored()).isCloseTo(stored, within(1e-5 * CAPACITY * LENGTH));
    assertThat(path.emitted())
        .isCloseTo(
            flow * time * (INLET - ROOM - last / 5) + CAPACITY * LENGTH * ROOM - stored,
            within(1e-5 * CAPACITY * LENGTH));
  }

  /**
   * Seen from a room one kelvin cooler, a stretch keeps its ends and bends in between: by h2/8
   * times n at the most, h the logarithm of the ratio of its ends, because y''/y is n (y'/y)2.
   * Uncut it would be kelvins.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1, 1.33, 1.8})
  void aRoomThatCoolsBendsSlowWaterLittle(double n) {
    PlugFlow path = filled(n, COEFFICIENT, Math.pow(WIDEST, 5.5), 1);
    double excess = INLET - ROOM;
    double through = timeBetween(excess, excess / Math.pow(WIDEST, 5.5), n, COEFFICIENT);
    step(path, 30, 0, Double.NaN, ROOM - 1);
    double bound = n * Math.pow(Math.log(WIDEST), 2) / 8;
    for (double share = 0; share <= 1; share += 0.01) {
      double seen = 1 + cooled(excess, n, COEFFICIENT, share * through);
      path.profile(new double[] {share}, middle);
      assertThat(middle[0])
          .as("%s of the way", share)
          .isCloseTo(ROOM - 1 + cooled(seen, n, COEFFICIENT, 30), within(bound));
    }
  }

  /** In steady flow nothing bends where parcels meet: only the ratio of the ends keeps them two. */
  @ParameterizedTest
  @CsvSource({"1, 1.45, 1", "1, 1.55, 2", "1.3, 1.45, 1", "1.3, 1.55, 2", "1.8, 1.49, 1"})
  void parcelsBecomeOneUpToARatioOfTheirEnds(double n, double ratio, int expected) {
    PlugFlow path = filled(n, COEFFICIENT, ratio, 1);
    double through = timeBetween(INLET - ROOM, (INLET - ROOM) / ratio, n, COEFFICIENT);
    for (int i = 0; i < 5; i++) {
      step(path, through / 2, LENGTH / 2, INLET, ROOM);
      assertThat(path.parcels()).isEqualTo(expected);
    }
  }

  /** The flow changes: two stretches meet at one temperature, and the profile has a kink there. */
  @ParameterizedTest
  @CsvSource({"1, 1", "1.33, 1", "1.8, 1", "1, 0.25", "1.33, 0.25"})
  void parcelsBecomeOneWhereTheLineBendsLittle(double n, double parcels) {
    Random random = new Random(1);
    double firstTime = timeBetween(INLET - ROOM, (INLET - ROOM) / 1.2, n, COEFFICIENT);
    for (int i = 0; i < 200; i++) {
      double share = 0.2 + 0.6 * random.nextDouble();
      double bent = TOLERANCE * parcels * Math.pow(4, 2 * random.nextDouble() - 1);
      if (Math.abs(bent / (TOLERANCE * parcels) - 1) < 0.03) {
        continue;
      }
      double sign = random.nextBoolean() ? 1 : -1;
      double time =
          solve(
              t -> new Two(n, share, t, firstTime).bentWarm(),
              sign * bent,
              0.5 * share * firstTime,
              1.5 * share * firstTime);
      PlugFlow path = filled(n, COEFFICIENT, 1.2, parcels);
      step(path, time, share * LENGTH, INLET, ROOM);
      assertThat(path.parcels())
          .as("bent by %s mK at %s", 1000 * sign * bent, share)
          .isEqualTo(bent < TOLERANCE * parcels ? 1 : 2);
    }
  }

  /**
   * The sun makes the room warmer than the water: now the profile is straight in each parcel, and
   * they become one where a straight line passes the joint. What is pushed out is a trapezium.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1, 1.33, 1.8})
  void waterColderThanTheRoomIsStraight(double n) {
    Random random = new Random(2);
    double hot = 100;
    double firstTime = timeBetween(INLET - ROOM, (INLET - ROOM) / 1.3, n, COEFFICIENT);
    for (int i = 0; i < 200; i++) {
      double share = 0.25 + 0.4 * random.nextDouble();
      double bent = TOLERANCE * Math.pow(4, 2 * random.nextDouble() - 1);
      if (Math.abs(bent / TOLERANCE - 1) < 0.03) {
        continue;
      }
      double sign = random.nextBoolean() ? 1 : -1;
      double time =
          solve(
              t -> new Two(n, share, t, firstTime).bentCold(),
              sign * bent,
              0.3 * share * firstTime,
              3 * share * firstTime);
      Two two = new Two(n, share, time, firstTime);
      PlugFlow path = filled(n, COEFFICIENT, 1.3, 1);
      step(path, time, share * LENGTH, INLET, ROOM);
      assertThat(path.parcels()).as("from a cool room").isEqualTo(2);
      step(path, 20, 0, Double.NaN, hot);
      assertThat(path.parcels())
          .as("bent by %s mK at %s", 1000 * sign * bent, share)
          .isEqualTo(bent < TOLERANCE ? 1 : 2);
      assertThat(path.emissionNow(hot)).isZero();
      double half = (1 + share) / 2;
      assertThat(at(path, half)).isCloseTo(ROOM + (two.joint() + two.end()) / 2, within(TOLERANCE));
      // A quarter of the lower stretch goes out.
      double moved = (1 - share) / 4 * LENGTH;
      double last = two.end() + (two.joint() - two.end()) / 4;
      path.attempt(20, moved * CAPACITY / 20, 30, hot);
      assertThat(path.meanReturn()).isCloseTo(ROOM + (two.end() + last) / 2, within(TOLERANCE));
      path.accept();
      assertThat(at(path, 1)).isCloseTo(ROOM + last, within(TOLERANCE));
      assertThat(at(path, half))
          .isCloseTo(ROOM + (3 * two.joint() + two.end()) / 4, within(TOLERANCE));
    }
  }

  private double at(PlugFlow path, double share) {
    path.profile(new double[] {share}, middle);
    return middle[0];
  }

  /** Steps of inlet temperature, hardly any cooling: what each joint left is remembered. */
  @ParameterizedTest
  @CsvSource({"65, 20", "30, 50"})
  void jointsAddUp(double inlet, double room) {
    PlugFlow path = new PlugFlow(LENGTH, CAPACITY, 1e-8, 1.3, inlet);
    step(path, 60, 0.1 * LENGTH, inlet + 0.0045, room);
    assertThat(path.parcels()).as("4.5 mK at once").isEqualTo(2);
    path = new PlugFlow(LENGTH, CAPACITY, 1e-8, 1.3, inlet);
    for (int i = 1; i <= 4; i++) {
      step(path, 60, 0.1 * LENGTH, inlet - 0.0012 * i, room);
      assertThat(path.parcels()).as("1.2 mK, %d times", i).isEqualTo(i < 4 ? 1 : 2);
    }
  }

  /**
   * Two slivers in a row are mixed, hot or colder than the room; two of which one is longer not.
   */
  @ParameterizedTest
  @CsvSource({
    "0.7, 0.9, 1, 2",
    "0.7, 1.1, 1, 3",
    "1.1, 0.7, 1, 3",
    "0.7, 0.9, 0.25, 2",
    "0.7, 1.1, 0.25, 3"
  })
  void sliversAreMixed(double first, double second, double parcels, int expected) {
    double shortest = LENGTH / 200 * parcels;
    for (double inlet : new double[] {60, 10}) {
      PlugFlow path = new PlugFlow(LENGTH, CAPACITY, 1e-8, 1.3, 35, parcels);
      step(path, 10, first * shortest, inlet, ROOM);
      step(path, 10, second * shortest, 50, ROOM);
      assertThat(path.parcels()).isEqualTo(expected);
      if (expected == 2) {
        double mixed = (first * inlet + second * 50) / (first + second);
        assertThat(at(path, 0)).isCloseTo(mixed, within(1e-5));
        assertThat(at(path, (first + second) * 0.99 * shortest / LENGTH))
            .isCloseTo(mixed, within(1e-5));
      } else {
        assertThat(at(path, 0.5 * second * shortest / LENGTH)).isCloseTo(50, within(1e-5));
      }
    }
  }

  /** Four hundred stretches, each at its own temperature. */
  @Test
  void finerParcelsAreMore() {
    PlugFlow path = new PlugFlow(LENGTH, CAPACITY, 1e-8, 1.3, 35, 0.25);
    for (int i = 0; i < 400; i++) {
      step(path, 10, LENGTH / 400, i % 2 == 0 ? 60 : 40, ROOM);
    }
    assertThat(path.parcels()).isBetween(399, 401);
    for (int i = 0; i < 400; i++) {
      assertThat(at(path, (i + 0.5) / 400)).isCloseTo(i % 2 == 0 ? 40 : 60, within(1e-5));
    }
  }
}
