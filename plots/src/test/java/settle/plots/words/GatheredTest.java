package settle.plots.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class GatheredTest {

  @Test
  void whatIsSaidOfSeveralThingsIsSaidOnceWithTheRangeOfItsFigures() {
    assertThat(
            Gathered.of(
                List.of(
                    "'hall: panel': 7 % authority of 0.25; take a smaller valve",
                    "the pump is loud",
                    "'loft: panel': 12 % authority of 0.25; take a smaller valve")))
        .containsExactly(
            "'hall: panel' and 'loft: panel': 7 to 12 % authority of 0.25; take a smaller valve",
            "the pump is loud");
  }

  @Test
  void manyThingsAreCounted() {
    assertThat(Gathered.of(List.of("'a': bad", "'b': bad", "'c': bad", "'d': bad")))
        .containsExactly("'a' and 3 others: bad");
  }

  @Test
  void oneThingIsLeftAsItIs() {
    assertThat(Gathered.of(List.of("'a': 3 m/s", "'a': 4 kPa", "mains 'b': 5 m/s")))
        .containsExactly("'a': 3 m/s", "'a': 4 kPa", "mains 'b': 5 m/s");
  }
}
