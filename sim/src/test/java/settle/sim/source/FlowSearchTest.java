package settle.sim.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class FlowSearchTest {

  private static double search(DoubleUnaryOperator answer, double start, int rounds) {
    FlowSearch search = new FlowSearch();
    search.begin();
    double guess = start;
    for (int k = 0; k < rounds; k++) {
      guess = search.next(guess, answer.applyAsDouble(guess));
    }
    return guess;
  }

  /** A source of one power: it follows its return by 0.9, T = 0.9 T + 4. */
  @Test
  void findsAStraightAnswerInTwoRounds() {
    assertThat(search(t -> 0.9 * t + 4, 20, 2)).isCloseTo(40, within(1e-9));
  }

  /** The answer stops following where the set-point is reached, and falls where it switches off. */
  @Test
  void findsABentAnswer() {
    DoubleUnaryOperator bent = t -> t < 39 ? 0.9 * t + 4 : Math.max(39.1 - 6 * (t - 39), 30);
    // 39.1 - 6 (t - 39) = t
    assertThat(search(bent, 20, 20)).isCloseTo((39.1 + 6 * 39) / 7, within(1e-6));
  }

  /** Where a start just comes or does not come about, the answer has no value of its own. */
  @Test
  void closesInOnABreak() {
    assertThat(search(t -> t < 38 ? 45 : 31, 20, 40)).isCloseTo(38, within(1e-3));
  }
}
