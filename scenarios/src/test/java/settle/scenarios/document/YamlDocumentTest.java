package settle.scenarios.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class YamlDocumentTest {

  @Test
  void keepsLineAndColumnOfKeysAndValues() throws Exception {
    Node.Mapping root = (Node.Mapping) YamlDocument.parse("title: A\nsite:\n  ground:   9 °C\n");
    Node.Entry site = root.entry("site").orElseThrow();
    Node.Entry ground = ((Node.Mapping) site.value()).entry("ground").orElseThrow();
    assertThat(ground.keyPosition()).isEqualTo(new Position(3, 3));
    assertThat(ground.value().position()).isEqualTo(new Position(3, 13));
    assertThat(((Node.Text) ground.value()).text()).isEqualTo("9 °C");
  }

  @Test
  void anAliasStandsForWhatItNames() throws Exception {
    Node.Mapping root = (Node.Mapping) YamlDocument.parse("a: &x {b: 1}\nc: *x\n");
    assertThat(root.entry("c").orElseThrow().value())
        .isSameAs(root.entry("a").orElseThrow().value());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a:~  b: 1~  b: 2 | 3:3: the key 'b' is written twice; the first is in line 2",
        "a: 1~b: 2~a: 3~b: 4 | 3:1: the key 'a' is written twice; the first is in line 1 & 4:1: the key 'b' is written twice; the first is in line 2",
        "a:~^b: 1 | 2:1: found a tab; indent with spaces",
        "a: b: c | 1:5: is not well-formed YAML: mapping values are not allowed here",
        "a: [1, 2 | 1:9: is not well-formed YAML: while parsing a flow sequence: expected ',' or ']', but got <stream end>",
        "a: 'b | 1:6: is not well-formed YAML: while scanning a quoted scalar: found unexpected end of stream",
        "a: *b | 1:4: the alias *b stands for nothing finished above it",
        "a: &a [*a] | 1:8: the alias *a stands for nothing finished above it",
        "[1, 2]: 3 | 1:1: found a list as a key, expected a word; quote a name that has brackets",
        "a: 1~---~b: 2 | 2:1: a second document begins here; a scenario is one document",
        "# only a comment | 1:1: has no content, only comments",
      })
  void saysWhereAndWhy(String text, String expected) {
    DocumentException e =
        catchThrowableOfType(
            DocumentException.class,
            () -> YamlDocument.parse(text.replace('~', '\n').replace('^', '\t')));
    assertThat(e).isNotNull();
    assertThat(
            e.faults().stream()
                .map(f -> f.position().line() + ":" + f.position().column() + ": " + f.message())
                .collect(Collectors.joining(" & ")))
        .isEqualTo(expected);
  }

  @Test
  void aliasesThatUnfoldWithoutEndAreRefusedBeforeTheyAreUnfolded() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x,x,x,x,x,x,x,x,x,x]\n");
    for (int i = 1; i < 30; i++) {
      bomb.append("a%d: &a%d [%s]\n".formatted(i, i, ("*a" + (i - 1) + ",").repeat(10)));
    }
    DocumentException e =
        catchThrowableOfType(DocumentException.class, () -> YamlDocument.parse(bomb.toString()));
    assertThat(e).hasMessage("unfolds to more than 100000 values; write fewer aliases");
    assertThat(e.faults().get(0).position().line()).isEqualTo(5);
  }

  @Test
  void nestingWithoutEndIsRefused() {
    DocumentException e =
        catchThrowableOfType(
            DocumentException.class, () -> YamlDocument.parse("a: " + "[".repeat(400_000)));
    assertThat(e).hasMessage("is nested more than 40 levels deep");
  }
}
