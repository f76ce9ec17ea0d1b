package settle.sim.testhouses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Over houses of every kind: no yes with a room that a run shows cold, in whatever weather, and no
 * no of a room that a run in the weather named shows warm. More houses, from the first on, by the
 * property {@code verdict.houses}; {@link VerdictTable} does it for as many as one likes.
 */
class VerdictAgainstRunTest {

  private static final int HOUSES = 20;

  /** A bypass that just opens, and a pump whose head rises with that. */
  private static final long OPENING = 397;

  static LongStream seeds() {
    return LongStream.concat(
        LongStream.of(OPENING),
        LongStream.rangeClosed(1, Integer.getInteger("verdict.houses", HOUSES)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noRunContradictsTheAnswer(long seed) {
    VerdictAgainstRun pair = VerdictAgainstRun.of(PlausibleHouse.of(seed));
    assertThat(pair.contradictions()).as(pair.toString()).isEmpty();
  }
}
