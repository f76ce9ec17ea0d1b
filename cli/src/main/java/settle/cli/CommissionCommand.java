package settle.cli;

import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import settle.sim.commissioning.CommissioningDay;

/** The sheets that an installer works by: first fix, and commissioning day. */
@Command(
    name = "commission",
    header = "Writes the first-fix sheet and the commissioning sheet of an arrangement.",
    description =
        "%nFirst fix: where each run goes, what it hangs on, what is cut and bought. Commissioning: what is set, in which order and for"
            + " how long rooms are vented, and what a thermometer should read on the day. With --out first-fix.html, commissioning.html"
            + " (A4), summary.txt, summary.json, and CSV files: first-fix, material, venting, readings.%n",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {
      "%nExample:",
      "  settle commission house.yaml --outdoor \"8 °C\" --start \"14 °C\" --out sheets"
    })
final class CommissionCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private CommonOptions options;

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
      description = "Outdoor temperature of the day; 8 °C if not named.")
  private Double outdoor;

  @Option(
      names = "--start",
      paramLabel = "TEMPERATURE",
      converter = TemperatureConverter.class,
      description =
          "Temperature of rooms and water when the source is started; 14 °C if not named.")
  private Double start;

  @Option(
      names = "--read-after",
      paramLabel = "MINUTES",
      description = "When is read, after the start; 60 min if not named, 45 to 60 tell most.")
  private Double minutes;

  @Option(
      names = "--flow",
      paramLabel = "TEMPERATURE",
      converter = FlowConverter.class,
      description =
          "Flow temperature the source is set to for the day, weather compensation off; as it is if not named.")
  private Double flow;

  @Override
  public Integer call() throws Failure {
    new CommissionRun(spec, options).execute(arrangement, day());
    return ExitStatus.DONE;
  }

  private CommissioningDay day() {
    CommissioningDay usual = CommissioningDay.USUAL;
    try {
      return new CommissioningDay(
          outdoor == null ? usual.outdoor() : outdoor,
          start == null ? usual.start() : start,
          minutes == null ? usual.readAfter() : 60 * minutes,
          flow == null ? OptionalDouble.empty() : OptionalDouble.of(flow));
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage());
    }
  }
}
