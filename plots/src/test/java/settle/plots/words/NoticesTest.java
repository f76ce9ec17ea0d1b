package settle.plots.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import settle.sim.notice.Code;
import settle.sim.notice.Notice;

class NoticesTest {

  private static final List<Double> NUMBERS = Collections.nCopies(6, 1234.5);

  @Test
  void whatIsSaidOfSeveralThingsIsSaidOnceWithTheRangeOfItsNumbers() {
    assertThat(
            Notices.gathered(
                List.of(
                    Notice.about("hall: panel", Code.NOISY_BRANCH, 1.56),
                    Notice.of(Code.KEPT_OFF, 5400),
                    Notice.about("loft: panel", Code.NOISY_BRANCH, 1.1))))
        .containsExactly(
            "'hall: panel' and 'loft: panel': water runs at 1.1 to 1.6 m/s and will be heard; use a"
                + " larger pipe or throttle it",
            "for 1.5 h heat is called for but too little water flows for the heat pump to run: open"
                + " valves, or fit a bypass or a parallel buffer");
  }

  @Test
  void manyThingsAreCounted() {
    List<Notice> four =
        Stream.of("a", "b", "c", "d").map(n -> Notice.about(n, Code.NO_WATER)).toList();
    assertThat(Notices.gathered(four))
        .containsExactly("'a' and 3 others: no water ever flows through it");
  }

  @Test
  void oneThingOfAKindIsLeftAsItIs() {
    List<Notice> unlike =
        List.of(
            Notice.about("a", Code.NOISY_BRANCH, 3),
            Notice.about("b", Code.NOISY_MAINS, 5),
            Notice.about("a", Code.NEARLY_SHUT, 0.25));
    assertThat(Notices.gathered(unlike)).isEqualTo(Notices.each(unlike)).hasSize(3);
  }

  /** Every code has its own words, with what it is about and numbers that are there. */
  @Test
  void everyCodeHasASentenceOfItsOwn() {
    List<String> sentences =
        Stream.of(Code.values()).map(c -> Notices.of(new Notice(c, "hall", NUMBERS))).toList();
    assertThat(sentences).doesNotHaveDuplicates().allMatch(s -> s.length() > 30);
    assertThat(sentences).noneMatch(s -> s.contains("null") || s.contains("NaN"));
  }
}
