package settle.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** One valve on the test rig, in its branch and in its room. */
@Command(
    name = "valve",
    header = "Puts a valve of a scenario on a test rig, then watches it in its room.",
    description =
        "%nSlow opening and closing, response, influence of water temperature and pressure, beside the limits of EN 215;"
            + " authority in its branch; where it lets its room settle; what it does when something changes.%n",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {"%nExample:", "  settle valve house.yaml --room kitchen --out bench"})
final class ValveCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private CommonOptions options;

  @Option(
      names = "--arrangement",
      paramLabel = "NAME",
      description = "Whose valve; the scenario's first arrangement if not named.")
  private String arrangement;

  @Option(
      names = "--room",
      paramLabel = "NAME",
      description =
          "In which room, or ROOM: EMITTER where a room has several; if not named, the first with a"
              + " thermostatic valve, else the first with any.")
  private String room;

  @Override
  public Integer call() throws Failure {
    new ValveRun(spec, options).execute(arrangement, room);
    return ExitStatus.DONE;
  }
}
