package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** A radiator's step, whatever its size, flow, exponent and the length of the step. */
class MixedChainTest {

  /** Decades between 1 and the ends of a range. */
  private static double decades(double exponent) {
    return Math.pow(10, exponent);
  }

  @Property(tries = 500, seed = "2", edgeCases = EdgeCasesMode.NONE)
  void agreesWithItselfAndStaysBetweenWaterAndRoom(
      @ForAll @DoubleRange(min = -1, max = 5) double length,
      @ForAll @DoubleRange(min = 1, max = 6) double capacity,
      @ForAll @DoubleRange(min = 0, max = 6) double rated,
      @ForAll @DoubleRange(min = -2, max = 5) double flow,
      @ForAll @DoubleRange(min = 1, max = 2) double exponent,
      @ForAll @DoubleRange(min = -20, max = 60) double room) {
    double coefficient = EmissionLaw.chainCoefficient(decades(rated), exponent, 5);
    MixedChain chain = new MixedChain(5, decades(capacity), coefficient, exponent, 20);
    double coldest = Math.min(20, room) - 1e-6;
    double before = chain.stored();
    double[] shares = {0.05, 0.3, 0.5, 0.7, 0.95};
    double[] cells = new double[5];
    double capacityFlow = flow < -1.5 ? 0 : decades(flow);
    for (int k = 0; k < 4; k++) {
      chain.attempt(decades(length), capacityFlow, 70, room);
      assertThat(chain.agreed()).isTrue();
      double entered = capacityFlow * decades(length) * (70 - chain.meanReturn());
      double emitted = chain.emitted();
      chain.accept();
      double scale = Math.abs(entered) + decades(capacity) * 100;
      assertThat(chain.stored() - before)
          .isCloseTo((capacityFlow > 0 ? entered : 0) - emitted, within(1e-9 * scale));
      before = chain.stored();
      chain.profile(shares, cells);
      for (double cell : cells) {
        assertThat(cell).isBetween(coldest, 70 + 1e-6);
      }
      if (capacityFlow > 0) {
        assertThat(chain.meanReturn()).isBetween(coldest, 70 + 1e-6);
      }
    }
  }
}
