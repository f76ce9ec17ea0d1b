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
    header = "Tests a valve of a scenario on a rig, then in its branch and its room.",
    description =
        "%nOn the rig: slow opening and closing, response, influence of water temperature and pressure, against the limits of EN 215."
            + " In its branch: authority. In its room: where the room settles, and what happens when something changes.%n",
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
      description = "Which arrangement; the scenario's first if not named.")
  private String arrangement;

  @Option(
      names = "--room",
      paramLabel = "NAME",
      description =
          "In which room, or 'ROOM: EMITTER' where a room has several; if not named, the first with a"
              + " thermostatic valve, else the first with any.")
  private String room;

  @Override
  public Integer call() throws Failure {
    new ValveRun(spec, options).execute(arrangement, room);
    return ExitStatus.DONE;
  }
}
