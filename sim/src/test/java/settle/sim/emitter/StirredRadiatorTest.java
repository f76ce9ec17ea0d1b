package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.special.Gamma;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The chain of mixed cells against the equations of its cells, C dT/dt = m c (T_before - T) - K
 * max(T - T_ref, 0)^n, integrated by the classical Runge-Kutta method in steps of half a second.
 */
class StirredRadiatorTest {

  private static final int CELLS = 5;
  private static final double CAPACITY = 60_000;
  private static final double RATED = 1200;
  private static final double[] MIDDLES = {0.1, 0.3, 0.5, 0.7, 0.9};

  /** Cells integrated finely, with what entered, left and was emitted over a step. */
  private static final class Cells {

    private final double coefficient;
    private final double exponent;
    final double[] temperature = new double[CELLS];
    double emitted;
    double returned;

    Cells(double coefficient, double exponent, double start) {
      this.coefficient = coefficient;
      this.exponent = exponent;
      Arrays.fill(temperature, start);
    }

    private double emission(double temperature, double reference) {
      return coefficient * Math.pow(Math.max(temperature - reference, 0), exponent);
    }

    double emission(double reference) {
      return Arrays.stream(temperature).map(t -> emission(t, reference)).sum();
    }

    private double[] slope(double[] t, double flow, double inlet, double reference) {
      double[] slope = new double[CELLS];
      for (int i = 0; i < CELLS; i++) {
        double before = i == 0 ? inlet : t[i - 1];
        slope[i] = (flow * (before - t[i]) - emission(t[i], reference)) / (CAPACITY / CELLS);
      }
      return slope;
    }

    private static double[] ahead(double[] t, double[] slope, double h) {
      double[] ahead = new double[CELLS];
      for (int i = 0; i < CELLS; i++) {
        ahead[i] = t[i] + h * slope[i];
      }
      return ahead;
    }

    void step(double length, double flow, double inlet, double reference) {
      long parts = (long) Math.ceil(length / 0.5);
      double h = length / parts;
      double before = Arrays.stream(temperature).sum();
      returned = 0;
      for (long k = 0; k < parts; k++) {
        double[] a = slope(temperature, flow, inlet, reference);
        double[] b = slope(ahead(temperature, a, h / 2), flow, inlet, reference);
        double[] c = slope(ahead(temperature, b, h / 2), flow, inlet, reference);
        double[] d = slope(ahead(temperature, c, h), flow, inlet, reference);
        double was = temperature[CELLS - 1];
        for (int i = 0; i < CELLS; i++) {
          temperature[i] += h / 6 * (a[i] + 2 * b[i] + 2 * c[i] + d[i]);
        }
        returned += (was + temperature[CELLS - 1]) / 2 / parts;
      }
      double entered = flow * length * (inlet - returned);
      emitted = entered - CAPACITY / CELLS * (Arrays.stream(temperature).sum() - before);
    }
  }

  private static MixedChain chain(double exponent, double start) {
    return new MixedChain(CELLS, CAPACITY, coefficient(exponent), exponent, start);
  }

  private static double coefficient(double exponent) {
    return EmissionLaw.chainCoefficient(RATED, exponent, CELLS);
  }

  /**
   * Flows from none to three times the rated one, an inlet that comes and goes, a room that warms.
   * Over a step of up to 8 s the emission is straight about its mean and the inflow a straight
   * line: less than 5 mK off, and the heat less than the radiator holds per 5 mK.
   */
  @ParameterizedTest
  @CsvSource({"1, 1", "1.3, 2", "1.3, 3", "1.6, 4"})
  void followsTheEquationsOfItsCells(double exponent, long seed) {
    MixedChain chain = chain(exponent, 40);
    Cells cells = new Cells(coefficient(exponent), exponent, 40);
    Random random = new Random(seed);
    double[] profile = new double[CELLS];
    double flow = 0;
    double inlet = 40;
    double emitted = 0;
    double expected = 0;
    for (int k = 0; k < 300; k++) {
      if (k % 30 == 0) {
        flow = random.nextInt(4) == 0 ? 0 : RATED / 10 * 3 * random.nextDouble();
        inlet = 30 + 45 * random.nextDouble();
      }
      double step = 1 + 7 * random.nextDouble();
      double reference = 18 + k * 0.01;
      chain.attempt(step, flow, inlet, reference);
      cells.step(step, flow, inlet, reference);
      assertThat(chain.agreed()).isTrue();
      emitted += chain.emitted();
      expected += cells.emitted;
      if (k % 30 > 2) {
        double return1 = flow > 0 ? cells.returned : cells.temperature[CELLS - 1];
        assertThat(chain.meanReturn()).as("step %d", k).isCloseTo(return1, within(0.005));
        assertThat(chain.emissionNow(reference))
            .as("step %d", k)
            .isCloseTo(cells.emission(reference), within(2e-4 * RATED));
      }
      chain.accept();
      chain.profile(MIDDLES, profile);
      for (int i = 0; i < CELLS; i++) {
        assertThat(profile[i])
            .as("step %d, cell %d", k, i)
            .isCloseTo(cells.temperature[i], within(0.005));
      }
      assertThat(chain.stored())
          .isCloseTo(
              CAPACITY * Arrays.stream(cells.temperature).average().orElseThrow(),
              within(0.003 * CAPACITY));
      assertThat(emitted).as("step %d", k).isCloseTo(expected, within(0.005 * CAPACITY));
    }
  }

  /** Each cell cools by the law of standing water, whatever the step. */
  @ParameterizedTest
  @CsvSource({"1, 600", "1.3, 30", "1.3, 120", "1.5, 60"})
  void coolsInPlaceWithoutFlow(double exponent, double step) {
    MixedChain chain = chain(exponent, 70);
    for (int k = 0; k < 7200 / step; k++) {
      chain.attempt(step, 0, Double.NaN, 20);
      chain.accept();
    }
    double excess =
        EmissionLaw.excessAfter(50, exponent, coefficient(exponent), CAPACITY / CELLS, 7200);
    assertThat(chain.stored() / CAPACITY).isCloseTo(20 + excess, within(1e-3 * (1 + step / 30)));
    assertThat(chain.meanReturn()).isCloseTo(20 + excess, within(1e-3 * (1 + step / 30)));
  }

  /** What is colder than the room gives nothing and takes nothing. */
  @Test
  void emitsNothingBelowTheRoom() {
    MixedChain chain = chain(1.3, 15);
    chain.attempt(600, 0, Double.NaN, 20);
    assertThat(chain.emitted()).isZero();
    assertThat(chain.emissionNow(20)).isZero();
    assertThat(chain.meanReturn()).isEqualTo(15);
    chain.accept();
    double time = 0;
    for (int k = 0; k < 300; k++) {
      chain.attempt(2, 50, 18, 20);
      assertThat(chain.emissionNow(20)).isZero();
      assertThat(chain.emitted()).isCloseTo(0, within(1e-6));
      chain.accept();
      time += 2;
    }
    // Cell k of a chain without loss answers a step as the k-th of as many waiting times.
    double share = 0;
    for (int k = 1; k <= CELLS; k++) {
      share += Gamma.regularizedGammaP(k, time * 50 * CELLS / CAPACITY) / CELLS;
    }
    assertThat(chain.stored() / CAPACITY).isCloseTo(15 + 3 * share, within(1e-3));
  }

  /** A trial leaves nothing behind: what counts is the step that is accepted. */
  @Test
  void aTrialDoesNotMoveTheState() {
    MixedChain chain = chain(1.3, 30);
    double before = chain.stored();
    chain.attempt(100, 100, 75, 20);
    assertThat(chain.stored()).isEqualTo(before);
    chain.attempt(100, 0, 75, 20);
    chain.accept();
    assertThat(chain.stored()).isCloseTo(before - chain.emitted(), within(1e-6));
  }

  /** The outlet, the very end of the way, is the last cell; the first cell is the hottest. */
  @Test
  void theProfileRunsFromInletToOutlet() {
    MixedChain chain = chain(1.3, 20);
    for (int k = 0; k < 500; k++) {
      chain.attempt(60, RATED / 10, 75, 20);
      chain.accept();
    }
    double[] ends = new double[3];
    chain.profile(new double[] {0, 0.999, 1}, ends);
    assertThat(ends[1]).isEqualTo(ends[2]);
    // Rated at 75/65/20: the last cell is at the return, the first a good fifth of the way down.
    assertThat(ends[2]).isCloseTo(65, within(0.01));
    assertThat(ends[0]).isBetween(72.0, 73.0);
  }
}
