package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** check, new and catalogue: what a scenario says, leaves out, and can use. */
class LookUpCommandsTest {

  @TempDir Path folder;

  @Test
  void checkListsTheDefaultsTakenWithTheirSource() throws IOException {
    CommandLineRun run = CommandLineRun.of("check", Scenarios.warm(folder));
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("nothing wrong").contains("pump head: 15 kPa (");
    assertThat(CommandLineRun.of("check", "-q", Scenarios.warm(folder)).out())
        .contains("nothing wrong")
        .doesNotContain("pump head");
  }

  /** However long the path is, the answer is not broken across lines, and no line is too long. */
  @Test
  void checkSaysItsAnswerOnOneLine() throws IOException {
    Path scenario = Scenarios.warm(folder);
    for (int length = 1; length < 90; length += 3) {
      Path file = Files.copy(scenario, folder.resolve("h".repeat(length) + ".yaml"));
      assertThat(CommandLineRun.of("check", file).out().lines())
          .as("%d characters", length)
          .allMatch(line -> line.length() <= 80)
          .anyMatch(line -> line.endsWith("nothing wrong."));
    }
  }

  @Test
  void checkTellsEveryMistakeInADocumentToo() throws IOException {
    Path scenario = Scenarios.warm(folder);
    CommandLineRun right = CommandLineRun.of("check", scenario, "--json");
    assertThat(right.status()).isZero();
    assertThat(right.out()).contains("\"problems\" : [ ]").contains("\"key\" : \"pump head\"");
    Files.writeString(
        scenario, Files.readString(scenario).replace("0.7 /h", "0.7 K").replace("55 °C", "warm"));
    CommandLineRun wrong = CommandLineRun.of("check", scenario, "--json");
    assertThat(wrong.status()).isEqualTo(2);
    assertThat(wrong.out()).contains("\"line\" : 8").contains("\"line\" : 20");
    assertThat(wrong.err()).isEmpty();
  }

  @Test
  void newWritesAScenarioThatRunsAndNeverOverwrites() throws IOException {
    Path file = folder.resolve("house.yaml");
    assertThat(CommandLineRun.of("new", file).status()).isZero();
    assertThat(CommandLineRun.of("new").out()).isEqualTo(Files.readString(file));
    assertThat(CommandLineRun.of("compare", file).status()).isZero();
    Files.writeString(file, "mine");
    CommandLineRun again = CommandLineRun.of("new", file);
    assertThat(again.status()).isEqualTo(3);
    assertThat(again.err()).startsWith("settle: cannot write ").contains("house.yaml");
    assertThat(file).hasContent("mine");
  }

  @Test
  void newMakesAScenarioOfASurveyOrNothing() throws IOException {
    Path survey = Path.of("..", "scenarios", "examples", "survey.csv");
    Path file = folder.resolve("house.yaml");
    CommandLineRun made = CommandLineRun.of("new", "--from", survey, file);
    assertThat(made.status()).isZero();
    assertThat(made.err()).isEmpty();
    assertThat(made.out()).contains("house.yaml is written").contains("check");
    for (String command : List.of("check", "compare", "size")) {
      assertThat(CommandLineRun.of(command, file).status()).as(command).isZero();
    }
    assertThat(CommandLineRun.of("verdict", file, "--odds", "0").status()).isZero();
    Path wrong = Files.writeString(folder.resolve("w.csv"), "room,size,want\nden,3 x 3 m,20\n");
    Path none = folder.resolve("none.yaml");
    CommandLineRun refused = CommandLineRun.of("new", "--from", wrong, none);
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err().lines())
        .hasSize(3)
        .allMatch(line -> line.startsWith("settle: " + wrong + ":"));
    assertThat(none).doesNotExist();
    assertThat(CommandLineRun.of("new", "--from", survey, file).status()).isEqualTo(3);
  }

  @Test
  void newWritesTheHeadingsOfAnEmptySurvey() {
    assertThat(CommandLineRun.of("new", "--template").out()).startsWith("room,floor,length (m)");
  }

  @Test
  void catalogueListsEveryKindWithFiguresAndSources() {
    CommandLineRun run = CommandLineRun.of("catalogue");
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("CONSTRUCTIONS", "EMITTERS", "PIPES", "BOILERS")
        .containsPattern("solid brick wall: U 2\\.\\d+ W/m²K")
        .contains("EN 1057");
  }

  @Test
  void catalogueListsOneKindIfAsked() {
    CommandLineRun run = CommandLineRun.of("catalogue", "pipes");
    assertThat(run.out()).contains("PIPES").doesNotContain("EMITTERS");
    CommandLineRun wrong = CommandLineRun.of("catalogue", "pips");
    assertThat(wrong.status()).isEqualTo(2);
    assertThat(wrong.err()).contains("pips").contains("pipes");
  }

  @Test
  void catalogueIsAlsoADocument() {
    CommandLineRun run = CommandLineRun.of("catalogue", "pipes", "--json");
    assertThat(run.out()).startsWith("{").contains("\"name\" : \"15 mm copper\"", "EN 1057");
  }
}
