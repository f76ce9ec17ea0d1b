package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StarterTest {

  @TempDir Path folder;

  private Scenario read(String text) throws Exception {
    return ScenarioReader.read(Files.writeString(folder.resolve("house.yaml"), text));
  }

  @Test
  void theStarterIsASoundScenario() throws Exception {
    Scenario scenario = read(Starter.text());
    assertThat(scenario.warnings()).isEmpty();
    assertThat(scenario.house().arrangements()).hasSize(2);
  }

  /** What its comments offer works when it is taken up. */
  @Test
  void theCommentsCanBeTakenUp() throws Exception {
    String text =
        Starter.text()
            .replace("  boiler: condensing boiler 12 kW\n  flow temperature: 70 °C\n", "")
            .replace("  #   fixed flow", "  fixed flow")
            .replaceAll("(?m)^  #   (emitters:|  my skirting.*|                .*)$", "$1")
            .replace("emitter: skirting 140, length: 6.1 m", "emitter: my skirting, length: 6.1 m");
    Scenario scenario = read(text);
    assertThat(scenario.warnings()).isEmpty();
    assertThat(scenario.house().source().flowSetPoint()).isEqualTo(45);
    assertThat(scenario.house().arrangements().get(0).branches().get(1).emitter().name())
        .isEqualTo("my skirting");
  }
}
