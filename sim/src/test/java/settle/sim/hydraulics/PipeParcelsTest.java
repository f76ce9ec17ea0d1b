package settle.sim.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The parcels of water in a pipe: which of them become one, and what leaves of one that is warmer
 * at one end. Each is a straight piece of profile with the mean of its water, so that what is
 * expected follows by hand from the law of cooling, e^(-x), and from straight lines.
 */
class PipeParcelsTest {

  private static final double LENGTH = 8;
  private static final double CAPACITY = 500;
  private static final double AROUND = 15;

  /** Change up to which two parcels become one [K]. */
  private static final double TOLERANCE = 0.005;

  /** So short that nothing cools. */
  private static final double AT_ONCE = 1e-7;

  private static PipeWater pipe(double loss, double start, double parcels) {
    return new PipeWater(
        new Pipe("pipe", 0.0136, 0, LENGTH, 0, CAPACITY, loss), LENGTH, start, parcels);
  }

  private static void step(PipeWater water, double h, double share, double inlet) {
    water.attempt(h, share * LENGTH * CAPACITY / h, inlet, AROUND);
    water.accept();
  }

  /** Mean temperature of what a share of the pipe's water pushes out at once [°C]. */
  private static double pushedOut(PipeWater water, double share) {
    step(water, AT_ONCE, share, 15);
    return water.outlet();
  }

  private static double integral(DoubleUnaryOperator f) {
    double sum = 0;
    for (int i = 0; i <= 200; i++) {
      sum += (i == 0 || i == 200 ? 1 : i % 2 == 0 ? 2 : 4) * f.applyAsDouble(i / 200.0);
    }
    return sum / 600;
  }

  /** A straight piece of profile, from its older to its newer end [K above what is around]. */
  private record Piece(double size, double older, double newer) {

    /** What entered at an excess during a step, the first of it for as long as the step took. */
    static Piece entered(double size, double excess, double x) {
      double mean = excess * integral(s -> Math.exp(-x * s));
      double rise = excess * (1 - Math.exp(-x));
      return new Piece(size, mean - rise / 2, mean + rise / 2);
    }

    Piece cooled(double x) {
      return new Piece(size, older * Math.exp(-x), newer * Math.exp(-x));
    }

    double mean() {
      return (older + newer) / 2;
    }

    /** What is left once a share has gone at its older end. */
    Piece cut(double share) {
      return new Piece(size * (1 - share), older + share * (newer - older), newer);
    }

    /** How far one line through both passes the two ends that meet. */
    double bends(Piece next) {
      double joint = older + (next.newer - older) * size / (size + next.size);
      return Math.max(Math.abs(newer - joint), Math.abs(next.older - joint));
    }

    /** Both mixed: the line through both, its ends drawn in as far as the mean asks. */
    Piece mixed(Piece next) {
      double share = next.size / (size + next.size);
      double mean = mean() + share * (next.mean() - mean());
      double lowest = Math.min(Math.min(older, newer), Math.min(next.older, next.newer));
      double highest = Math.max(Math.max(older, newer), Math.max(next.older, next.newer));
      double half = Math.min(mean - lowest, highest - mean);
      half = Math.min(half, Math.abs(next.newer - older) / 2);
      double up = Math.signum(next.newer - older) * half;
      return new Piece(size + next.size, mean - up, mean + up);
    }

    /** Mean between two places, as shares from the older end. */
    double between(double from, double to) {
      return older + (newer - older) * (from + to) / 2;
    }
  }

  /** Nothing lost: two stretches at temperatures a few thousandths of a kelvin apart. */
  @ParameterizedTest
  @CsvSource({"0, 1, 0", "0, 0.25, 0", "0.5, 1, 1100", "0.5, 0.25, 3000"})
  void alikeTemperaturesBecomeOne(double loss, double parcels, double standing) {
    Random random = new Random(1);
    for (int i = 0; i < 200; i++) {
      double share = 0.1 + 0.8 * random.nextDouble();
      double bend = TOLERANCE * parcels * Math.pow(4, 2 * random.nextDouble() - 1);
      double apart = bend / Math.max(share, 1 - share) * (random.nextBoolean() ? 1 : -1);
      if (Math.abs(bend / (TOLERANCE * parcels) - 1) < 0.02) {
        continue;
      }
      PipeWater water = pipe(loss, 60, parcels);
      if (standing > 0) {
        water.attempt(standing, 0, Double.NaN, AROUND);
        water.accept();
      }
      double start = AROUND + 45 * Math.exp(-loss / CAPACITY * standing);
      step(water, AT_ONCE, share, start + apart);
      boolean one = bend < TOLERANCE * parcels;
      assertThat(water.parcels())
          .as("%s mK apart, %s of the pipe", 1000 * apart, share)
          .isEqualTo(one ? 1 : 2);
      Piece old = new Piece(1 - share, start, start);
      Piece mixed = old.mixed(new Piece(share, start + apart, start + apart));
      double first = 0.7 * (1 - share);
      assertThat(pushedOut(water, first))
          .isCloseTo(one ? mixed.between(0, first) : start, within(1e-7));
    }
  }

  /** Pieces that rise, since their older water has had longer to cool. */
  @ParameterizedTest
  @ValueSource(doubles = {60, 5})
  void piecesInLineBecomeOne(double inlet) {
    Random random = new Random(2);
    double loss = 0.5;
    int ones = 0;
    for (int i = 0; i < 400; i++) {
      double through = 10 + 30 * random.nextDouble();
      double share = 0.2 + 0.6 * random.nextDouble();
      double second = share * through * (0.99 + 0.02 * random.nextDouble());
      double other = inlet + 0.02 * (random.nextDouble() - 0.5);
      double rate = loss / CAPACITY;
      Piece old = Piece.entered(1, inlet - AROUND, rate * through).cooled(rate * second).cut(share);
      Piece next = Piece.entered(share, other - AROUND, rate * second);
      double bend = old.bends(next);
      if (Math.abs(bend / TOLERANCE - 1) < 0.02) {
        continue;
      }
      boolean one = bend < TOLERANCE;
      ones += one ? 1 : 0;
      PipeWater water = pipe(loss, 40, 1);
      step(water, 1.01 * through, 1.01, inlet);
      step(water, second, share, other);
      assertThat(water.parcels()).as("bend of %s mK", 1000 * bend).isEqualTo(one ? 1 : 2);
      double expected =
          one ? old.mixed(next).between(0, 0.1) : old.cut(0).between(0, 0.1 / old.size());
      assertThat(pushedOut(water, 0.1)).isCloseTo(AROUND + expected, within(1e-6));
    }
    assertThat(ones).isBetween(40, 360);
  }

  /** Two short ones are mixed whatever their temperatures; two of which one is longer are not. */
  @ParameterizedTest
  @CsvSource({
    "0.9, 0.9, 1, 2",
    "0.9, 0.4, 1, 2",
    "0.2, 0.9, 1, 2",
    "0.9, 1.1, 1, 3",
    "1.1, 0.9, 1, 3",
    "0.9, 0.9, 0.25, 2",
    "0.9, 1.1, 0.25, 3"
  })
  void shortPiecesAreMixed(double first, double second, double parcels, int expected) {
    double shortest = parcels / 50;
    double loss = 2;
    double[][] inlets = {{60, 40}, {40, 60}, {60, 60}, {5, 5}, {5, 60}, {60, 5}};
    for (double[] inlet : inlets) {
      // Alike and next to each other they are one anyway.
      if (expected == 3 && inlet[0] == inlet[1]) {
        continue;
      }
      for (double h : new double[] {AT_ONCE, 100}) {
        PipeWater water = pipe(loss, 30, parcels);
        step(water, h, first * shortest, inlet[0]);
        step(water, h, second * shortest, inlet[1]);
        assertThat(water.parcels()).isEqualTo(expected);
        double x = loss / CAPACITY * h;
        Piece old = Piece.entered(first * shortest, inlet[0] - AROUND, x).cooled(x);
        Piece next = Piece.entered(second * shortest, inlet[1] - AROUND, x);
        pushedOut(water, 1 - (first + second) * shortest);
        double whole = expected == 2 ? first + second : first;
        Piece out = expected == 2 ? old.mixed(next) : old;
        for (int part = 0; part < 4; part++) {
          assertThat(pushedOut(water, whole * shortest / 4))
              .as("quarter %d of %s then %s", part, inlet[0], inlet[1])
              .isCloseTo(AROUND + out.between(part / 4.0, (part + 1) / 4.0), within(1e-6));
        }
      }
    }
  }

  /**
   * A piece with a steep rise goes out while it cools: quickly, where the closed forms are taken by
   * their series, or slowly.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1e-5, 3e-4, 9.5e-4, 1.05e-3, 0.01, 0.3, 2})
  void aSteepPieceCoolsOnItsWayOut(double x) {
    double loss = 0.5;
    double rate = loss / CAPACITY;
    PipeWater water = pipe(loss, 40, 1);
    step(water, 1.01 / rate, 1.01, 75);
    Piece piece = Piece.entered(1, 60, 1);
    double share = 0.6;
    water.attempt(x / rate, share * LENGTH * CAPACITY * rate / x, 50, AROUND);
    double left =
        integral(
            s -> (piece.older() + (piece.newer() - piece.older()) * share * s) * Math.exp(-x * s));
    // Rounding of 1 - e^(-x), divided by x2 where x is a thousandth, is a hundred-millionth.
    assertThat(water.outlet()).isCloseTo(AROUND + left, within(3e-8));
    water.accept();
    double entered = share * Piece.entered(share, 35, x).mean();
    double stayed = Math.exp(-x) * piece.cut(share).mean() * (1 - share);
    assertThat(water.stored())
        .isCloseTo(CAPACITY * LENGTH * (AROUND + entered + stayed), within(1e-4));
    assertThat(water.loss())
        .isCloseTo(
            CAPACITY * LENGTH * (piece.mean() + share * (35 - left) - entered - stayed),
            within(3e-4));
  }

  /** Entering for many time constants: its older end is as cold as what is around, not colder. */
  @Test
  void noPieceIsColderThanWhatIsAround() {
    double loss = 0.5;
    PipeWater water = pipe(loss, 40, 1);
    step(water, 6 * CAPACITY / loss, 1, 75);
    double mean = 60 * (1 - Math.exp(-6)) / 6;
    for (int part = 0; part < 10; part++) {
      assertThat(pushedOut(water, 0.1))
          .isCloseTo(AROUND + 2 * mean * (part + 0.5) / 10, within(1e-6));
    }
  }

  /** More than a hundred time constants in each step: no scale is left to divide by. */
  @Test
  void waterThatStoodForWeeksIsFollowedAgain() {
    PipeWater water = pipe(0.5, 60, 1);
    for (int i = 0; i < 10; i++) {
      water.attempt(100_000, 0, Double.NaN, AROUND + i);
      assertThat(water.loss()).isFinite();
      assertThat(water.outlet()).isCloseTo(AROUND + i, within(1e-9));
      water.accept();
    }
    step(water, AT_ONCE, 0.5, 70);
    assertThat(pushedOut(water, 0.5)).isCloseTo(AROUND + 9, within(1e-6));
    assertThat(pushedOut(water, 0.5)).isCloseTo(70, within(1e-6));
  }

  /** Nearly two hundred pieces, which come out as they went in. */
  @Test
  void finerPiecesAreMore() {
    PipeWater water = pipe(0, 30, 0.25);
    for (int round = 0; round < 5; round++) {
      for (int i = 0; i < 190; i++) {
        water.attempt(1, LENGTH * CAPACITY / 190, 20 + i % 7 * 5, AROUND);
        if (round > 0) {
          assertThat(water.outlet()).isCloseTo(20 + i % 7 * 5, within(1e-6));
        }
        water.accept();
      }
    }
    assertThat(water.parcels()).isBetween(190, 191);
  }
}
