package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** verdict, as a script sees it. */
class VerdictCommandTest {

  @TempDir Path folder;

  @Test
  void everyArrangementIsAnsweredYesOrNo() throws IOException {
    CommandLineRun run = CommandLineRun.of("verdict", Scenarios.warm(folder));
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("Skirting: yes: at −3 °C", "Radiators: yes: at −3 °C", "Least flow", "Season: ");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void aColdHouseIsAnAnswerUnlessStrict() throws IOException {
    Path scenario = Scenarios.cold(folder);
    CommandLineRun answer = CommandLineRun.of("verdict", scenario);
    assertThat(answer.status()).isZero();
    assertThat(answer.out()).contains("Skirting: no: at −3 °C", "flow at ", "more skirting");
    CommandLineRun strict = CommandLineRun.of("verdict", scenario, "--strict");
    assertThat(strict.status()).isEqualTo(1);
    assertThat(strict.out()).isEqualTo(answer.out());
    assertThat(CommandLineRun.of("verdict", Scenarios.warm(folder), "--strict").status()).isZero();
  }

  @Test
  void jsonIsOneDocumentAndNothingElse() throws IOException {
    CommandLineRun run = CommandLineRun.of("verdict", Scenarios.cold(folder), "--json");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("{")
        .endsWith("}\n")
        .contains(
            "\"command\" : \"verdict\"",
            "\"keepsUp\" : false",
            "\"holdingOutdoorC\" : ",
            "\"loadW\" : ",
            "\"leastCurve\" : {",
            "\"warmUpFromSetback\" : null",
            "\"heatPump\" : null",
            "\"boiler\" : null",
            "\"seasonalFactor\" : null",
            "\"flowAskedC\" : 25.0",
            "\"kind\" : \"flow_temperature\"");
  }

  @Test
  void outHoldsAPageForTheHouseholderAndTheDesignersTables() throws IOException {
    Path out = folder.resolve("answer");
    CommandLineRun run =
        CommandLineRun.of("verdict", Scenarios.cold(folder), "--json", "--out", out);
    assertThat(run.status()).isZero();
    assertThat(out.resolve("summary.json")).content().isEqualTo(run.out());
    assertThat(out.resolve("summary.txt")).content().contains("Skirting: no");
    assertThat(out.resolve("plots/need-and-delivery.svg")).content().contains("design day, −3 °C");
    assertThat(out.resolve("plots/least-flow.png")).isNotEmptyFile();
    assertThat(out.resolve("plots/weather-compensation.png")).isNotEmptyFile();
    assertThat(out.resolve("report.html"))
        .content()
        .containsSubsequence(
            "Is it warm enough at −3 °C outside?",
            "No. On a cold day (−3 °C outside) living room does not get as warm",
            "<svg",
            "What to do",
            "for the designer",
            "Least flow",
            "not a design certificate");
  }

  @Test
  void quietPrintsNothing() throws IOException {
    CommandLineRun run = CommandLineRun.of("verdict", Scenarios.warm(folder), "--quiet");
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).isEmpty();
  }

  @Test
  void aWrongScenarioIsToldWithItsPlace() throws IOException {
    Path scenario = Scenarios.warm(folder);
    Files.writeString(
        scenario, Files.readString(scenario).replace("design outdoor", "design outdor"));
    CommandLineRun run = CommandLineRun.of("verdict", scenario);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("settle: " + scenario + ":3:3: ");
  }
}
