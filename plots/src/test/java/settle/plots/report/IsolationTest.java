package settle.plots.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class IsolationTest {

  private static String written(String name) {
    return Isolation.compiler().compile("{{name}}: 21 °C").execute(Map.of("name", name));
  }

  @Test
  void aNameFromRightToLeftLeavesTheFigureBesideItAlone() {
    assertThat(written("\u05d7\u05d3\u05e8")).isEqualTo("\u2068\u05d7\u05d3\u05e8\u2069: 21 °C");
    assertThat(written("\u05d7\u05d3 \u05e8\u05d0"))
        .as("words of one name together")
        .isEqualTo("\u2068\u05d7\u05d3 \u05e8\u05d0\u2069: 21 °C");
    assertThat(written("room \u063a\u0631")).isEqualTo("room \u2068\u063a\u0631\u2069: 21 °C");
  }

  @Test
  void otherNamesStayAsTheyAreAndMarkupIsNone() {
    assertThat(written("Küche <b>")).isEqualTo("Küche &lt;b&gt;: 21 °C");
  }
}
