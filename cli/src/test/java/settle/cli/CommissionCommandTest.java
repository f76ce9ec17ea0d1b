package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** commission, as a script sees it. */
class CommissionCommandTest {

  private static final Path TERRACE = Path.of("..", "scenarios", "examples", "mid-terrace.yaml");

  @TempDir Path folder;

  @Test
  void settingsVentingAndReadingsAreSaid() {
    CommandLineRun run = CommandLineRun.of("commission", TERRACE.toString());
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("constant pressure, 15.0 kPa", "⅞ turn", "carries air", "far end", "1 h after");
  }

  @Test
  void theDayIsAsItIsAskedFor() {
    CommandLineRun run =
        CommandLineRun.of(
            "commission",
            TERRACE.toString(),
            "--outdoor",
            "-2",
            "--start",
            "10 °C",
            "--read-after",
            "45",
            "--flow",
            "50",
            "--arrangement",
            "radiators",
            "--json");
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains(
            "\"arrangement\" : \"radiators\"",
            "\"outdoorC\" : -2",
            "\"startC\" : 10",
            "\"readAfterMinutes\" : 45",
            "\"farEndC\" : null");
  }

  @Test
  void aDayThatCannotBeIsRefused() throws IOException {
    assertThat(CommandLineRun.of("commission", Scenarios.warm(folder), "--start", "80").err())
        .contains("temperature at the start");
    CommandLineRun late =
        CommandLineRun.of("commission", Scenarios.warm(folder), "--read-after", "5");
    assertThat(late.status()).isEqualTo(2);
    assertThat(late.err()).contains("time of the readings");
    CommandLineRun word =
        CommandLineRun.of("commission", Scenarios.warm(folder), "--outdoor", "8 K");
    assertThat(word.status()).isEqualTo(2);
    assertThat(word.err()).contains("8 K");
  }

  @Test
  void anUnknownArrangementIsNamedWithTheNearest() {
    CommandLineRun run =
        CommandLineRun.of("commission", TERRACE.toString(), "--arrangement", "radiator");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("radiators");
  }

  @Test
  void sheetsAndTablesAreWrittenAndNothingElseIsNeeded() throws IOException {
    Path out = folder.resolve("sheets");
    CommandLineRun run =
        CommandLineRun.of("commission", TERRACE.toString(), "--out", out.toString(), "--quiet");
    assertThat(run.status()).isZero();
    for (String sheet : List.of("first-fix.html", "commissioning.html")) {
      assertThat(Files.readString(out.resolve(sheet)))
          .contains("size: A4", "Mid-terrace", "living room")
          .doesNotContain("src=", "href=", "<script", "{{");
    }
    assertThat(Files.readString(out.resolve("first-fix.html")))
        .contains("<svg", "7 lengths of 3.00", "Pressure test", "120 mm");
    assertThat(Files.readString(out.resolve("venting.csv"))).startsWith("room,in turn");
    assertThat(Files.readString(out.resolve("material.csv"))).contains("15 mm copper,128 m");
    assertThat(out.resolve("summary.json")).exists();
    assertThat(out.resolve("report.html")).doesNotExist();
  }

  @Test
  void theFormIsWhatAcceptReads() throws IOException {
    Path out = folder.resolve("sheets");
    CommandLineRun.of("commission", TERRACE.toString(), "--out", out.toString(), "--quiet");
    String form = Files.readString(out.resolve("readings.csv"));
    assertThat(form).startsWith("room,return °C,far end °C,air °C,minutes");
    Path filled =
        Files.writeString(
            folder.resolve("filled.csv"),
            form.replace("source flow,,", "source flow,70,")
                .replaceAll("(?m)^(living room|dining room|kitchen),,,", "$1,52,54,19"));
    CommandLineRun accept = CommandLineRun.of("accept", TERRACE.toString(), filled.toString());
    assertThat(accept.err()).isEmpty();
    assertThat(accept.status()).isZero();
    assertThat(accept.out()).contains("10 readings");
  }

  @Test
  void namesThatLookLikeMarkupAreShownAsTheyAre() throws IOException {
    Path house =
        Files.writeString(
            folder.resolve("house.yaml"),
            """
            title: "<b>House</b> & {{garden}}"
            rooms:
              "=kitchen <west> & a name as long as names may be, or nearly":
                size: 4 x 3 x 2.4 m
                walls:
                  - {name: "front </svg>", length: 4 m}
                  - {name: side, length: 3 m, doors: 0.9 m, doors at: 1 m}
                  - {name: back, length: 4 m}
                  - {name: other, length: 3 m}
                surfaces:
                  - {name: "front </svg>", wall: outdoors, area: 4 x 2.4 m, U-value: 0.5 W/m²K}
            arrangements:
              one:
                rooms:
                  "=kitchen <west> & a name as long as names may be, or nearly":
                    {emitter: skirting 140, length: 4.5 m, other run: 1 m, pipes come: from above}
            source: {fixed flow: 55 °C}
            """);
    Path out = folder.resolve("sheets");
    CommandLineRun run =
        CommandLineRun.of("commission", house.toString(), "--out", out.toString(), "--quiet");
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    assertThat(Files.readString(out.resolve("first-fix.html")))
        .contains("&lt;b&gt;House", "&lt;west&gt;", "out to both sides and back")
        .doesNotContain("<b>House", "<west>", "front </svg>");
    assertThat(Files.readString(out.resolve("readings.csv"))).contains("'=kitchen");
  }
}
