package settle.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import settle.cli.output.Answers;
import settle.cli.output.AnswersText;
import settle.cli.output.Layout;
import settle.plots.drawing.Picture;
import settle.plots.gallery.AnswerCharts;
import settle.plots.gallery.OddsCharts;
import settle.plots.image.PictureFiles;
import settle.plots.report.AnswerContent;
import settle.plots.report.AnswerReport;
import settle.plots.words.OddsWords;
import settle.scenarios.Scenario;
import settle.scenarios.finding.Finding;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.study.Odds;
import settle.sim.study.Verdict;

/** Reads a scenario, asks about every arrangement in it, prints and writes the answers. */
final class VerdictRun {

  private final CommandSpec command;
  private final CommonOptions options;
  private final int houses;
  private final Optional<RemediedFile> remedied;
  private final Talk talk;

  /** Fixed, so that every call draws the same houses. */
  private static final long SEED = 1;

  /**
   * @param command what is carried out
   * @param options its common options
   * @param houses how many to try; 0 for none
   * @param remedied where the house with its remedies goes; empty for nowhere
   */
  VerdictRun(
      CommandSpec command, CommonOptions options, int houses, Optional<RemediedFile> remedied) {
    this.command = command;
    this.options = options;
    this.houses = houses;
    this.remedied = remedied;
    talk = new Talk(command, options.speech());
  }

  /**
   * Judges every arrangement, and prints and writes the answers.
   *
   * @return whether every arrangement keeps up, be it only just
   * @throws Failure if the scenario is wrong, a model cannot be solved, or a file cannot be written
   */
  boolean execute() throws Failure {
    String text = ScenarioFile.text(options.file());
    Scenario scenario = ScenarioFile.read(command, text, options.file());
    if (remedied.isPresent()) {
      remedied.get().require();
    }
    House house = scenario.house();
    Answers answers;
    String json;
    String summary;
    try (Progress progress = talk.progress()) {
      progress.stage("asking about " + names(house));
      List<Verdict> verdicts = verdicts(house, progress);
      answers =
          new Answers(
              command.name(),
              options.file().toString(),
              house,
              verdicts,
              scenario.warnings().stream().map(Finding::toString).toList(),
              written(text, house, verdicts, progress));
      json = answers.json(Version.number());
      summary = AnswersText.write(answers, Layout.FILE);
      if (options.out() != null) {
        progress.stage("writing " + options.out());
        writeFiles(answers, json, summary);
      }
    } catch (ArithmeticException e) {
      throw Talk.unsolvable(e);
    }
    talk.say(json, layout -> AnswersText.write(answers, layout));
    return answers.keepsUp();
  }

  private Optional<String> written(
      String text, House house, List<Verdict> verdicts, Progress progress) throws Failure {
    if (remedied.isEmpty()) {
      return Optional.empty();
    }
    progress.stage("writing the house with its remedies");
    return Optional.of(remedied.get().write(text, house, verdicts));
  }

  /** Asks about all arrangements at once, then tries houses, one arrangement after the other. */
  private List<Verdict> verdicts(House house, Progress progress) {
    List<Verdict> verdicts =
        Processors.ALL.all(
            house.arrangements().stream()
                .<Supplier<Verdict>>map(a -> () -> Verdict.of(house, a, Processors.ALL))
                .toList());
    return houses == 0 ? verdicts : tried(house, verdicts, progress);
  }

  private List<Verdict> tried(House house, List<Verdict> verdicts, Progress progress) {
    int each = Odds.samples(houses);
    progress.stage("trying " + each + " houses");
    int all = each * verdicts.size();
    List<Verdict> tried = new ArrayList<>();
    for (Verdict verdict : verdicts) {
      int before = each * tried.size();
      tried.add(
          verdict.tried(
              house,
              each,
              SEED,
              Processors.ALL,
              done -> progress.share((double) (before + done) / all)));
    }
    return tried;
  }

  private void writeFiles(Answers answers, String json, String summary) throws Failure {
    List<Picture> charts = new ArrayList<>(AnswerCharts.of(answers.house(), answers.verdicts()));
    List<OddsWords> odds = answers.odds();
    if (!odds.isEmpty()) {
      charts.addAll(
          OddsCharts.of(
              answers.house().arrangements().stream().map(Arrangement::name).toList(), odds));
    }
    AnswerContent content =
        new AnswerContent(
            answers.house(),
            answers.verdicts(),
            charts,
            answers.warnings(),
            answers.scenario(),
            Version.number());
    try (OutputFolder folder = new OutputFolder(options.out())) {
      folder.write(PictureFiles.of(charts), AnswerReport.html(content), summary, json);
      folder.publish();
    } catch (IOException e) {
      throw Talk.unwritable(e, options.out());
    }
  }

  private static String names(House house) {
    return house.arrangements().stream().map(Arrangement::name).collect(Collectors.joining(", "));
  }
}
