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
  void oddsSayOnHowManyHousesItKeepsUpAndWhatMattersMost() throws IOException {
    Path scenario = Scenarios.warm(folder);
    CommandLineRun run = CommandLineRun.of("verdict", scenario, "--odds", 64);
    assertThat(run.out())
        .containsPattern("Odds: \\d+ of 100 such houses keep every room warm")
        .contains("64 tried", "What matters most: where each valve is set (± 0.7 K) 0.");
    // By default four times as many, and the same ones each time.
    String all = CommandLineRun.of("verdict", scenario).out();
    assertThat(all).contains("256 tried");
    assertThat(CommandLineRun.of("verdict", scenario).out()).isEqualTo(all);
    assertThat(CommandLineRun.of("verdict", scenario, "--odds", 0).out()).doesNotContain("Odds");
  }

  @Test
  void oddsAreInEveryOutput() throws IOException {
    Path out = folder.resolve("answer");
    CommandLineRun run =
        CommandLineRun.of("verdict", Scenarios.warm(folder), "--odds", 60, "--json", "--out", out);
    assertThat(run.out())
        .contains(
            "\"odds\" : {",
            "\"samples\" : 64",
            "\"keepUpShare\" : ",
            "\"standardError\" : ",
            "\"converged\" : ",
            "\"keepUpShareHeadsTurnedUp\" : 1.0",
            "\"failsShare\" : ",
            "\"what\" : \"valve_setting\"",
            "\"rankCorrelation\" : -0.9",
            "\"spreadUnit\" : \"K\"",
            "\"convergence\" : [");
    assertThat(out.resolve("plots/odds-what-matters.svg")).content().contains("U-values, ± 15 %");
    assertThat(out.resolve("plots/odds-convergence.png")).isNotEmptyFile();
    assertThat(out.resolve("report.html"))
        .content()
        .containsSubsequence(
            "Of 100 houses like this, warm enough",
            "What to do",
            "for the designer",
            "such houses keep every room warm",
            "What decides whether the house keeps up");
    assertThat(CommandLineRun.of("verdict", Scenarios.warm(folder), "--json", "--odds", 0).out())
        .contains("\"odds\" : null");
  }

  @Test
  void wrongNumbersOfHousesAreErrors() throws IOException {
    for (String wrong : new String[] {"5", "-8", "many", "1000000", "99999999999"}) {
      CommandLineRun run = CommandLineRun.of("verdict", Scenarios.warm(folder), "--odds=" + wrong);
      assertThat(run.status()).as(wrong).isEqualTo(2);
      assertThat(run.out()).isEmpty();
      assertThat(run.err())
          .contains("found " + wrong + ", expected 8 to 65536 houses, or 0 for none");
    }
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
