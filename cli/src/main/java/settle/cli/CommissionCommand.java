package settle.cli;

import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

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
  @Mixin private DayOptions day;

  @Override
  public Integer call() throws Failure {
    new CommissionRun(spec, options)
        .execute(day.arrangement(), day.day(spec, OptionalDouble.empty(), OptionalDouble.empty()));
    return ExitStatus.DONE;
  }
}
