package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.Finding;

/** Whatever a file holds, reading it ends soon: with a house, or with messages of one line each. */
class AnyTextTest {

  private static final List<String> SCRAPS =
      List.of(
          ":",
          " ",
          "\n",
          "\t",
          "-",
          "[",
          "]",
          "{",
          "}",
          "\"",
          "'",
          "#",
          "&a",
          "*a",
          "!",
          "|",
          ">",
          "%",
          "0",
          "-1",
          "1e9",
          "°",
          "x",
          "NaN",
          "\u0000",
          "\u001b[31m",
          "\n\n  ",
          "? ",
          ", ");

  @TempDir Path folder;

  /** A sound scenario damaged in a few places. */
  @Property(tries = 200)
  void aDamagedScenario(@ForAll long seed) throws Exception {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder(Starter.text());
    int damages = 1 + random.nextInt(4);
    for (int i = 0; i < damages; i++) {
      int at = random.nextInt(text.length());
      int end = Math.min(text.length(), at + random.nextInt(12));
      text.replace(at, end, SCRAPS.get(random.nextInt(SCRAPS.size())));
    }
    Path file = Files.createTempFile("settle", ".yaml");
    try {
      assertReadsOrTells(file, text.toString());
    } finally {
      Files.delete(file);
    }
  }

  /** Files made to take long or to fill the screen. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "title: '%s'|   ",
        "title: %s|1",
        "run: {length: %s h}|9",
        "run: {length: '%s'}| ",
        "control: {programme: '%s'}| ",
        "control: {programme: %s}|0",
        "%s: 1|a",
        "%s|- ",
        "%s|a: 1\n",
        "{%s}|a: {b: 1}, ",
        "rooms: {%s: {size: 1 x 1 x 1 m}}|k",
        "rooms: {a: {size: '%s'}}|x ",
        "a: %s|[",
        "%s|#\n",
        "%s|\u0001",
      })
  void aMegabyteOfIt(String pattern) {
    String[] parts = pattern.split("\\|", 2);
    String text = parts[0].formatted(parts[1].repeat(900_000 / parts[1].length()));
    Assertions.assertTimeout(
        Duration.ofSeconds(20), () -> assertReadsOrTells(folder.resolve("house.yaml"), text));
  }

  private static void assertReadsOrTells(Path file, String text) throws IOException {
    Files.write(file, text.getBytes(StandardCharsets.UTF_8));
    List<Finding> findings;
    try {
      findings = ScenarioFiles.read(file).warnings();
    } catch (ScenarioException e) {
      findings = e.problems();
      assertThat(findings).isNotEmpty().hasSizeLessThanOrEqualTo(100);
    }
    assertThat(findings)
        .allSatisfy(
            f -> {
              assertThat(f.message()).hasSizeLessThan(1000).doesNotContainPattern("\\p{Cntrl}");
              assertThat(f.line()).isPositive();
              assertThat(f.column()).isPositive();
            });
  }
}
