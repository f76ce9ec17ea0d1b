package settle.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Whether each arrangement keeps the house warm. */
@Command(
    name = "verdict",
    header = "Says whether each arrangement keeps the house warm, why, and what would help.",
    description =
        "%nAnswers yes, only just or no: without sun or other gains, is every room held at every outdoor temperature from design weather to 15 °C? Calculated for the house at rest"
            + " and confirmed by runs in steady weather; where they differ, the run decides. Only just: the house as stated is held, but fewer houses like it than the scenario's 'aims: sure' asks for."
            + " Also gives the lowest outdoor temperature and the lowest flow temperature at which each room is held, warm-up times, what a season uses, and remedies.%n",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {
      "%nExample:",
      "  settle verdict house.yaml --out answer",
      "  settle verdict house.yaml --write remedied.yaml"
    })
final class VerdictCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private CommonOptions options;
  @Mixin private Strictness strictness;

  @Option(
      names = "--odds",
      paramLabel = "N",
      defaultValue = "256",
      converter = HousesConverter.class,
      description =
          "Try N houses like yours, each drawn at random over the scenario's spreads, and say how many keep up"
              + " and what matters most; N is rounded up to a power of two, 0 for none. Default: ${DEFAULT-VALUE}.")
  private int houses;

  @Option(
      names = "--write",
      paramLabel = "FILE",
      converter = FileConverter.class,
      description =
          "Write the scenario with the remedies that hold every room, every other character as typed; write nothing if none were found. An existing file is left alone unless --force is given.")
  private Path write;

  @Option(
      names = "--force",
      description = "Let --write overwrite a file, even the scenario itself.")
  private boolean force;

  @Override
  public Integer call() throws Failure {
    Optional<RemediedFile> remedied =
        Optional.ofNullable(write)
            .map(file -> new RemediedFile(file, force, Settle.of(spec).format()));
    return strictness.status(new VerdictRun(spec, options, houses, remedied).execute());
  }
}
