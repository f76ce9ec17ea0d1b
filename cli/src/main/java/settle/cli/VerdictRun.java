package settle.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import settle.cli.output.Answers;
import settle.cli.output.AnswersJson;
import settle.cli.output.AnswersText;
import settle.plots.chart.AnswerCharts;
import settle.plots.chart.Chart;
import settle.plots.chart.ChartFiles;
import settle.plots.chart.OddsCharts;
import settle.plots.report.AnswerContent;
import settle.plots.report.AnswerReport;
import settle.plots.words.OddsWords;
import settle.scenarios.Scenario;
import settle.scenarios.finding.Finding;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.house.Spreads;
import settle.sim.study.Odds;
import settle.sim.study.Verdict;

/** Reads a scenario, asks about every arrangement in it, prints and writes the answers. */
final class VerdictRun {

  private final CommandSpec command;
  private final CommonOptions options;
  private final int houses;
  private final Talk talk;

  /** The same houses are drawn every time. */
  private static final long SEED = 1;

  /**
   * @param command what is carried out
   * @param options its common options
   * @param houses how many to try; 0 for none
   */
  VerdictRun(CommandSpec command, CommonOptions options, int houses) {
    this.command = command;
    this.options = options;
    this.houses = houses;
    talk = new Talk(command, options.speech());
  }

  /**
   * Does it.
   *
   * @return whether every arrangement keeps up
   * @throws Failure if the scenario is wrong, a model cannot be solved, or a file cannot be written
   */
  boolean execute() throws Failure {
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
              odds(house, progress),
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
    talk.say(json, summary);
    return answers.keepsUp();
  }

  /** One arrangement after the other, each with every processor. */
  private List<Odds> odds(House house, Progress progress) {
    if (houses == 0) {
      return List.of();
    }
    int each = Odds.samples(houses);
    progress.stage("trying " + each + " houses");
    int all = each * house.arrangements().size();
    ExecutorService executor =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try {
      List<Odds> odds = new ArrayList<>();
      for (Arrangement arrangement : house.arrangements()) {
        int before = each * odds.size();
        odds.add(
            Odds.of(
                house,
                arrangement,
                each,
                SEED,
                executor,
                done -> progress.share((double) (before + done) / all)));
      }
      return odds;
    } finally {
      executor.shutdownNow();
    }
  }

  private void writeFiles(Answers answers, String json, String summary) throws Failure {
    List<Chart> charts = new ArrayList<>(AnswerCharts.of(answers.house(), answers.verdicts()));
    if (!answers.odds().isEmpty()) {
      Spreads spreads = answers.house().aims().spreads();
      charts.addAll(
          OddsCharts.of(
              answers.house().arrangements().stream().map(Arrangement::name).toList(),
              answers.odds().stream().map(o -> new OddsWords(o, spreads)).toList()));
    }
    try (OutputFolder folder = new OutputFolder(options.out())) {
      for (Map.Entry<String, byte[]> chart : ChartFiles.of(charts).entrySet()) {
        Files.write(folder.file("plots/" + chart.getKey()), chart.getValue());
      }
      AnswerContent content =
          new AnswerContent(
              answers.house(),
              answers.verdicts(),
              answers.odds(),
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
