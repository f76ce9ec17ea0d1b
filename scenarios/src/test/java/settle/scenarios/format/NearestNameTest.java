package settle.scenarios.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNameTest {

  private static final List<String> KEYS =
      List.of("want", "air change", "floor area", "flow temperature", "U-value", "size");

  @ParameterizedTest
  @CsvSource({
    "wnat, want",
    "air_change, air change",
    "AirChange, air change",
    "airchange, air change",
    "flow, flow temperature",
    "u value, U-value",
    "flor area, floor area",
  })
  void findsWhatWasProbablyMeant(String typed, String nearest) {
    assertThat(NearestName.of(typed, KEYS)).contains(nearest);
  }

  @Test
  void suggestsNothingFarFetched() {
    assertThat(NearestName.of("colour", KEYS)).isEmpty();
    assertThat(NearestName.of("x", KEYS)).isEmpty();
    assertThat(NearestName.of("", KEYS)).isEmpty();
    assertThat(NearestName.hint("colour", KEYS)).startsWith("; there are want, air change");
    assertThat(NearestName.hint("colour", List.of())).isEqualTo("; none is defined");
  }
}
