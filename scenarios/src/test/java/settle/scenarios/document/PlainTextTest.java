package settle.scenarios.document;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class PlainTextTest {

  @Test
  void whatIsReadStays() {
    for (String text :
        new String[] {"Küche", "חדר", "غرفة", "居間", "room \uD83D\uDD25", "a\tb\r\nc", ""}) {
      assertThat(PlainText.of(text)).isEqualTo(text);
    }
  }

  @Test
  void whatSteersGoes() {
    assertThat(PlainText.of("a\u001b[31mb\u0007c\u007f\u0080\u009b")).isEqualTo("a[31mbc");
    assertThat(PlainText.of("a\u202eb\u2066c\u2069\u200f\u061c\ufeff")).isEqualTo("abc");
    assertThat(PlainText.of("a\ud83db\udd25c\uffff\ufdd0")).isEqualTo("abc");
    assertThat(PlainText.of("a\u2028b\u0085c")).isEqualTo("a b c");
    assertThat(PlainText.line(" a \n\u000b b\u0000 ")).isEqualTo("a b");
  }

  /** Whatever goes in, what comes out is legal in XML 1.0 and steers nothing; twice is once. */
  @Property
  void anyText(@ForAll String text) {
    String plain = PlainText.of(text);
    assertThat(plain.codePoints())
        .allMatch(
            c ->
                c == '\t'
                    || c == '\n'
                    || c == '\r'
                    || (c >= 0x20 && c <= 0xD7FF)
                    || (c >= 0xE000 && c <= 0xFFFD)
                    || c >= 0x10000)
        .noneMatch(c -> (c >= 0x7F && c <= 0x9F) || (c >= 0x202A && c <= 0x202E));
    assertThat(PlainText.of(plain)).isEqualTo(plain);
  }
}
