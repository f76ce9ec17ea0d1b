package settle.sim.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkersTest {

  /** Workers of so many threads; none for the calling one. */
  private static Workers of(int threads) {
    return threads == 0 ? Workers.ONE : new Threads(threads);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 3})
  void everyAnswerComesInItsPlace(int threads) {
    List<Supplier<Integer>> squares =
        IntStream.range(0, 100).<Supplier<Integer>>mapToObj(i -> () -> i * i).toList();
    assertThat(of(threads).all(squares))
        .isEqualTo(IntStream.range(0, 100).mapToObj(i -> i * i).toList());
    assertThat(of(threads).<Integer>all(List.of())).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 3})
  void theFirstTroubleIsThrownAsItIsOnceAllIsDone(int threads) {
    ArithmeticException early = new ArithmeticException("early");
    List<Integer> done = Collections.synchronizedList(new ArrayList<>());
    List<Supplier<Integer>> pieces =
        IntStream.range(0, 6)
            .<Supplier<Integer>>mapToObj(
                i ->
                    () -> {
                      done.add(i);
                      if (i == 1) {
                        throw early;
                      }
                      if (i == 4) {
                        throw new IllegalStateException("late");
                      }
                      return i;
                    })
            .toList();
    assertThatThrownBy(() -> of(threads).all(pieces)).isSameAs(early);
    assertThat(done).containsExactlyInAnyOrder(0, 1, 2, 3, 4, 5);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 3})
  void twoThingsMakeOne(int threads) {
    assertThat(of(threads).<String, Integer, String>both(() -> "a", () -> 2, (a, b) -> a + b))
        .isEqualTo("a2");
  }
}
