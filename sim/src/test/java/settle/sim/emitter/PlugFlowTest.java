package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Invariants of the moving water; its figures are in the validation table. */
class PlugFlowTest {

  private static final double REFERENCE = 18;
  private static final double INLET = 60;
  private static final double CAPACITY = 20_000;

  private static PlugFlow coldRun() {
    return new PlugFlow(
        10, CAPACITY / 10, EmissionLaw.distributedCoefficient(1000, 1.3), 1.3, REFERENCE);
  }

  /**
   * Water that entered in many short steps, at last slowly, and then cooled in place for 20
   * minutes.
   */
  private static PlugFlow cooledRun() {
    PlugFlow run = coldRun();
    for (int i = 0; i < 400; i++) {
      run.attempt(1, CAPACITY / 400, 40 + i % 7, REFERENCE);
      run.accept();
    }
    for (int i = 0; i < 3; i++) {
      run.attempt(1, CAPACITY / 1000, INLET, REFERENCE);
      run.accept();
    }
    run.attempt(1200, 0, INLET, REFERENCE);
    run.accept();
    return run;
  }

  /**
   * Slivers of water far down the path: what leaves is never hotter or colder than anything there
   * is, and no more leaves than enters.
   */
  @Test
  void sliversOfWaterLeaveAsTheyCame() {
    PlugFlow run = coldRun();
    Random random = new Random(7);
    double hottest = REFERENCE;
    for (int i = 0; i < 5000; i++) {
      double share = Math.pow(10, -7 + 6 * random.nextDouble());
      double inlet = 20 + 50 * random.nextDouble();
      hottest = Math.max(hottest, inlet);
      double before = run.stored();
      run.attempt(10, CAPACITY * share / 10, inlet, REFERENCE);
      assertThat(run.meanReturn()).isBetween(REFERENCE - 1e-6, hottest + 1e-6);
      assertThat(run.emitted()).isGreaterThanOrEqualTo(-1e-6 * before);
      run.accept();
      assertThat(run.stored()).isBetween(CAPACITY * REFERENCE * (1 - 1e-9), CAPACITY * hottest);
    }
  }

  /**
   * A trickle of hot water behind cooled water, in steps in which it moves a thousandth of the way.
   */
  @Test
  void aTrickleEmitsAsMuchInShortStepsAsInOne() {
    double flow = CAPACITY / 1000 / 5;
    PlugFlow inOne = cooledRun();
    inOne.attempt(100, flow, INLET, REFERENCE);
    PlugFlow inSteps = cooledRun();
    double evenly = inOne.emitted() / 20;
    double emitted = 0;
    for (int i = 0; i < 20; i++) {
      inSteps.attempt(5, flow, INLET, REFERENCE);
      assertThat(inSteps.emitted()).as("step %d", i).isCloseTo(evenly, within(0.1 * evenly));
      inSteps.accept();
      emitted += inSteps.emitted();
    }
    assertThat(emitted).isCloseTo(inOne.emitted(), within(0.005 * inOne.emitted()));
  }

  @Test
  void parcelsStayFewHoweverShortTheSteps() {
    PlugFlow run = coldRun();
    for (int i = 0; i < 20_000; i++) {
      double flow = i % 700 < 350 ? CAPACITY / 3000 : CAPACITY / 300;
      run.attempt(1, flow, i % 97 < 50 ? INLET : 30, REFERENCE);
      run.accept();
      assertThat(run.parcels()).isLessThan(405);
    }
  }
}
