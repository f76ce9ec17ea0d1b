package settle.cli;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import settle.scenarios.format.NearestName;
import settle.sim.tuning.Group;
import settle.sim.tuning.Tuning;

/** The settings that suit a house best. */
@Command(
    name = "tune",
    header = "Finds the settings that meet a scenario's aims, and says what they cost and gain.",
    description =
        "%nStarts where an engineer would: balancing, the house at rest, the lowest weather"
            + " compensation, a step test with a published rule. Then searches, from several"
            + " starts, among settings that can be made by hand: by runs of a usual, a mild and"
            + " the coldest day, and at rest in the coldest weather with a reserve for what is"
            + " uncertain about the house. The aims are in the scenario's section 'aims'; a"
            + " setting that gains nothing stays as found.%n",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {
      "%nExample:",
      "  settle tune house.yaml --write tuned.yaml",
      "  settle tune house.yaml --arrangement radiators --only knobs,curve"
    })
final class TuneCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;
  @Mixin private CommonOptions options;
  @Mixin private Strictness strictness;

  @Option(
      names = "--arrangement",
      paramLabel = "NAME",
      description = "Which arrangement; the scenario's first if not named.")
  private String arrangement;

  @Option(
      names = "--only",
      paramLabel = "GROUP",
      split = ",",
      converter = GroupConverter.class,
      description =
          "Tune only these: knobs, curve (or the flow temperature), preheat, lockshields,"
              + " thermostat, gains.")
  private List<Group> only;

  @Option(
      names = "--write",
      paramLabel = "FILE",
      converter = FileConverter.class,
      description =
          "Write the scenario with the tuned settings, every other character as typed; an"
              + " existing file is left alone unless --force is given.")
  private Path write;

  @Option(
      names = "--force",
      description = "Let --write overwrite a file, even the scenario itself.")
  private boolean force;

  @Option(
      names = "--samples",
      paramLabel = "N",
      defaultValue = "128",
      description =
          "How many houses, drawn over the spreads, to compare found and tuned settings in"
              + " (default: ${DEFAULT-VALUE}).")
  private int samples;

  @Option(
      names = "--sure",
      paramLabel = "PERCENT",
      defaultValue = "90",
      description =
          "In how many of a hundred houses, drawn over the spreads, each room must be held in the"
              + " coldest weather (default: ${DEFAULT-VALUE}). A larger share costs more energy.")
  private double sure;

  @Override
  public Integer call() throws Failure {
    if (samples < 1 || samples > 4096) {
      throw new Failure(
          ExitStatus.WRONG_INPUT, "--samples: found " + samples + ", expected 1 to 4096", null);
    }
    if (!(sure >= 50 && sure <= 99)) {
      throw new Failure(
          ExitStatus.WRONG_INPUT, "--sure: found " + sure + ", expected 50 to 99", null);
    }
    Set<Group> groups = only == null ? EnumSet.allOf(Group.class) : EnumSet.copyOf(only);
    Tuning.Request asked = new Tuning.Request(groups, sure / 100, samples);
    return strictness.status(
        new TuneRun(spec, options, new TuneRun.Request(arrangement, asked, write, force))
            .execute());
  }

  /** Groups by their names in small letters. */
  static final class GroupConverter implements ITypeConverter<Group> {
    @Override
    public Group convert(String word) {
      List<String> names =
          EnumSet.allOf(Group.class).stream().map(g -> g.name().toLowerCase(Locale.ROOT)).toList();
      int index = names.indexOf(word.strip().toLowerCase(Locale.ROOT));
      if (index < 0) {
        throw new TypeConversionException(
            "found '"
                + word
                + "', expected "
                + names.stream().collect(Collectors.joining(", "))
                + NearestName.hint(word, names));
      }
      return Group.values()[index];
    }
  }
}
