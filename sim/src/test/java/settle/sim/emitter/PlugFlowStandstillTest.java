package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Invariant: water that stands still leaves nothing, however its parcels came to lie. */
class PlugFlowStandstillTest {

  private static final double LENGTH = 11.2;
  private static final double CAPACITY = 2852;

  /**
   * The parcels' lengths add up to the path's only to rounding; a sliver at the outlet must not
   * count as having left, least of all at no speed. Without flow: heat emitted is heat lost.
   */
  @Test
  void aSliverAtTheOutletDoesNotLeaveWithoutFlow() {
    Random random = new Random(1);
    for (int run = 0; run < 500; run++) {
      PlugFlow path = new PlugFlow(LENGTH, CAPACITY, 9.7, 1.28, 20);
      int parcels = 20 + random.nextInt(40);
      double sliver = 0.003 * random.nextDouble();
      double speed = (LENGTH - sliver) / parcels / 10;
      for (int step = 0; step < 3 * parcels; step++) {
        path.attempt(10, speed * CAPACITY, 50 + 5 * Math.sin(step), 20);
        path.accept();
      }
      for (int step = 0; step < 60; step++) {
        double before = path.stored();
        path.attempt(640, 0, 60, 20 - 0.01 * step);
        assertThat(path.emitted()).isFinite();
        path.accept();
        assertThat(before - path.stored()).isCloseTo(path.emitted(), within(1e-6));
      }
    }
  }

  /**
   * A sliver let in by a nearly shut valve is wholly inside when the water moves on: the path holds
   * its length of water, so no more heat than that much of the hottest.
   */
  @Test
  void aSliverAtTheInletDoesNotMultiplyTheWater() {
    Random random = new Random(2);
    for (int run = 0; run < 500; run++) {
      PlugFlow path = new PlugFlow(LENGTH, CAPACITY, 9.7, 1.28, 30);
      for (int step = 0; step < 20; step++) {
        double moved = (step % 2 == 0 ? 1e-7 : 0.3) * random.nextDouble();
        path.attempt(10, moved / 10 * CAPACITY, 70, 20);
        path.accept();
        assertThat(path.stored()).isBetween(20 * CAPACITY * LENGTH, 70 * CAPACITY * LENGTH);
      }
    }
  }

  /**
   * Water as warm as the room to a ten-millionth of a kelvin, while the room's temperature creeps:
   * an excess too small to count becomes one that counts, and the other way round.
   */
  @Test
  void anExcessThatHardlyCountsStaysANumber() {
    Random random = new Random(3);
    PlugFlow path = new PlugFlow(LENGTH, CAPACITY, 9.7, 1.28, 15);
    double reference = 15;
    for (int step = 0; step < 2000; step++) {
      reference += 2e-9 * (random.nextDouble() - 0.5);
      path.attempt(640, 16, reference + 1e-7 + 2e-8 * (random.nextDouble() - 0.5), reference);
      assertThat(path.meanReturn()).isCloseTo(15, within(1e-5));
      assertThat(path.emitted()).isFinite();
      path.accept();
    }
  }
}
