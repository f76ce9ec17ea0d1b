package settle.sim.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Water in a pipe against each of its particles, which cools from the inlet on by C' dT/dt = -G' (T
 * - T_s) wherever it is. What left and what is held are integrals over particles, by quadrature of
 * Gauss and Legendre between the fronts.
 */
class WaterInAPipeTest {

  private static final double LENGTH = 10;
  private static final double CAPACITY = 700;
  private static final double START = 40;

  private static final double[] NODES = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};
  private static final double[] WEIGHTS = {5.0 / 18, 8.0 / 18, 5.0 / 18};

  /** Particles, told apart by how much had entered before them [m]. */
  private static final class Particles {

    private final double loss;
    private final List<Double> times = new ArrayList<>(List.of(0.0));
    private final List<Double> entered = new ArrayList<>(List.of(0.0));
    private final List<Double> inlets = new ArrayList<>();
    private final List<Double> surroundings = new ArrayList<>();

    Particles(double loss) {
      this.loss = loss;
    }

    void step(double h, double moved, double inlet, double around) {
      times.add(now() + h);
      entered.add(front() + moved);
      inlets.add(inlet);
      surroundings.add(around);
    }

    private double now() {
      return times.get(times.size() - 1);
    }

    private double front() {
      return entered.get(entered.size() - 1);
    }

    private double timeOf(int step, double place) {
      double share = (place - entered.get(step)) / (entered.get(step + 1) - entered.get(step));
      return times.get(step) + share * (times.get(step + 1) - times.get(step));
    }

    private double temperature(double particle, double time) {
      int step = 0;
      double since = 0;
      double temperature = START;
      if (particle >= 0) {
        while (particle > entered.get(step + 1)) {
          step++;
        }
        since = timeOf(step, particle);
        temperature = inlets.get(step);
      }
      for (; step < inlets.size() && since < time; step++) {
        double until = Math.max(since, Math.min(time, times.get(step + 1)));
        double around = surroundings.get(step);
        temperature =
            around + (temperature - around) * Math.exp(-loss / CAPACITY * (until - since));
        since = until;
      }
      return temperature;
    }

    private double integral(double from, double to, DoubleUnaryOperator quantity) {
      double sum = 0;
      double left = from;
      for (int i = 0; i <= entered.size(); i++) {
        double right = i < entered.size() ? Math.min(entered.get(i), to) : to;
        for (int k = 0; k < 3 && right > left; k++) {
          sum +=
              WEIGHTS[k]
                  * (right - left)
                  * quantity.applyAsDouble(left + NODES[k] * (right - left));
        }
        left = Math.max(left, right);
      }
      return sum;
    }

    double stored() {
      return CAPACITY * integral(front() - LENGTH, front(), p -> temperature(p, now()));
    }

    double outlet() {
      int last = inlets.size() - 1;
      double before = entered.get(last);
      if (front() == before) {
        return temperature(front() - LENGTH, now());
      }
      return integral(
              before - LENGTH, front() - LENGTH, p -> temperature(p, timeOf(last, p + LENGTH)))
          / (front() - before);
    }
  }

  /**
   * Steps of up to a minute, flows from none to twice what the pipe holds, an inlet that jumps,
   * surroundings that change. A parcel's temperature is straight along it, where e^(-x) is meant
   * with x below 0.09, 0.02 K off; neighbours are joined within 5 mK.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void everyParticleCoolsAsIfAlone(long seed) {
    Random random = new Random(seed);
    double loss = seed == 1 ? 0 : 1;
    PipeWater water =
        new PipeWater(new Pipe("pipe", 0.0136, 0, LENGTH, 0, CAPACITY, loss), LENGTH, START);
    Particles particles = new Particles(loss);
    double lost = 0;
    double passed = 0;
    for (int k = 0; k < 150; k++) {
      double h = 5 + 55 * random.nextDouble();
      double share = random.nextInt(4) == 0 ? 0 : 0.03 + 0.4 * random.nextDouble();
      share = random.nextInt(12) == 0 ? 1 + random.nextDouble() : share;
      double inlet = 20 + 50 * random.nextDouble();
      double around = 10 + 10 * random.nextDouble();
      double capacityFlow = share * LENGTH * CAPACITY / h;
      water.attempt(2 * h, capacityFlow / 3, 90, 0);
      water.attempt(h, capacityFlow, inlet, around);
      particles.step(h, share * LENGTH, inlet, around);
      assertThat(water.outlet()).as("step %d", k).isCloseTo(particles.outlet(), within(0.025));
      lost += water.loss();
      water.accept();
      passed += share * LENGTH * CAPACITY * (inlet - particles.outlet());
      assertThat(water.stored())
          .as("step %d", k)
          .isCloseTo(particles.stored(), within(0.005 * LENGTH * CAPACITY));
      double held = particles.stored() - START * LENGTH * CAPACITY;
      assertThat(lost).as("step %d", k).isCloseTo(passed - held, within(0.01 * LENGTH * CAPACITY));
    }
  }

  /** Thousands of seconds of standing: temperatures are written out anew on the way. */
  @Test
  void longAfterwardsTheWaterStillKnowsItsPlace() {
    PipeWater water =
        new PipeWater(new Pipe("pipe", 0.0136, 0, LENGTH, 0, CAPACITY, 0.7), LENGTH, 20);
    for (int k = 0; k < 200; k++) {
      water.attempt(100, 0, Double.NaN, 15);
      water.accept();
    }
    // 20 000 s of 1000 s: all of it as warm as around.
    assertThat(water.stored()).isCloseTo(15 * LENGTH * CAPACITY, within(1e-3));
    for (int k = 0; k < 4; k++) {
      water.attempt(10, 0.25 * LENGTH * CAPACITY / 10, 30 + 10 * k, 15);
      assertThat(water.outlet()).isCloseTo(15, within(1e-3));
      water.accept();
    }
    double[] out = new double[4];
    for (int k = 0; k < 4; k++) {
      water.attempt(10, 0.25 * LENGTH * CAPACITY / 10, 80, 15);
      out[k] = water.outlet();
      water.accept();
    }
    // In the order in which it came, each 40 s on its way.
    for (int k = 0; k < 4; k++) {
      assertThat(out[k]).isCloseTo(15 + (15 + 10 * k) * Math.exp(-40 / 1000.0), within(0.01));
    }
  }
}
