package settle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import settle.cli.output.Answers;
import settle.cli.output.AnswersJson;
import settle.cli.output.AnswersText;
import settle.plots.chart.AnswerCharts;
import settle.plots.chart.Chart;
import settle.plots.chart.ChartFiles;
import settle.plots.report.AnswerContent;
import settle.plots.report.AnswerReport;
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
      if (options.out() != null) {
        progress.stage("writing " + options.out());
        writeFiles(answers, json, summary);
      }
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

  private void writeFiles(Answers answers, String json, String summary) throws Failure {
    List<Chart> charts = AnswerCharts.of(answers.house(), answers.verdicts());
    try (OutputFolder folder = new OutputFolder(options.out())) {
      for (Map.Entry<String, byte[]> chart : ChartFiles.of(charts).entrySet()) {
        Files.write(folder.file("plots/" + chart.getKey()), chart.getValue());
      }
      AnswerContent content =
          new AnswerContent(
              answers.house(),
              answers.verdicts(),
              charts,
              answers.warnings(),
              answers.scenario(),
              Version.number());
      folder.write("report.html", AnswerReport.html(content));
      folder.write("summary.txt", summary);
      folder.write("summary.json", json);
      folder.publish();
    } catch (IOException e) {
      throw new Failure(
          ExitStatus.COULD_NOT_FINISH, "cannot write " + FileTrouble.describe(e, options.out()), e);
    }
  }

  private static String names(House house) {
    return house.arrangements().stream().map(Arrangement::name).collect(Collectors.joining(", "));
  }
}
