package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import settle.scenarios.file.ScenarioFiles;
import settle.sim.house.House;
import settle.sim.source.HeatPump;
import settle.sim.source.IdealSource;

class StarterTest {

  @TempDir Path folder;

  private Scenario read(String text) throws Exception {
    return ScenarioFiles.read(Files.writeString(folder.resolve("house.yaml"), text));
  }

  @Test
  void theStarterIsASoundScenario() throws Exception {
    Scenario scenario = read(Starter.text());
    assertThat(scenario.warnings()).isEmpty();
    assertThat(scenario.house().arrangements()).hasSize(2);
  }

  /** What its comments offer works when it is taken up. */
  /**
   * Mains, heat pump and weather compensation; the branches of both arrangements hang on the mains.
   */
  @Test
  void theCommentsOnThePlantCanBeTakenUp() throws Exception {
    String text =
        Starter.text()
            .replace("  boiler: condensing boiler 12 kW\n  flow temperature: 70 °C\n", "")
            .replace("  #   heat pump: ", "  heat pump: ")
            .replace("  #   flow temperature: ", "  flow temperature: ")
            .replace("  #   buffer: ", "  buffer: ")
            .replace("  #   mains:", "  mains:")
            .replace("  #     riser:", "    riser:")
            .replace("  #     first floor:", "    first floor:")
            .replace("pipe length: 12 m,", "pipe length: 12 m, fed from: first floor,");
    House house = read(text).house();
    assertThat(house.source()).isInstanceOf(HeatPump.class);
    assertThat(house.buffer()).isPresent();
    assertThat(house.control().flowCurve()).isPresent();
    assertThat(house.distribution().mains()).hasSize(2);
    assertThat(house.arrangements().get(1).branches().get(1).fedFrom()).isEqualTo("first floor");
  }

  @Test
  void theCommentsCanBeTakenUp() throws Exception {
    String text =
        Starter.text()
            .replace("  boiler: condensing boiler 12 kW\n  flow temperature: 70 °C\n", "")
            .replace("  #   fixed flow", "  fixed flow")
            .replaceAll("(?m)^  #   (emitters:|  my skirting.*|                .*)$", "$1")
            .replace("emitter: skirting 170, length: 8.5 m", "emitter: my skirting, length: 8.5 m");
    Scenario scenario = read(text);
    assertThat(scenario.warnings()).isEmpty();
    assertThat(scenario.house().source()).isInstanceOf(IdealSource.class);
    assertThat(scenario.house().source().flowSetPoint()).isEqualTo(45);
    assertThat(scenario.house().arrangements().get(0).branches().get(1).emitter().name())
        .isEqualTo("my skirting");
  }
}
