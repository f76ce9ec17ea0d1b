package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** size, as a script sees it. */
class SizeCommandTest {

  private static final Path BAKERY = Path.of("..", "scenarios", "examples", "bakery.yaml");

  @TempDir Path folder;

  @Test
  void metresStandBesideTheFreeWall() throws IOException {
    CommandLineRun run = CommandLineRun.of("size", Scenarios.warm(folder));
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("free wall", "35 °C", "75 °C", "fits from", "living room");
  }

  @Test
  void flowTemperaturesMayBeNamed() throws IOException {
    CommandLineRun run =
        CommandLineRun.of("size", Scenarios.warm(folder), "--flow", "42,48 °C", "--json");
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("\"flowC\" : 42", "\"flowC\" : 48", "\"askedC\" : ", "\"freeWallMetres\" : ")
        .doesNotContain("\"flowC\" : 35");
  }

  @Test
  void aFlowTemperatureThatCannotBeMeantIsRefused() throws IOException {
    CommandLineRun run = CommandLineRun.of("size", Scenarios.warm(folder), "--flow", "350");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("found 350, expected 20 °C to 90 °C");
  }

  @Test
  void anUnknownArrangementIsNamedWithTheNearest() throws IOException {
    CommandLineRun run =
        CommandLineRun.of("size", Scenarios.warm(folder), "--arrangement", "radiator");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("radiators");
  }

  @Test
  void radiatorsAloneAreTakenToGivePlace() throws IOException {
    CommandLineRun run =
        CommandLineRun.of("size", Scenarios.warm(folder), "--arrangement", "radiators");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("skirting 140").doesNotContain("is laid");
  }

  @Test
  void strictEndsWithOneWhereTheWallIsTooShort() {
    CommandLineRun loose = CommandLineRun.of("size", BAKERY, "--json");
    CommandLineRun strict = CommandLineRun.of("size", BAKERY, "--strict", "--json");
    assertThat(strict.out()).isEqualTo(loose.out());
    assertThat(loose.status()).isZero();
    assertThat(strict.status()).isEqualTo(loose.out().contains("\"fits\" : false") ? 1 : 0);
  }

  @Test
  void thePictureIsWritten() throws IOException {
    Path out = folder.resolve("out");
    CommandLineRun run = CommandLineRun.of("size", Scenarios.warm(folder), "--out", out);
    assertThat(run.status()).isZero();
    assertThat(Files.readString(out.resolve("plots").resolve("metres.svg")))
        .contains("Skirting needed against flow temperature", "free wall");
    assertThat(Files.readString(out.resolve("report.html"))).contains("fits from");
  }
}
