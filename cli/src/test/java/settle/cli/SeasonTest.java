package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Weeks of hourly weather, as a script runs them. */
class SeasonTest {

  /** Open hourly data; source and licence are in the file. */
  private static final Path HOURS =
      Path.of("..", "sim", "src", "test", "resources", "weather", "seattle-hourly-normals.csv");

  @TempDir Path folder;

  private Path scenario(String series) throws IOException {
    Files.copy(HOURS, folder.resolve("hours.csv"));
    String room = Files.readString(Scenarios.warm(folder));
    return Scenarios.write(
        folder,
        room.replace(
                "  design outdoor: -3 °C\n",
                "  design outdoor: -3 °C\n  weather: {series: {file: hours.csv%s}}\n"
                    .formatted(series))
            .replace("length: 12 h", "length: 40 d"));
  }

  @Test
  void weeksAcrossNewYearAreToldAndDrawnByTheDay() throws IOException {
    Path out = folder.resolve("result");
    CommandLineRun run =
        CommandLineRun.of("compare", scenario(", every year: yes, from: 2010-12-10"), "--out", out);
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("40 days simulated", "the room keeps up");
    assertThat(out.resolve("plots/rooms.svg"))
        .content()
        .contains("each day’s mean while wanted", ">Jan<")
        .doesNotContain("day 1");
    assertThat(out.resolve("plots/rooms.svg"))
        .satisfies(f -> assertThat(f.toFile().length()).isLessThan(60_000));
    assertThat(Files.readAllLines(out.resolve("traces.csv"))).hasSizeBetween(900, 3100);
  }

  @Test
  void weatherThatEndsTooSoonIsToldAtItsPlace() throws IOException {
    CommandLineRun run = CommandLineRun.of("simulate", scenario(", from: 2010-12-10"));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("house.yaml:4:")
        .contains("'hours.csv': covers 2010-01-01T01:00 to 2010-12-31T23:00; the run needs");
  }
}
