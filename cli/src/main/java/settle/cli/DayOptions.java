package settle.cli;

import java.util.OptionalDouble;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import settle.sim.commissioning.CommissioningDay;

/** Options that say which arrangement is commissioned, and on what day. */
final class DayOptions {

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
      description = "Outdoor temperature of the day; 8 °C where nothing says otherwise.")
  private Double outdoor;

  @Option(
      names = "--start",
      paramLabel = "TEMPERATURE",
      converter = TemperatureConverter.class,
      description =
          "Temperature of rooms and water when the source is started; 14 °C where nothing says otherwise.")
  private Double start;

  @Option(
      names = "--read-after",
      paramLabel = "MINUTES",
      description =
          "When is read, after the start; 60 min where nothing says otherwise, 45 to 60 tell most.")
  private Double minutes;

  @Option(
      names = "--flow",
      paramLabel = "TEMPERATURE",
      converter = FlowConverter.class,
      description =
          "Flow temperature the source is set to for the day, weather compensation off; as it is if not named.")
  private Double flow;

  /** Name of the arrangement; null if none was named. */
  String arrangement() {
    return arrangement;
  }

  /**
   * The day as the command line has it, else as was written down, else as is usual.
   *
   * @param command the command, for what is wrong with its options
   * @param outdoorRead outdoor temperature that was written down [°C]
   * @param startRead temperature at the start that was written down [°C]
   */
  CommissioningDay day(CommandSpec command, OptionalDouble outdoorRead, OptionalDouble startRead) {
    CommissioningDay usual = CommissioningDay.USUAL;
    try {
      return new CommissioningDay(
          outdoor == null ? outdoorRead.orElse(usual.outdoor()) : outdoor,
          start == null ? startRead.orElse(usual.start()) : start,
          minutes == null ? usual.readAfter() : 60 * minutes,
          flow == null ? OptionalDouble.empty() : OptionalDouble.of(flow));
    } catch (IllegalArgumentException e) {
      throw new ParameterException(command.commandLine(), e.getMessage());
    }
  }
}
