package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The path of moving water against the method of characteristics: each particle is followed from
 * the inlet on, cooling by C' dy/dt = -K' y^n wherever it is. What left, what is held and what is
 * emitted are integrals over particles, by Gauss-Legendre quadrature between the fronts.
 */
class TravellingWaterTest {

  private static final double LENGTH = 10;
  private static final double CAPACITY = 2000;
  private static final double START = 35;

  /** Nodes and weights of the quadrature of three points on 0..1 (textbooks). */
  private static final double[] NODES = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};

  private static final double[] WEIGHTS = {5.0 / 18, 8.0 / 18, 5.0 / 18};

  /** Water sent along, told by how much had entered before a particle did [m]. */
  private static final class Particles {

    private final double exponent;
    private final double emission;
    private final List<Double> times = new ArrayList<>(List.of(0.0));
    private final List<Double> entered = new ArrayList<>(List.of(0.0));
    private final List<Double> inlets = new ArrayList<>();
    private final List<Double> references = new ArrayList<>();

    Particles(double exponent, double coefficient) {
      this.exponent = exponent;
      emission = coefficient / LENGTH;
    }

    void step(double length, double capacityFlow, double inlet, double reference) {
      times.add(now() + length);
      entered.add(front() + capacityFlow / CAPACITY * length);
      inlets.add(inlet);
      references.add(reference);
    }

    double now() {
      return times.get(times.size() - 1);
    }

    double front() {
      return entered.get(entered.size() - 1);
    }

    private double reference() {
      return references.get(references.size() - 1);
    }

    /** Time in the last step at which so much has entered [s]. */
    double timeOf(double place) {
      int last = inlets.size() - 1;
      double share = (place - entered.get(last)) / (entered.get(last + 1) - entered.get(last));
      return times.get(last) + share * (now() - times.get(last));
    }

    /** Temperature of a particle at a time [°C]. */
    double temperature(double particle, double time) {
      int step = 0;
      double since = 0;
      double temperature = START;
      if (particle >= 0) {
        while (particle > entered.get(step + 1)) {
          step++;
        }
        double share = (particle - entered.get(step)) / (entered.get(step + 1) - entered.get(step));
        since = times.get(step) + share * (times.get(step + 1) - times.get(step));
        temperature = inlets.get(step);
      }
      for (; step < inlets.size() && since < time; step++) {
        double until = Math.min(time, times.get(step + 1));
        temperature = cooled(temperature, references.get(step), Math.max(until - since, 0));
        since = Math.max(since, until);
      }
      return temperature;
    }

    private double cooled(double temperature, double reference, double duration) {
      double y = temperature - reference;
      if (y <= 0) {
        return temperature;
      }
      double rate = emission / CAPACITY * duration;
      return reference
          + (exponent == 1
              ? y * Math.exp(-rate)
              : Math.pow(Math.pow(y, 1 - exponent) + (exponent - 1) * rate, 1 / (1 - exponent)));
    }

    private interface Quantity {
      double of(double particle);
    }

    /** Integral over particles [.. m]. */
    private double integral(double from, double to, Quantity quantity) {
      double sum = 0;
      double left = from;
      for (int i = 0; i <= entered.size(); i++) {
        double right = i < entered.size() ? Math.min(entered.get(i), to) : to;
        if (right <= left) {
          continue;
        }
        for (int k = 0; k < 3; k++) {
          sum += WEIGHTS[k] * (right - left) * quantity.of(left + NODES[k] * (right - left));
        }
        left = right;
      }
      return sum;
    }

    double stored() {
      return CAPACITY * integral(front() - LENGTH, front(), p -> temperature(p, now()));
    }

    double emission() {
      return emission
          * integral(
              front() - LENGTH,
              front(),
              p -> Math.pow(Math.max(temperature(p, now()) - reference(), 0), exponent));
    }

    /** Mean temperature of what left in the last step [°C]. */
    double returned() {
      double before = entered.get(entered.size() - 2);
      if (front() == before) {
        return temperature(front() - LENGTH, now());
      }
      return integral(before - LENGTH, front() - LENGTH, p -> temperature(p, timeOf(p + LENGTH)))
          / (front() - before);
    }
  }

  /**
   * Steps from seconds to minutes, flows from none to more than the path holds in a step, water
   * hotter and colder than the room. Neighbours are joined within 4 mK, a few times over.
   */
  @ParameterizedTest
  @CsvSource({"1, 1", "1.2, 2", "1.33, 3", "1.33, 4", "1.8, 5"})
  void everyParticleCoolsAsIfAlone(double exponent, long seed) {
    double coefficient = EmissionLaw.distributedCoefficient(1000, exponent);
    PlugFlow path = new PlugFlow(LENGTH, CAPACITY, coefficient, exponent, START);
    Particles particles = new Particles(exponent, coefficient);
    Random random = new Random(seed);
    double[] shares = {0.013, 0.1, 0.25, 0.4, 0.55, 0.7, 0.85, 0.97};
    double[] profile = new double[shares.length];
    double before = CAPACITY * LENGTH * START;
    double emitted = 0;
    double left = 0;
    for (int k = 0; k < 60; k++) {
      double step = 5 + 200 * random.nextDouble();
      double share = random.nextInt(4) == 0 ? 0 : 0.01 + 0.3 * random.nextDouble();
      share = random.nextInt(10) == 0 ? 1.5 : share;
      double capacityFlow = share * LENGTH * CAPACITY / step;
      double inlet = random.nextInt(5) == 0 ? 12 : 22 + 50 * random.nextDouble();
      path.attempt(step, capacityFlow, inlet, 20);
      particles.step(step, capacityFlow, inlet, 20);
      assertThat(path.meanReturn()).as("step %d", k).isCloseTo(particles.returned(), within(0.004));
      assertThat(path.emissionNow(20))
          .as("step %d", k)
          .isCloseTo(particles.emission(), within(0.3));
      path.accept();
      assertThat(path.stored())
          .as("step %d", k)
          .isCloseTo(particles.stored(), within(0.002 * CAPACITY * LENGTH));
      emitted += path.emitted();
      left += share * LENGTH * CAPACITY * (inlet - particles.returned());
      assertThat(emitted)
          .as("step %d", k)
          .isCloseTo(left + before - particles.stored(), within(0.002 * CAPACITY * LENGTH));
      path.profile(shares, profile);
      for (int i = 0; i < shares.length; i++) {
        double particle = particles.front() - shares[i] * LENGTH;
        assertThat(profile[i])
            .as("step %d, at %s of the way", k, shares[i])
            .isCloseTo(particles.temperature(particle, particles.now()), within(0.004));
      }
    }
  }

  /** The room's temperature creeps, and the water comes and goes: edges are still exact. */
  @ParameterizedTest
  @CsvSource({"1, 1", "1.33, 2", "1.8, 3"})
  void everyParticleCoolsAsIfAloneWhileTheRoomWarms(double exponent, long seed) {
    double coefficient = EmissionLaw.distributedCoefficient(1000, exponent);
    PlugFlow path = new PlugFlow(LENGTH, CAPACITY, coefficient, exponent, START);
    Particles particles = new Particles(exponent, coefficient);
    Random random = new Random(seed);
    double reference = 15;
    double emitted = 0;
    double passed = 0;
    for (int k = 0; k < 80; k++) {
      double step = 20 + 60 * random.nextDouble();
      double share = random.nextInt(4) == 0 ? 0 : 0.05 + 0.2 * random.nextDouble();
      double capacityFlow = share * LENGTH * CAPACITY / step;
      double inlet = 40 + 30 * random.nextDouble();
      reference += 0.1;
      path.attempt(step, capacityFlow, inlet, reference);
      particles.step(step, capacityFlow, inlet, reference);
      assertThat(path.meanReturn()).as("step %d", k).isCloseTo(particles.returned(), within(0.004));
      path.accept();
      emitted += path.emitted();
      passed += share * LENGTH * CAPACITY * (inlet - particles.returned());
      double held = particles.stored() - CAPACITY * LENGTH * START;
      assertThat(emitted)
          .as("step %d", k)
          .isCloseTo(passed - held, within(0.002 * CAPACITY * LENGTH));
    }
  }

  /**
   * Each step fills the path anew with water a little warmer or cooler: one parcel, nothing to
   * join. What remains is the arithmetic of powers, to 1e-8 of an excess of some 50 K, and the
   * quadrature.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1, 1.1, 1.3, 1.8})
  void aPathFilledAnewIsExact(double exponent) {
    double coefficient = EmissionLaw.distributedCoefficient(1000, exponent);
    PlugFlow path = new PlugFlow(LENGTH, CAPACITY, coefficient, exponent, START);
    Particles particles = new Particles(exponent, coefficient);
    double[] middle = new double[1];
    for (int k = 0; k < 60; k++) {
      double step = 50 + k % 7;
      double inlet = 65 + 5 * Math.sin(0.1 * k);
      double capacityFlow = (1 + 0.01 * k) * LENGTH * CAPACITY / step;
      double before = k == 0 ? CAPACITY * LENGTH * START : particles.stored();
      path.attempt(step, capacityFlow, inlet, 20);
      particles.step(step, capacityFlow, inlet, 20);
      assertThat(path.meanReturn()).isCloseTo(particles.returned(), within(2e-6));
      assertThat(path.emissionNow(20)).isCloseTo(particles.emission(), within(1e-4));
      double entered = capacityFlow * step * (inlet - particles.returned());
      double emitted = entered + before - particles.stored();
      path.accept();
      assertThat(path.emitted()).isCloseTo(emitted, within(0.2));
      assertThat(path.stored()).isCloseTo(particles.stored(), within(0.02));
      assertThat(path.parcels()).isOne();
      path.profile(new double[] {0.5}, middle);
      assertThat(middle[0])
          .isCloseTo(
              particles.temperature(particles.front() - LENGTH / 2, particles.now()), within(1e-6));
    }
  }

  @Test
  void whatIsColderThanTheRoomPassesUnchanged() {
    PlugFlow path = new PlugFlow(LENGTH, CAPACITY, 6, 1.3, 12);
    for (int k = 0; k < 40; k++) {
      path.attempt(60, 0.05 * LENGTH * CAPACITY / 60, k < 20 ? 10 : 15, 20);
      assertThat(path.emitted()).isCloseTo(0, within(1e-6));
      assertThat(path.emissionNow(20)).isZero();
      assertThat(path.meanReturn()).isCloseTo(k < 20 ? 12 : 10, within(0.005));
      path.accept();
    }
  }
}
