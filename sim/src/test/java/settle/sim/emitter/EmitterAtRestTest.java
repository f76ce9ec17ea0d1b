package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Output at rest: by the rating, and against the same emitter stepped until nothing moves. */
class EmitterAtRestTest {

  private static final double RATED = 1200;

  private static EmitterStepper path(double n) {
    return new PlugFlow(9, 900, EmissionLaw.distributedCoefficient(RATED, n), n, 20);
  }

  private static EmitterStepper chain(double n, int cells) {
    return new MixedChain(cells, 20_000, EmissionLaw.chainCoefficient(RATED, n, cells), n, 20);
  }

  @ParameterizedTest
  @CsvSource({"1", "1.3", "1.6"})
  void theRatingPointGivesTheRating(double n) {
    double flow = EmissionLaw.ratedCapacityFlow(RATED);
    assertThat(path(n).atRest(flow, 75, 20)).isCloseTo(RATED, within(1e-8 * RATED));
    assertThat(chain(n, 1).atRest(flow, 75, 20)).isCloseTo(RATED, within(1e-8 * RATED));
    assertThat(chain(n, 5).atRest(flow, 75, 20)).isCloseTo(RATED, within(1e-8 * RATED));
  }

  /** The stepped path joins parcels within 4 mK, the stepped chain agrees to 1 mK. */
  @ParameterizedTest
  @CsvSource({"120, 70, 21", "20, 60, 18", "2, 75, 20", "400, 35, 24"})
  void steppedLongEnoughItIsTheSame(double capacityFlow, double inlet, double reference) {
    for (EmitterStepper emitter : new EmitterStepper[] {path(1.3), chain(1.3, 5)}) {
      double atRest = emitter.atRest(capacityFlow, inlet, reference);
      double step = 60;
      for (int i = 0; i < 3000; i++) {
        emitter.attempt(step, capacityFlow, inlet, reference);
        emitter.accept();
      }
      assertThat(emitter.emitted() / step).isCloseTo(atRest, within(1e-4 * atRest));
      assertThat(emitter.atRest(capacityFlow, inlet, reference)).isEqualTo(atRest);
    }
  }

  @ParameterizedTest
  @CsvSource({"0, 70, 20", "100, 18, 20", "100, 20, 20"})
  void withoutFlowOrExcessNothingIsGiven(double capacityFlow, double inlet, double reference) {
    assertThat(path(1.3).atRest(capacityFlow, inlet, reference)).isZero();
    assertThat(chain(1.3, 5).atRest(capacityFlow, inlet, reference)).isZero();
  }
}
