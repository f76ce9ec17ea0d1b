package settle.cli;

import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import settle.sim.commissioning.CommissioningDay;

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

  @Option(
      names = "--arrangement",
      paramLabel = "NAME",
      description =
          "Which arrangement; the scenario's first with skirting if not named, else its first.")
  private String arrangement;

  @Option(
      names = "--outdoor",
      paramLabel = "TEMPERATURE",
      converter = TemperatureConverter.class,
      description = "Outdoor temperature of the day; as the readings say, else 8 °C.")
  private Double outdoor;

  @Option(
      names = "--start",
      paramLabel = "TEMPERATURE",
      converter = TemperatureConverter.class,
      description =
          "Temperature of rooms and water when the source was started; as the readings say, else 14 °C.")
  private Double start;

  @Option(
      names = "--read-after",
      paramLabel = "MINUTES",
      description =
          "When was read, after the start, where the readings do not say; 60 min if not named.")
  private Double minutes;

  @Option(
      names = "--flow",
      paramLabel = "TEMPERATURE",
      converter = FlowConverter.class,
      description =
          "Flow temperature the source was set to for the day, weather compensation off; as it is if not named.")
  private Double flow;

  @Mixin private Strictness strictness;

  @Override
  public Integer call() throws Failure {
    boolean accepted = new AcceptRun(spec, options).execute(readings, arrangement, this::day);
    return strictness.status(accepted);
  }

  private CommissioningDay day(OptionalDouble outdoorRead, OptionalDouble startRead) {
    CommissioningDay usual = CommissioningDay.USUAL;
    try {
      return new CommissioningDay(
          outdoor == null ? outdoorRead.orElse(usual.outdoor()) : outdoor,
          start == null ? startRead.orElse(usual.start()) : start,
          minutes == null ? usual.readAfter() : 60 * minutes,
          flow == null ? OptionalDouble.empty() : OptionalDouble.of(flow));
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage());
    }
  }
}
