package settle.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import settle.cli.output.Answers;
import settle.cli.output.AnswersJson;
import settle.cli.output.AnswersText;
import settle.scenarios.Scenario;
import settle.scenarios.finding.Finding;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.study.Verdict;

/** Reads a scenario, asks about every arrangement in it, prints and writes the answers. */
final class VerdictRun {

  private final CommandSpec command;
  private final CommonOptions options;
  private final PrintWriter out;
  private final Progress progress;

  VerdictRun(CommandSpec command, CommonOptions options) {
    this.command = command;
    this.options = options;
    out = command.commandLine().getOut();
    Settle settle = (Settle) command.parent().userObject();
    progress = new Progress(command.commandLine().getErr(), settle.terminal() && !options.quiet());
  }

  /**
   * Does it.
   *
   * @return exit status
   * @throws Failure if the scenario is wrong, a model cannot be solved, or a file cannot be written
   */
  int execute() throws Failure {
    Scenario scenario = ScenarioFile.read(options.file());
    House house = scenario.house();
    Answers answers;
    String json;
    String summary;
    try (progress) {
      progress.stage("asking about " + names(house));
      List<Verdict> verdicts =
          house.arrangements().parallelStream().map(a -> Verdict.of(house, a)).toList();
      answers =
          new Answers(
              command.name(),
              options.file().toString(),
              house,
              verdicts,
              scenario.warnings().stream().map(Finding::toString).toList());
      json = AnswersJson.write(answers, Version.number());
      summary = AnswersText.write(answers);
    } catch (ArithmeticException e) {
      // From another thread it arrives as the cause of a nameless copy.
      Throwable told = e.getCause() == null ? e : e.getCause();
      throw new Failure(
          ExitStatus.COULD_NOT_FINISH, "the model cannot be solved: " + told.getMessage(), e);
    }
    if (options.json()) {
      out.print(json);
    } else if (!options.quiet()) {
      out.print(summary);
    }
    out.flush();
    return options.strict() && !answers.keepsUp() ? ExitStatus.DOES_NOT_KEEP_UP : ExitStatus.DONE;
  }

  private static String names(House house) {
    return house.arrangements().stream().map(Arrangement::name).collect(Collectors.joining(", "));
  }
}
