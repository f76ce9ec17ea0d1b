package settle.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Whether each arrangement keeps the house warm, without a run to look at. */
@Command(
    name = "verdict",
    header = "Says whether each arrangement keeps the house warm, why, and what would help.",
    description =
        "%nAnswers at rest in design weather, without sun and other gains: down to which outdoor temperature each room is held,"
            + " from which flow temperature on, how soon rooms are warm, what a season takes, and the cheapest remedies.%n",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {"%nExample:", "  settle verdict house.yaml --out answer"})
final class VerdictCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private CommonOptions options;

  @Override
  public Integer call() throws Failure {
    return new VerdictRun(spec, options).execute();
  }
}
