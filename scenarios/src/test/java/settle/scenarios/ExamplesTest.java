package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The example houses that ship with the tool. */
class ExamplesTest {

  private static final Path FOLDER = Path.of("examples");

  static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void isReadWithoutAWarning(Path example) throws Exception {
    assertThat(ScenarioReader.read(example).warnings()).isEmpty();
  }

  @Test
  void theMinimalScenarioIsUnder25Lines() throws Exception {
    assertThat(Files.readAllLines(FOLDER.resolve("single-room.yaml"))).hasSizeLessThan(25);
  }
}
