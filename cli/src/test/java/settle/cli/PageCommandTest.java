package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the command does about files; pages themselves are opened where their engine is compiled.
 */
class PageCommandTest {

  @TempDir Path folder;

  @BeforeEach
  void engine() throws IOException {
    Path script = folder.resolve("engine/javascript/settle.js");
    Files.createDirectories(script.getParent());
    Files.writeString(script, "rest = () => 1;");
    System.setProperty(PageCommand.ENGINE, folder.resolve("engine").toString());
  }

  @AfterEach
  void none() {
    System.clearProperty(PageCommand.ENGINE);
  }

  @Test
  void writesAPageAndLeavesAFileThatIsThereAlone() throws IOException {
    Path out = folder.resolve("house.html");
    CommandLineRun first =
        CommandLineRun.of("page", Scenarios.warm(folder), "--out", out, "--javascript");
    assertThat(first.status()).as(first.err()).isZero();
    assertThat(first.out()).contains("house.html is written");
    assertThat(out).content().startsWith("<!DOCTYPE html>").contains("default-src 'none'");
    Files.writeString(out, "mine");
    CommandLineRun second = CommandLineRun.of("page", "--out", out, "--javascript");
    assertThat(second.status()).isEqualTo(3);
    assertThat(second.err()).contains("--force");
    assertThat(out).hasContent("mine");
    assertThat(CommandLineRun.of("page", "--out", out, "--javascript", "--force").status())
        .isZero();
    assertThat(out).content().startsWith("<!DOCTYPE html>");
  }

  @Test
  void saysWhatIsWrongWithAScenarioAndWritesNothing() throws IOException {
    Path scenario = Scenarios.warm(folder);
    Files.writeString(scenario, Files.readString(scenario).replace("55 °C", "warm"));
    Path out = folder.resolve("house.html");
    CommandLineRun run = CommandLineRun.of("page", scenario, "--out", out, "--javascript");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("warm");
    assertThat(out).doesNotExist();
  }

  @Test
  void saysThatTheEngineIsNotBuilt() throws IOException {
    Path out = folder.resolve("house.html");
    CommandLineRun run = CommandLineRun.of("page", Scenarios.warm(folder), "--out", out);
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err()).contains("not built");
    assertThat(out).doesNotExist();
  }

  @Test
  void asksWhereToWrite() throws IOException {
    assertThat(CommandLineRun.of("page", Scenarios.warm(folder)).status()).isEqualTo(2);
  }
}
