package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import settle.scenarios.demo.Demonstrations;

/** demo, as a trainer and a script see it. */
class DemoCommandTest {

  @TempDir Path folder;

  @Test
  void withoutANameTheDemonstrationsAreListed() {
    CommandLineRun run = CommandLineRun.of("demo");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains(Demonstrations.names()).contains("settle demo all");
    assertThat(CommandLineRun.of("demo", "--json").out()).contains("\"name\" : \"droop\"");
  }

  @Test
  void aDemonstrationIsTwoSentencesAndATableOfTheSameFigures() {
    CommandLineRun run = CommandLineRun.of("demo", "droop");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .containsPattern("goes from\\s10 °C to −3 °C")
        .containsPattern(
            "settles at (\\d+\\.\\d °C) instead of (\\d+\\.\\d °C)[^{]*room settles at +\\2 +\\1")
        .doesNotContain("{", "}");
  }

  @Test
  void aDemonstrationThatTouchesOnHarmSaysSo() {
    assertThat(CommandLineRun.of("demo", "no-way-open").out())
        .contains("Beware: Never run a boiler or a pump with every valve shut.");
  }

  @Test
  void anUnknownNameIsToldWithTheNearest() {
    CommandLineRun run = CommandLineRun.of("demo", "drop");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("no demonstration 'drop'; the nearest is 'droop'");
    CommandLineRun homeless = CommandLineRun.of("demo", "--out", folder.resolve("x"));
    assertThat(homeless.status()).isEqualTo(2);
    assertThat(homeless.err()).contains("--out needs the name");
  }

  @Test
  void namesCanBeCompleted() {
    assertThat(CommandLineRun.of("completion").out()).contains(Demonstrations.names());
  }

  @Test
  void outHoldsThePictureTheSheetAndBothScenariosReadyToChange() throws IOException {
    Path out = folder.resolve("droop");
    CommandLineRun run = CommandLineRun.of("demo", "droop", "--out", out, "--json");
    assertThat(run.status()).isZero();
    assertThat(out.resolve("summary.json")).content().isEqualTo(run.out());
    assertThat(out.resolve("summary.txt")).content().contains("Proportional droop");
    assertThat(out.resolve("plots/droop.png")).isNotEmptyFile();
    assertThat(out.resolve("plots/droop.svg"))
        .content()
        .contains("Why is the room cooler", "before 21.8", "after 19.8", "want 21 °C");
    assertThat(out.resolve("report.html")).content().contains("<svg", "Proportional droop");
    for (String side : List.of("before", "after")) {
      Path scenario = out.resolve("scenarios/droop-" + side + ".yaml");
      assertThat(CommandLineRun.of("check", scenario).out()).contains("nothing wrong.");
      String settled = run.out().substring(run.out().indexOf("settledC"));
      String rested = CommandLineRun.of("compare", scenario, "--json").out();
      // The demonstration reads the last hours, the comparison all of the last day.
      assertThat(number(settled, side)).isCloseTo(number(rested, "lastDayOperativeC"), within(0.3));
    }
  }

  /** The first number of a name in a document. */
  private static double number(String json, String name) {
    Matcher found = Pattern.compile('"' + name + "\" : (-?[0-9.]+)").matcher(json);
    assertThat(found.find()).as(name).isTrue();
    return Double.parseDouble(found.group(1));
  }

  /** One file to print, a page for each, and nothing left of a template. */
  @Test
  void allOfThemMakeAHandout() throws IOException {
    Path out = folder.resolve("handout");
    CommandLineRun run = CommandLineRun.of("demo", "all", "--out", out);
    assertThat(run.status()).isZero();
    assertThat(run.out()).doesNotContain("{", "NaN", "null");
    String page = Files.readString(out.resolve("report.html"));
    for (String name : Demonstrations.names()) {
      assertThat(page).contains("<section id=\"" + name + "\">");
      assertThat(out.resolve("plots/" + name + ".png")).isNotEmptyFile();
      assertThat(out.resolve("plots/" + name + ".svg"))
          .content()
          .doesNotContain("{", "NaN")
          .contains("before", "after");
    }
    assertThat(page.split("<section").length - 1).isEqualTo(Demonstrations.names().size());
    assertThat(page).doesNotContain("{{", "NaN");
  }

  @Test
  void quietPrintsNothing() {
    CommandLineRun run = CommandLineRun.of("demo", "hot-pipe", "--quiet");
    assertThat(run.status()).isZero();
    assertThat(run.out() + run.err()).isEmpty();
  }
}
