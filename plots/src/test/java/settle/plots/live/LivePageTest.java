package settle.plots.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LivePageTest {

  private static final Engine ENGINE = new Engine("run();", "AAAA");

  private static String page(String file, String text) {
    return new LivePage(ENGINE, file, text, Map.of("w.csv", "</script>1"), "1.2<3").html();
  }

  private static String between(String page, String from, String to) {
    int start = page.indexOf(from) + from.length();
    return page.substring(start, page.indexOf(to, start));
  }

  @Test
  void nothingTypedStandsInThePageAsMarkup() {
    String page = page("<b>.yaml", "title: </script><img src=x onerror=alert(1)>");
    assertThat(page).doesNotContain("onerror=alert").doesNotContain("<b>").doesNotContain("1.2<3");
    String data =
        new String(
            Base64.getDecoder()
                .decode(between(page, "<script type=\"text/plain\" id=\"data\">", "</script>")),
            StandardCharsets.UTF_8);
    assertThat(data)
        .isEqualTo(
            "{\"file\":\"<b>.yaml\",\"text\":\"title: </script><img src=x onerror=alert(1)>\",\"beside\":{\"w.csv\":\"</script>1\"}}");
  }

  @Test
  void everyCharacterOfATextIsKept() {
    String page = page("x", "a\t\"\\\n\u0000\u2028\ud83d\udd25°");
    String data =
        new String(
            Base64.getDecoder().decode(between(page, "id=\"data\">", "</script>")),
            StandardCharsets.UTF_8);
    assertThat(data).contains("\"text\":\"a\\u0009\\\"\\\\\\u000a\\u0000\\u2028\\ud83d\\udd25°\"");
  }

  @Test
  void thePolicyAllowsThePagesOwnScriptAndStyleAndNothingElse() throws Exception {
    String page = page("x", "y");
    String policy = between(page, "Content-Security-Policy\" content=\"", "\"");
    assertThat(policy)
        .startsWith("default-src 'none';")
        .contains(hash(between(page, "<script>", "</script>")))
        .contains(hash(between(page, "<style>", "</style>")))
        .doesNotContain("unsafe-inline")
        .doesNotContain("'unsafe-eval'")
        .doesNotContain("http");
  }

  private static String hash(String text) throws Exception {
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
  }

  @Test
  void anotherRuntimeThanTheKnownOneIsRefused() {
    assertThatThrownBy(() -> WithoutEval.of("new Function('x')"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void anEngineThatIsNotBuiltIsMissing() {
    assertThatThrownBy(() -> Engine.webAssembly(Path.of("not there")))
        .isInstanceOf(Engine.MissingException.class);
  }
}
