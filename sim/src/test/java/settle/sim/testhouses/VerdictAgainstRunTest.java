package settle.sim.testhouses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Over houses of every kind: no yes with a room that a run shows cold, in whatever weather, and no
 * no of a room that a run in the weather named shows warm. More houses, from the first on, by the
 * property {@code verdict.houses}; {@link VerdictTable} does it for as many as one likes.
 */
class VerdictAgainstRunTest {

  private static final int HOUSES = Integer.getInteger("verdict.houses", 20);
  private static final int FEW = 5;

  /** A bypass that just opens, and a pump whose head rises with that. */
  private static final long OPENING = 397;

  static LongStream few() {
    return LongStream.rangeClosed(1, FEW);
  }

  static LongStream more() {
    return LongStream.concat(LongStream.of(OPENING), LongStream.rangeClosed(FEW + 1, HOUSES));
  }

  @ParameterizedTest
  @MethodSource("few")
  void noRunContradictsTheAnswer(long seed) {
    assertNoneContradicts(seed);
  }

  @Tag("thorough")
  @ParameterizedTest
  @MethodSource("more")
  void norThoseOfMoreHouses(long seed) {
    assertNoneContradicts(seed);
  }

  private static void assertNoneContradicts(long seed) {
    VerdictAgainstRun pair = VerdictAgainstRun.of(PlausibleHouse.of(seed));
    assertThat(pair.contradictions()).as(pair.toString()).isEmpty();
  }
}
