package settle.cli;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.DoubleAdder;
import java.util.function.DoubleConsumer;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import settle.cli.output.Inputs;
import settle.cli.output.Layout;
import settle.cli.output.Outcome;
import settle.cli.output.SummaryText;
import settle.cli.output.TracesCsv;
import settle.plots.drawing.Picture;
import settle.plots.gallery.Charts;
import settle.plots.image.PictureFiles;
import settle.plots.report.Entry;
import settle.plots.report.Report;
import settle.plots.report.ReportContent;
import settle.plots.words.Accuracy;
import settle.plots.words.Comparison;
import settle.scenarios.Scenario;
import settle.scenarios.finding.DefaultUsed;
import settle.scenarios.finding.Finding;
import settle.sim.engine.Simulation;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.result.RunResult;
import settle.sim.study.ErrorEstimate;

/** What compare and simulate do alike: read, run, print, write, and answer by the exit status. */
final class ScenarioRun {

  /** Picks what is to be simulated. */
  @FunctionalInterface
  interface Choice {
    List<Arrangement> from(House house) throws Failure;
  }

  private final CommandSpec command;
  private final RunOptions options;
  private final Talk talk;

  ScenarioRun(CommandSpec command, RunOptions options) {
    this.command = command;
    this.options = options;
    talk = new Talk(command, options.common().speech());
  }

  /**
   * Simulates what was chosen, and prints and writes what came of it.
   *
   * @param choice what to simulate
   * @return whether every arrangement keeps up
   * @throws Failure if the scenario is wrong, a model cannot be solved, or a file cannot be written
   */
  @SuppressWarnings(
      "FutureReturnValueIgnored") // preparing only saves time; drawing would fail by itself
  boolean execute(Choice choice) throws Failure {
    if (options.common().out() != null) {
      CompletableFuture.runAsync(PictureFiles::prepare);
    }
    Scenario scenario = ScenarioFile.read(command, options.common().file());
    House house = withStep(scenario.house());
    Outcome outcome;
    String json;
    String summary;
    try (Progress progress = talk.progress()) {
      // One run is one thread's work; different runs are not.
      List<Arrangement> arrangements = choice.from(house);
      progress.stage("simulating " + names(arrangements));
      DoubleAdder done = new DoubleAdder();
      List<RunResult> runs =
          arrangements.parallelStream()
              .map(a -> Simulation.run(house, a, part(done, arrangements.size(), progress)))
              .toList();
      List<ErrorEstimate> errors = List.of();
      if (options.errorBars()) {
        progress.stage("simulating again, finer");
        errors = runs.parallelStream().map(r -> ErrorEstimate.of(house, r)).toList();
      }
      outcome =
          new Outcome(
              command.name(),
              options.common().file().toString(),
              house,
              runs,
              errors,
              scenario.warnings().stream().map(Finding::toString).toList());
      json = outcome.json(Version.number());
      summary = SummaryText.write(outcome, Layout.FILE);
      if (options.common().out() != null) {
        progress.stage("writing " + options.common().out());
        writeFiles(outcome, scenario.defaultsUsed(), json, summary);
      }
    } catch (ArithmeticException e) {
      throw Talk.unsolvable(e);
    }
    talk.say(json, layout -> SummaryText.write(outcome, layout));
    return outcome.keepsUp();
  }

  /** Adds one of several runs' progress to that of all. */
  private static DoubleConsumer part(DoubleAdder done, int runs, Progress progress) {
    double[] before = new double[1];
    return share -> {
      done.add((share - before[0]) / runs);
      before[0] = share;
      progress.share(done.sum());
    };
  }

  private static String names(List<Arrangement> arrangements) {
    return arrangements.stream().map(Arrangement::name).collect(Collectors.joining(", "));
  }

  private House withStep(House house) {
    if (options.step() == null) {
      return house;
    }
    double ratio = options.step() / house.run().shortestStep();
    return house.withRun(house.run().withSteps(options.step(), ratio * house.run().longestStep()));
  }

  private void writeFiles(Outcome outcome, List<DefaultUsed> defaults, String json, String summary)
      throws Failure {
    try (OutputFolder folder = new OutputFolder(options.common().out())) {
      CompletableFuture<List<Picture>> charts =
          CompletableFuture.supplyAsync(
              () -> Charts.forComparison(outcome.house(), outcome.runs()));
      CompletableFuture<Map<String, byte[]>> plots = charts.thenApplyAsync(PictureFiles::of);
      try (Writer traces =
          Files.newBufferedWriter(folder.file("traces.csv"), StandardCharsets.UTF_8)) {
        TracesCsv.write(outcome.runs(), traces);
      }
      folder.write(plots.join(), report(outcome, defaults, charts.join()), summary, json);
      folder.publish();
    } catch (IOException e) {
      throw Talk.unwritable(e, options.common().out());
    }
  }

  private static String report(Outcome outcome, List<DefaultUsed> defaults, List<Picture> charts) {
    List<Arrangement> arrangements = outcome.runs().stream().map(RunResult::arrangement).toList();
    return Report.html(
        new ReportContent(
            new Comparison(outcome.house(), outcome.runs()),
            charts,
            Inputs.of(outcome.house(), arrangements),
            defaults.stream()
                .map(d -> new Entry(d.where() + ": " + d.key(), d.value(), d.reason()))
                .toList(),
            outcome.warnings(),
            outcome.errors().isEmpty() ? "" : Accuracy.of(outcome.errors()),
            outcome.scenario(),
            Version.number()));
  }
}
