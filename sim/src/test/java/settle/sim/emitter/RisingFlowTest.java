package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Skirting in a flow that rises or falls evenly: steps of minutes against steps of a second, in
 * each of which the flow is held.
 */
class RisingFlowTest {

  private static final double LENGTH = 10;
  private static final double CAPACITY = 2000;
  private static final double INLET = 55;
  private static final double ROOM = 20;

  private static PlugFlow skirting() {
    double coefficient = EmissionLaw.distributedCoefficient(1300, 1.3);
    PlugFlow skirting = new PlugFlow(LENGTH, CAPACITY, coefficient, 1.3, INLET);
    for (int k = 0; k < 20; k++) {
      skirting.attempt(100, 60, INLET, ROOM);
      skirting.accept();
    }
    return skirting;
  }

  /** Heat emitted [J] while the flow goes by so much of its mean, in so many steps. */
  private static double emitted(double endsAbove, int steps, boolean said) {
    PlugFlow skirting = skirting();
    double heat = 0;
    for (int k = 0; k < steps; k++) {
      double share = (2.0 * k + 1) / steps - 1;
      double flow = 60 * (1 + endsAbove * share);
      skirting.flowEndsAbove(said ? endsAbove / steps * 60 / flow : 0);
      skirting.attempt(240.0 / steps, flow, INLET, ROOM);
      skirting.accept();
      heat += skirting.emitted();
    }
    return heat;
  }

  /** A step that knows how its flow goes keeps a tenth of the error of one that holds it. */
  @ParameterizedTest
  @CsvSource({"0.1", "-0.1", "0.3", "-0.3"})
  void oneStepGivesWhatManyShortOnesGive(double endsAbove) {
    double exact = emitted(endsAbove, 240, false);
    double held = emitted(endsAbove, 1, false) - exact;
    assertThat(emitted(endsAbove, 1, true) - exact).isCloseTo(0, within(Math.abs(held) / 10));
  }

  /** Water that fills the run to the last digit leaves stretches of no length at its end. */
  @Test
  void stretchesOfNoLengthLeaveToo() {
    PlugFlow skirting = skirting();
    double flow = LENGTH * CAPACITY / 160;
    for (int k = 0; k < 8; k++) {
      skirting.flowEndsAbove(k % 2 == 0 ? 0.5 : 0);
      skirting.attempt(k % 3 == 0 ? 160 : 80, flow, INLET - k, ROOM);
      skirting.accept();
      assertThat(skirting.emitted()).isFinite().isPositive();
      assertThat(skirting.meanReturn()).isBetween(ROOM, INLET);
    }
  }
}
