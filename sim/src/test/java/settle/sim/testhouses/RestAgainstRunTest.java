package settle.sim.testhouses;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import settle.sim.atrest.RestStatus;

/**
 * Over houses of every kind: where the house at rest says that it rests, a run held in the same
 * weather comes to the same temperatures; where heads may stand anywhere in their play, to some
 * within the range. {@link RestTable} does it for as many houses as one likes.
 */
class RestAgainstRunTest {

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatRestsIsWhatARunComesTo(long seed) {
    RestAgainstRun pair = RestAgainstRun.of(PlausibleHouse.of(seed));
    assertThat(pair.disagreement()).as(pair.toString()).isLessThan(RestStatus.HOLDS_WITHIN);
  }
}
