package settle.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How much skirting each room needs. */
@Command(
    name = "size",
    header = "Says how many metres of skirting each room needs at which flow temperature.",
    description =
        "%nFor every profile of the catalogue and of the scenario: the metres that hold each room in design weather, valves open, on the"
            + " water that pipes and pump bring it, beside the wall that is free; the lowest flow temperature at which it fits; and what"
            + " would help where it does not. What pipes give to rooms is told apart and not counted.%n",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {"%nExample:", "  settle size house.yaml --flow 42,48 --out sizes"})
final class SizeCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private CommonOptions options;

  @Option(
      names = "--arrangement",
      paramLabel = "NAME",
      description =
          "Whose places and pipes to take; the scenario's first with skirting if not named, else its first.")
  private String arrangement;

  @Option(
      names = "--flow",
      paramLabel = "TEMPERATURE",
      split = ",",
      converter = FlowConverter.class,
      description =
          "Flow temperatures to size for besides the one asked for, 20 to 90 °C; 35 to 75 °C in steps of 5 K if not named.")
  private List<Double> flows;

  @Option(
      names = "--strict",
      description =
          "End with exit status 1 if none of the arrangement's profiles fits every room at the flow temperature asked for.")
  private boolean strict;

  @Override
  public Integer call() throws Failure {
    boolean fits = new SizeRun(spec, options).execute(arrangement, flows);
    return strict && !fits ? ExitStatus.DOES_NOT_KEEP_UP : ExitStatus.DONE;
  }
}
