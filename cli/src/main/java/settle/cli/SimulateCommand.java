package settle.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import settle.sim.house.Arrangement;
import settle.sim.house.House;

/** One arrangement on its own. */
@Command(
    name = "simulate",
    header = "Runs one arrangement of a scenario.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {"%nExample:", "  settle simulate house.yaml --arrangement radiators"})
final class SimulateCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private RunOptions options;
  @Mixin private Strictness strictness;

  @Option(
      names = "--arrangement",
      paramLabel = "NAME",
      description = "Which arrangement; the scenario's first if not named.")
  private String arrangement;

  @Override
  public Integer call() throws Failure {
    return strictness.status(new ScenarioRun(spec, options).execute(this::chosen));
  }

  private List<Arrangement> chosen(House house) throws Failure {
    return List.of(ScenarioFile.arrangement(house, arrangement));
  }
}
