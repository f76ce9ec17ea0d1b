package settle.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import settle.sim.house.House;

/** The main job: every arrangement of the scenario, side by side. */
@Command(
    name = "compare",
    header = "Runs every arrangement in a scenario and says which settles better.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {"%nExample:", "  settle compare house.yaml --out result"})
final class CompareCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private RunOptions options;
  @Mixin private Strictness strictness;

  @Override
  public Integer call() throws Failure {
    return strictness.status(new ScenarioRun(spec, options).execute(House::arrangements));
  }
}
