package settle.cli;

import java.io.IOException;
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
  private final Talk talk;

  VerdictRun(CommandSpec command, CommonOptions options) {
    this.command = command;
    this.options = options;
    talk = new Talk(command, options);
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
    try (Progress progress = talk.progress()) {
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
      throw Talk.unsolvable(e);
    }
    return talk.say(json, summary, answers.keepsUp());
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
      throw Talk.unwritable(e, options.out());
    }
  }

  private static String names(House house) {
    return house.arrangements().stream().map(Arrangement::name).collect(Collectors.joining(", "));
  }
}
