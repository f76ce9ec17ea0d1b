package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** What holds for every command line: help, version, and one clear message for a wrong one. */
class CommandLineTest {

  static Stream<CommandLine> commands() {
    CommandLine settle =
        Settle.commandLine(
            new PrintWriter(new StringWriter()),
            new PrintWriter(new StringWriter()),
            Terminal.NONE);
    return settle.getSubcommands().values().stream();
  }

  @Test
  void versionIsTheOneOfTheBuild() {
    CommandLineRun run = CommandLineRun.of("--version");
    assertThat(run.status()).isZero();
    assertThat(run.out()).matches("settle \\d+\\.\\d+\\.\\d+\\R");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void helpListsEveryCommandAndTheExitStatuses() {
    CommandLineRun run = CommandLineRun.of("--help");
    assertThat(run.status()).isZero();
    commands().forEach(c -> assertThat(run.out()).contains(c.getCommandName()));
    assertThat(run.out()).contains("does not keep up").contains("could not finish");
  }

  @ParameterizedTest
  @MethodSource("commands")
  void helpOfEachCommandHasAnExample(CommandLine command) {
    CommandLineRun run = CommandLineRun.of(command.getCommandName(), "--help");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("Example:").contains("settle " + command.getCommandName());
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyOptionSaysWhatItDoes(CommandLine command) {
    assertThat(command.getCommandSpec().options())
        .allSatisfy(o -> assertThat(o.description()).as(o.longestName()).isNotEmpty());
    assertThat(command.getCommandSpec().positionalParameters())
        .allSatisfy(p -> assertThat(p.description()).as(p.paramLabel()).isNotEmpty());
  }

  @Test
  void aMissingCommandIsTheCallersMistake() {
    CommandLineRun run = CommandLineRun.of();
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).startsWith("settle: a command is missing");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void anUnknownCommandIsAnsweredWithTheNearest() {
    CommandLineRun run = CommandLineRun.of("complete");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("unknown command 'complete'").contains("nearest: completion");
    assertThat(run.out()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "/", "/tmp/.."})
  void aFolderForResultsIsNeitherNothingNorEverything(String folder) {
    CommandLineRun run = CommandLineRun.of("compare", "house.yaml", "--out", folder);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("'--out'", "expected a folder for the results");
    assertThat(CommandLineRun.of("demo", "droop", "--out", folder).status()).isEqualTo(2);
  }

  @Test
  void aFileWithoutANameIsNoFile() {
    for (String command : List.of("compare", "check", "new")) {
      CommandLineRun run = CommandLineRun.of(command, "");
      assertThat(run.status()).isEqualTo(2);
      assertThat(run.err()).contains("found nothing, expected the name of a file");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"1 d", "0 s", "1 ms", "0.01 s", "-5 s"})
  void aStepIsOneThatAScenarioMayHaveToo(String step) {
    CommandLineRun run = CommandLineRun.of("compare", "house.yaml", "--step", step);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("'--step'");
  }

  @Test
  void completionIsAScriptForTheShell() {
    CommandLineRun run = CommandLineRun.of("completion");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("complete -F").contains("settle");
  }
}
