package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
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
}
