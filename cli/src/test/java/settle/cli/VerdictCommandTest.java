package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** verdict, as a script sees it. */
class VerdictCommandTest {

  /** Houses to try where it does not matter how many. */
  private static final int FEW = 16;

  @TempDir Path folder;

  @Test
  void everyArrangementIsAnsweredYesOrNo() throws IOException {
    CommandLineRun run = CommandLineRun.of("verdict", Scenarios.warm(folder), "--full");
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .containsPattern(
            "Skirting: yes: from −3 °C to 15 °C outdoors the room is held \\(run at −3 °C and\\s15 °C\\)")
        .contains("Radiators: yes: ", "Least flow", "Season: ")
        .containsPattern("At\\srest,\\snot\\srun:\\sload");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void aColdHouseIsAnAnswerUnlessStrict() throws IOException {
    Path scenario = Scenarios.cold(folder);
    CommandLineRun answer = CommandLineRun.of("verdict", scenario, "--odds", FEW, "--full");
    assertThat(answer.status()).isZero();
    assertThat(answer.out()).contains("Skirting: no: at −3 °C", "flow at ", "more skirting");
    CommandLineRun strict =
        CommandLineRun.of("verdict", scenario, "--odds", FEW, "--strict", "--full");
    assertThat(strict.status()).isEqualTo(1);
    assertThat(strict.out()).isEqualTo(answer.out());
    assertThat(CommandLineRun.of("verdict", Scenarios.warm(folder), "--strict").status()).isZero();
  }

  /** The answer, the rooms and what to do come first; the rest is a word away. */
  @Test
  void theAnswerIsShortUnlessAllOfItIsAskedFor() throws IOException {
    Path scenario = Scenarios.cold(folder);
    String brief = CommandLineRun.of("verdict", scenario, "--odds", FEW).out();
    String full = CommandLineRun.of("verdict", scenario, "--odds", FEW, "--full").out();
    assertThat(brief)
        .contains("Skirting: no: at −3 °C", "Least flow", "To hold every room:", "--full")
        .doesNotContain("Season: ", "Tried one at a time");
    assertThat(full).contains("Season: ", "Tried one at a time").doesNotContain("--full");
    assertThat(brief.lines().count()).isLessThan(full.lines().count() * 2 / 3);
    assertThat(brief.lines()).allMatch(line -> line.length() <= 80);
    assertThat(full.lines()).allMatch(line -> line.length() <= 80);
  }

  /** What is written is a scenario that the same command answers with yes. */
  @Test
  void theHouseThatIsWrittenIsAYes() throws IOException {
    Path scenario = Scenarios.cold(folder);
    String asTyped = Files.readString(scenario);
    Path written = folder.resolve("remedied.yaml");
    CommandLineRun run = CommandLineRun.of("verdict", scenario, "--odds", FEW, "--write", written);
    assertThat(run.status()).isZero();
    assertThat(run.out()).containsPattern("Written\\sto\\s");
    assertThat(scenario).content().isEqualTo(asTyped);
    CommandLineRun again = CommandLineRun.of("verdict", written, "--odds", FEW, "--strict");
    assertThat(again.status()).isZero();
    assertThat(again.out()).contains("Skirting: yes: ", "Radiators: yes: ");
    CommandLineRun kept = CommandLineRun.of("verdict", scenario, "--write", written);
    assertThat(kept.status()).as("never over a file that is there").isEqualTo(3);
  }

  @Test
  void jsonIsOneDocumentAndNothingElse() throws IOException {
    CommandLineRun run =
        CommandLineRun.of("verdict", Scenarios.cold(folder), "--odds", FEW, "--json");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("{")
        .endsWith("}\n")
        .contains(
            "\"command\" : \"verdict\"",
            "\"answer\" : \"no\"",
            "\"confirmedByRun\" : true",
            "\"keepsUp\" : false",
            "\"cause\" : \"cool_water\"",
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
        CommandLineRun.of("verdict", Scenarios.cold(folder), "--odds", FEW, "--json", "--out", out);
    assertThat(run.status()).isZero();
    assertThat(out.resolve("summary.json")).content().isEqualTo(run.out());
    assertThat(out.resolve("summary.txt")).content().contains("Skirting: no");
    assertThat(out.resolve("plots/need-and-delivery.svg")).content().contains("design day, −3 °C");
    assertThat(out.resolve("plots/least-flow.png")).isNotEmptyFile();
    assertThat(out.resolve("plots/weather-compensation.png")).isNotEmptyFile();
    assertThat(out.resolve("report.html"))
        .content()
        .containsSubsequence(
            "Is it warm enough at −3",
            "No. On a cold day (−3",
            "living room does not get as warm as you want: ",
            "<svg",
            "What to do",
            "<section class=\"designer\">",
            "Least flow",
            "not a design certificate");
  }

  @Test
  void quietPrintsNothing() throws IOException {
    CommandLineRun run =
        CommandLineRun.of("verdict", Scenarios.warm(folder), "--odds", FEW, "--quiet");
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).isEmpty();
  }

  @Test
  void oddsSayOnHowManyHousesItKeepsUpAndWhatMattersMost() throws IOException {
    Path scenario = Scenarios.warm(folder);
    CommandLineRun run = CommandLineRun.of("verdict", scenario, "--odds", 64, "--full");
    assertThat(run.out())
        .containsPattern("Odds: \\d+ of 100 houses drawn at random")
        .contains("64 tried", "What matters most: where each valve is set (± 0.7 K) 0.");
    // By default four times as many, and the same ones each time.
    String all = CommandLineRun.of("verdict", scenario, "--full").out();
    assertThat(all).contains("256 tried");
    assertThat(CommandLineRun.of("verdict", scenario, "--full").out()).isEqualTo(all);
    assertThat(CommandLineRun.of("verdict", scenario, "--odds", 0, "--full").out())
        .contains("Odds: no houses like it were tried, so a yes may be an only just.");
  }

  /** Water so cool that the room as stated is held and little more. */
  @Test
  void onlyJustIsNoNoNamesTheRoomAndWhatLiftsIt() throws IOException {
    Path scenario = Scenarios.justWarm(folder);
    Path out = folder.resolve("answer");
    CommandLineRun run = CommandLineRun.of("verdict", scenario, "--strict", "--out", out);
    assertThat(run.status()).isZero();
    assertThat(out.resolve("summary.txt"))
        .content()
        .contains("Skirting: only just: as stated from −3 °C to 15 °C outdoors the room is held")
        .containsPattern("but only \\d+ of\\s100\\shouses\\slike\\sit\\sare\\sheld")
        .containsPattern(
            "With\\sone\\schange,\\s8\\d\\sof\\s100\\shouses\\slike\\sit\\sare\\sheld\\s\\(at\\srest,\\snot\\srun\\):\\slockshield\\sopened");
    assertThat(out.resolve("summary.json"))
        .content()
        .contains("\"answer\" : \"onlyJust\"", "\"lift\" : {", "\"enough\" : true");
    assertThat(out.resolve("report.html"))
        .content()
        .contains("Only just. On a cold day", "To be sure: lockshield opened: ")
        .doesNotContain("Nothing is needed");
    // As many as are asked for are enough.
    Path modest = Scenarios.write(folder, Files.readString(scenario) + "aims: {sure: 5 %}\n");
    assertThat(CommandLineRun.of("verdict", modest).out()).contains("Skirting: yes: ");
    assertThat(CommandLineRun.of("verdict", scenario, "--odds", 0, "--json").out())
        .doesNotContain("onlyJust");
  }

  /** Countries where design weather is milder than any heating season. */
  @Test
  void anyDesignTemperatureIsAnswered() throws IOException {
    for (String design : new String[] {"-25", "14.5", "15", "16", "19", "24"}) {
      Path scenario = Scenarios.warm(folder);
      Files.writeString(
          scenario,
          Files.readString(scenario).replace("design outdoor: -3", "design outdoor: " + design));
      Path out = folder.resolve("answer");
      CommandLineRun run =
          CommandLineRun.of("verdict", scenario, "--odds", 16, "--json", "--out", out);
      assertThat(run.err()).as(design).isEmpty();
      assertThat(run.status()).as(design).isZero();
      assertThat(run.out()).as(design).contains("\"confirmedByRun\" : true");
    }
  }

  /** Warm in the cold and starved when it is mild. */
  @Test
  void aCurveThatStarvesTheHouseInMildWeatherIsANoThatNamesTheTemperature() throws IOException {
    Path scenario = Scenarios.warm(folder);
    Files.writeString(
        scenario,
        Files.readString(scenario)
            + "control: {weather compensation: {slope: 2, shift: -11 K, lowest: 20 °C, highest: 70 °C}}\n");
    CommandLineRun run = CommandLineRun.of("verdict", scenario, "--strict", "--odds", 0);
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out())
        .contains("Skirting: no: at 14.5 °C outdoors living room settles at ")
        .containsPattern("held\\sonly\\sin\\scolder\\sweather, not from \\d+\\.\\d °C\\sup")
        .containsPattern("the\\sweather\\scompensation\\sasks\\sfor\\s20.0 °C");
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
            "\"keepUpHeadsTurnedUpShare\" : 1.0",
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
            "Houses like this that stay warm on the cold day",
            "What to do",
            "<section class=\"designer\">",
            "houses drawn at random",
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
