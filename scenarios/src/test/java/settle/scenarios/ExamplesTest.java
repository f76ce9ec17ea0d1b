package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import settle.scenarios.file.ScenarioFiles;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;

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
    assertThat(ScenarioFiles.read(example).warnings()).isEmpty();
  }

  /** A comparison says something about the emitters only where both are rated alike. */
  @ParameterizedTest
  @MethodSource("examples")
  void theArrangementsAreAFairMatch(Path example) throws Exception {
    List<Arrangement> all = ScenarioFiles.read(example).house().arrangements();
    Arrangement radiators = all.get(all.size() - 1);
    assertThat(all).hasSizeGreaterThanOrEqualTo(2);
    assertThat(radiators.emitterKind()).isEqualTo("radiator");
    for (Arrangement skirting : all.subList(0, all.size() - 1)) {
      assertThat(skirting.emitterKind()).isEqualTo("perimeter");
      for (Branch branch : radiators.branches()) {
        double output = radiators.ratedOutput(branch.room());
        assertThat(skirting.ratedOutput(branch.room()))
            .as(branch.room())
            .isCloseTo(output, within(0.03 * output));
      }
    }
  }

  @Test
  void theMinimalScenarioIsUnder25Lines() throws Exception {
    assertThat(Files.readAllLines(FOLDER.resolve("single-room.yaml"))).hasSizeLessThan(25);
  }
}
