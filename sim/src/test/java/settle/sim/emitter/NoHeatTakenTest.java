package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * An emitter takes no heat from its room, not even by rounding, whatever water comes and goes: hot,
 * cold, or as warm as the room; and what it gives is what its water loses.
 */
class NoHeatTakenTest {

  private static final double CAPACITY = 30_000;
  private static final double COEFFICIENT = 12;
  private static final int STEPS = 20_000;

  @ParameterizedTest
  @CsvSource({"true, 1", "true, 1.3", "false, 1", "false, 1.3"})
  void givesOrGivesNothing(boolean perimeter, double exponent) {
    EmitterStepper emitter =
        perimeter
            ? new PlugFlow(10, CAPACITY / 10, COEFFICIENT, exponent, 20)
            : new MixedChain(5, CAPACITY, COEFFICIENT / 5, exponent, 20);
    Random random = new Random(1);
    double room = 20;
    double flow = 0;
    double inlet = 20;
    for (int i = 0; i < STEPS; i++) {
      if (random.nextInt(10) == 0) {
        flow = random.nextBoolean() ? 0 : 200 * random.nextDouble();
        inlet = random.nextInt(3) == 0 ? room : 10 + 50 * random.nextDouble();
      }
      room += random.nextInt(3) == 0 ? 0 : 0.2 * (random.nextDouble() - 0.5);
      double length = 10 << random.nextInt(7);
      double before = emitter.stored();
      emitter.attempt(length, flow, inlet, room);
      assertThat(emitter.emitted()).as("step %s", i).isNotNegative();
      double passed = flow > 0 ? flow * length * (inlet - emitter.meanReturn()) : 0;
      emitter.accept();
      assertThat(emitter.emitted())
          .as("balance of step %s", i)
          .isCloseTo(before - emitter.stored() + passed, within(1e-5));
    }
  }
}
