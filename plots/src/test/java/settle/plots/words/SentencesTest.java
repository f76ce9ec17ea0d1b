package settle.plots.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class SentencesTest {

  @Test
  void placesAreFilledInOrder() {
    assertThat(Sentences.say("{} gets {}.", "hall", 3)).isEqualTo("hall gets 3.");
    assertThat(Sentences.say("{}", "{}")).isEqualTo("{}");
    assertThat(Sentences.say("nothing to fill")).isEqualTo("nothing to fill");
  }

  @Test
  void everyPlaceHasItsPart() {
    assertThatThrownBy(() -> Sentences.say("{} gets {}", "hall"))
        .hasMessageContaining("{} gets {}");
    assertThatThrownBy(() -> Sentences.say("{} gets", "hall", "3"))
        .isInstanceOf(RuntimeException.class);
  }
}
