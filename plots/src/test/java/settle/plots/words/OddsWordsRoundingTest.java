package settle.plots.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OddsWordsRoundingTest {

  @ParameterizedTest
  @CsvSource({
    "0.8, 0.797, 79",
    "0.8, 0.75, 75",
    "0.8, 0.7999, 79",
    "0.855, 0.8549, 85",
    "1, 0.999, 99"
  })
  void fewerThanAreAskedForIsNeverPrintedAsAsMany(double sure, double held, long printed) {
    assertThat(OddsWords.shortOf(sure, held)).isEqualTo(printed);
  }
}
