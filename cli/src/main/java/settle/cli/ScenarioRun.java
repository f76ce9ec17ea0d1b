package settle.cli;

import java.util.List;
import java.util.concurrent.atomic.DoubleAdder;
import java.util.function.DoubleConsumer;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import settle.cli.output.Inputs;
import settle.cli.output.TracesCsv;
import settle.plots.figures.Entry;
import settle.plots.figures.RunStudy;
import settle.plots.gallery.Charts;
import settle.scenarios.Scenario;
import settle.scenarios.finding.Finding;
import settle.sim.engine.Simulation;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.result.RunResult;
import settle.sim.study.ErrorEstimate;

/** Simulates arrangements of a scenario, for compare and simulate. */
final class ScenarioRun {

  /** Picks what is to be simulated. */
  @FunctionalInterface
  interface Choice {
    List<Arrangement> from(House house) throws Failure;
  }

  private final StudyRun run;
  private final RunOptions options;

  ScenarioRun(CommandSpec command, RunOptions options) {
    run = new StudyRun(command, options.common());
    this.options = options;
  }

  /**
   * Simulates what was chosen, and prints and writes what came of it.
   *
   * @param choice what to simulate
   * @return whether every arrangement keeps up
   * @throws Failure if the scenario is wrong, a model cannot be solved, or a file cannot be written
   */
  boolean execute(Choice choice) throws Failure {
    return run.execute((text, scenario, progress) -> answer(scenario, choice, progress));
  }

  private StudyRun.Answer answer(Scenario scenario, Choice choice, Progress progress)
      throws Failure {
    House house = withStep(scenario.house());
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
    RunStudy study =
        new RunStudy(
            house,
            runs,
            errors,
            scenario.warnings().stream().map(Finding::toString).toList(),
            Inputs.of(house, arrangements),
            scenario.defaultsUsed().stream()
                .map(d -> new Entry(d.where() + ": " + d.key(), d.value(), d.reason()))
                .toList());
    return new StudyRun.Answer(
        study.study(),
        runs.stream().allMatch(RunResult::keepsUp),
        () -> Charts.forComparison(house, runs),
        traces -> TracesCsv.write(runs, traces));
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
}
