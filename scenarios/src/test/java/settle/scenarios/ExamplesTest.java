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
import settle.sim.house.Arrangement;
import settle.sim.house.EmitterKind;
import settle.sim.house.House;
import settle.sim.room.Room;

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

  /** A comparison says something about the emitters only where both are rated alike. */
  @ParameterizedTest
  @MethodSource("examples")
  void theArrangementsAreAFairPair(Path example) throws Exception {
    House house = ScenarioReader.read(example).house();
    assertThat(house.arrangements()).hasSize(2);
    Arrangement first = house.arrangements().get(0);
    Arrangement second = house.arrangements().get(1);
    assertThat(first.emitterKind()).isEqualTo(EmitterKind.PERIMETER);
    assertThat(second.emitterKind()).isEqualTo(EmitterKind.RADIATOR);
    for (Room room : house.rooms()) {
      double output = second.ratedOutput(room.name());
      assertThat(first.ratedOutput(room.name()))
          .as(room.name())
          .isCloseTo(output, within(0.03 * output));
    }
  }

  @Test
  void theMinimalScenarioIsUnder25Lines() throws Exception {
    assertThat(Files.readAllLines(FOLDER.resolve("single-room.yaml"))).hasSizeLessThan(25);
  }
}
