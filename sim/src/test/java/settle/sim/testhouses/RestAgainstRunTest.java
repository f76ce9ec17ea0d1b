package settle.sim.testhouses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import settle.sim.atrest.RestStatus;

/**
 * Over houses of every kind: where the house at rest says that it rests, a run held in the same
 * weather comes to the same temperatures; where heads may stand anywhere in their play, to some
 * within the range. {@link RestTable} does it for as many houses as one likes.
 */
class RestAgainstRunTest {

  private static final int FEW = 20;

  static LongStream few() {
    return LongStream.rangeClosed(1, FEW);
  }

  static LongStream more() {
    return LongStream.rangeClosed(FEW + 1, 60);
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
    RestAgainstRun pair = RestAgainstRun.of(PlausibleHouse.of(seed));
    assertThat(pair.disagreement()).as(pair.toString()).isLessThan(RestStatus.HOLDS_WITHIN);
  }
}
