package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** compare and simulate, as a script sees them. */
class RunCommandsTest {

  @TempDir Path folder;

  @Test
  void compareSaysWhatEveryArrangementDoesAndWritesNoFile() throws IOException {
    CommandLineRun run = CommandLineRun.of("compare", Scenarios.warm(folder));
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("Skirting: ", "Radiators: ", "the room keeps up: ");
    assertThat(run.err()).isEmpty();
    assertThat(folder).isDirectoryNotContaining("glob:**/{summary,traces,report,plots}*");
  }

  @Test
  void simulateRunsTheArrangementNamed() throws IOException {
    CommandLineRun run =
        CommandLineRun.of("simulate", Scenarios.warm(folder), "--arrangement", "radiators");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("Radiators: ").doesNotContain("kirting");
  }

  @Test
  void simulateRunsTheFirstArrangementIfNoneIsNamed() throws IOException {
    CommandLineRun run = CommandLineRun.of("simulate", Scenarios.warm(folder));
    assertThat(run.out()).contains("Skirting: ").doesNotContain("adiators");
  }

  @Test
  void anUnknownArrangementIsAnsweredWithTheNearest() throws IOException {
    CommandLineRun run =
        CommandLineRun.of("simulate", Scenarios.warm(folder), "--arrangement", "skirtings");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("'skirtings'").contains("'skirting'");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void jsonIsOneDocumentAndNothingElse() throws IOException {
    CommandLineRun run = CommandLineRun.of("compare", Scenarios.warm(folder), "--json");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(fieldNames(run.out()))
        .startsWith("tool", "version", "command", "scenario", "stepSeconds", "arrangements")
        .doesNotContain("numericalError");
  }

  @Test
  void errorBarsSayHowFarTheFiguresMove() throws IOException {
    Path scenario = Scenarios.warm(folder);
    CommandLineRun json = CommandLineRun.of("simulate", scenario, "--json", "--error-bars");
    assertThat(fieldNames(json.out())).contains("numericalError", "lastOperativeK");
    CommandLineRun text = CommandLineRun.of("simulate", scenario, "--error-bars");
    assertThat(text.out()).contains("Numerical error");
  }

  @Test
  void stepIsTheStepAfterAnEvent() throws IOException {
    CommandLineRun run =
        CommandLineRun.of("simulate", Scenarios.warm(folder), "--json", "--step", "0.5 min");
    assertThat(run.out()).contains("\"stepSeconds\" : 30.0");
  }

  @Test
  void outHoldsEveryFileAndTheSameDocumentAsJson() throws IOException {
    Path scenario = Scenarios.warm(folder);
    Path out = folder.resolve("result");
    CommandLineRun run = CommandLineRun.of("compare", scenario, "--json", "--out", out);
    assertThat(run.status()).isZero();
    assertThat(out.resolve("summary.json")).content().isEqualTo(run.out());
    assertThat(out.resolve("summary.txt")).content().contains("Source and water");
    assertThat(out.resolve("traces.csv")).content().startsWith("time [h],");
    assertThat(out.resolve("plots/rooms.svg")).content().contains("<svg");
    assertThat(out.resolve("plots/rooms.png")).isNotEmptyFile();
    assertThat(out.resolve("report.html"))
        .content()
        .contains("<svg", "living room: surfaces", "pump head", "not a design certificate");
    assertThat(folder).isDirectoryNotContaining("glob:**/.*");
  }

  @Test
  void quietPrintsNothing() throws IOException {
    Path out = folder.resolve("result");
    CommandLineRun run = CommandLineRun.of("compare", Scenarios.warm(folder), "-q", "--out", out);
    assertThat(run.status()).isZero();
    assertThat(run.out()).isEmpty();
    assertThat(out.resolve("summary.txt")).isNotEmptyFile();
  }

  @Test
  void neverWarmIsAnAnswerUnlessStrict() throws IOException {
    Path scenario = Scenarios.cold(folder);
    CommandLineRun answer = CommandLineRun.of("compare", scenario);
    assertThat(answer.status()).isZero();
    assertThat(answer.out())
        .contains("never comes within")
        .containsPattern("does\\snot\\skeep\\sup");
    CommandLineRun strict = CommandLineRun.of("compare", scenario, "--strict");
    assertThat(strict.status()).isEqualTo(1);
    assertThat(strict.out()).isEqualTo(answer.out());
    assertThat(CommandLineRun.of("compare", Scenarios.warm(folder), "--strict").status()).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"compare", "simulate", "check"})
  void aWrongScenarioIsToldWithItsPlaceAndTheNearestName(String command) throws IOException {
    Path scenario = Scenarios.warm(folder);
    Files.writeString(
        scenario, Files.readString(scenario).replace("design outdoor", "design outdor"));
    CommandLineRun run = CommandLineRun.of(command, scenario);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith("settle: " + scenario + ":3:3: ")
        .contains("'design outdor'")
        .contains("'design outdoor'")
        .doesNotContain("\tat ");
  }

  @Test
  void aMissingScenarioIsWrongInput() {
    CommandLineRun run = CommandLineRun.of("compare", folder.resolve("none.yaml"));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).startsWith("settle: ").contains("none.yaml").contains("no such file");
  }

  @Test
  void whatCannotBeWrittenIsNamedAndLeftAlone() throws IOException {
    Path inTheWay = Files.writeString(folder.resolve("result"), "mine");
    CommandLineRun run = CommandLineRun.of("compare", Scenarios.warm(folder), "--out", inTheWay);
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("settle: cannot write ").contains(inTheWay.toString());
    assertThat(inTheWay).hasContent("mine");
  }

  @Test
  void aStackTraceIsShownOnlyIfAskedFor() {
    Path none = folder.resolve("none.yaml");
    assertThat(CommandLineRun.of("compare", none).err()).doesNotContain("\tat ");
    assertThat(CommandLineRun.of("compare", none, "--debug").err()).contains("\tat settle.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"3 K", "ten", "0 s", "-5 s"})
  void aWrongStepSaysWhatIsExpected(String step) throws IOException {
    CommandLineRun run = CommandLineRun.of("compare", Scenarios.warm(folder), "--step=" + step);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("--step").contains(step).contains("expected");
  }

  @Test
  void aMisspeltOptionIsAnsweredWithTheNearest() throws IOException {
    CommandLineRun run = CommandLineRun.of("compare", Scenarios.warm(folder), "--strikt");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("unknown option '--strikt'").contains("--strict");
  }

  private static List<String> fieldNames(String document) throws IOException {
    List<String> names = new ArrayList<>();
    try (JsonParser json = new JsonFactory().createParser(document)) {
      while (json.nextToken() != null) {
        if (json.currentToken() == com.fasterxml.jackson.core.JsonToken.FIELD_NAME) {
          names.add(json.currentName());
        }
      }
    }
    return names;
  }
}
