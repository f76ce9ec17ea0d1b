package settle.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Whether a house reads as it was designed. */
@Command(
    name = "accept",
    header =
        "Says whether what was read on commissioning day is what was designed, and what is wrong if not.",
    description =
        "%nREADINGS is the table that 'settle commission' writes as readings.csv, filled in: a row for each room, with the return at the"
            + " clamp, the surface at the run's far end and the room's air, and a row 'source flow'. What was not read stays empty."
            + " Rows 'outdoor' and 'start' say what the day was like, a column 'minutes' when each room was read, and a column 'found'"
            + " what was seen by looking (right, lockshield open, lockshield shut, pin, head, air, short, covered, exchanged).%n",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {
      "%nExample:",
      "  settle accept house.yaml readings.csv --outdoor \"6 °C\" --start \"13 °C\" --out accepted"
    })
final class AcceptCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private CommonOptions options;

  @Parameters(
      index = "1",
      paramLabel = "READINGS",
      converter = FileConverter.class,
      description = "What was read (CSV).")
  private Path readings;

  @Mixin private DayOptions day;
  @Mixin private Strictness strictness;

  @Override
  public Integer call() throws Failure {
    boolean accepted =
        new AcceptRun(spec, options)
            .execute(
                readings, day.arrangement(), (outdoor, start) -> day.day(spec, outdoor, start));
    return strictness.status(accepted);
  }
}
