package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.DefaultUsed;

/** What is assumed of branches, and what is said of it. */
class AssumedPipesTest {

  @TempDir Path folder;

  private Scenario read(String hall, String everyRoom) throws Exception {
    return ScenarioFiles.read(
        Files.writeString(
            folder.resolve("house.yaml"),
            """
            site: {design outdoor: -3 °C}
            rooms: {hall: {size: 6 x 4 x 2.5 m, want: 21 °C}, loft: {size: 6 x 4 x 2.5 m, want: 45 °C}}
            arrangements:
              one: {every room: {%s}, rooms: {hall: {%s}, loft: {emitter: skirting 140, length: 1 m}}}
            source: {fixed flow: 49 °C}
            """
                .formatted(everyRoom, hall)));
  }

  private List<String> doubts(String hall, String everyRoom) throws Exception {
    return read(hall, everyRoom).warnings().stream()
        .map(Object::toString)
        .filter(w -> w.contains("pipe length"))
        .toList();
  }

  /** 10 m of bare 15 mm pipe at 44 °C in a room of 21 °C: 4.71 W/K by the law of its loss. */
  @Test
  void anAssumedPipeThatWarmsARoomIsDoubtful() throws Exception {
    List<String> doubts = doubts("emitter: skirting 140, length: 2.5 m", "");
    assertThat(doubts).hasSize(1);
    assertThat(doubts.get(0))
        .contains(
            "arrangements / one: has no 'pipe length'", "10 m of pipe", "108 W to hall beside")
        // No water as cool as that room's want gives it anything.
        .doesNotContain("loft");
  }

  @Test
  void aPipeThatIsWrittenIsNot() throws Exception {
    String hall = "emitter: skirting 140, length: 3.5 m";
    assertThat(doubts(hall + ", pipe length: 10 m", "")).isEmpty();
    assertThat(doubts(hall, "pipe length: 10 m")).isEmpty();
  }

  @Test
  void norIsOneThatGivesLittle() throws Exception {
    assertThat(doubts("emitter: skirting 140, length: 20 m", "")).isEmpty();
    assertThat(doubts("emitter: skirting 140, length: 3.5 m", "pipe insulation: 25 mm")).isEmpty();
  }

  /** Only a thermostatic valve has a proportional band to be told of. */
  @Test
  void theReasonOfASettingIsThatOfItsValve() throws Exception {
    assertThat(reason("thermostatic valve")).contains("half the proportional band below want");
    assertThat(reason("electrothermal actuator")).startsWith("want,").doesNotContain("band");
    assertThat(reason("motor head")).startsWith("want,").doesNotContain("band");
  }

  private String reason(String valve) throws Exception {
    return read("emitter: skirting 140, length: 20 m, valve: " + valve, "").defaultsUsed().stream()
        .filter(d -> d.key().equals("set") && d.where().endsWith("hall"))
        .map(DefaultUsed::reason)
        .findFirst()
        .orElseThrow();
  }
}
