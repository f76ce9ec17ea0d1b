package settle.sim.testhouses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import settle.sim.atrest.RestStatus;

/**
 * Rest against run, as {@link RestAgainstRunTest}, where emitters stand in loops. {@link LoopTable}
 * does it for as many houses as one likes.
 */
class LoopsAtRestTest {

  private static final int FEW = 12;

  static LongStream few() {
    return LongStream.rangeClosed(1, FEW);
  }

  static LongStream more() {
    return LongStream.rangeClosed(FEW + 1, 40);
  }

  @ParameterizedTest
  @MethodSource("few")
  void whatRestsIsWhatARunComesTo(long seed) {
    assertAgreement(seed);
  }

  @Tag("thorough")
  @ParameterizedTest
  @MethodSource("more")
  void soItIsInMoreHouses(long seed) {
    assertAgreement(seed);
  }

  private static void assertAgreement(long seed) {
    for (boolean passedBy : new boolean[] {false, true}) {
      RestAgainstRun pair = RestAgainstRun.of(LoopedHouse.of(seed, passedBy));
      assertThat(pair.disagreement()).as(pair.toString()).isLessThan(RestStatus.HOLDS_WITHIN);
    }
  }
}
