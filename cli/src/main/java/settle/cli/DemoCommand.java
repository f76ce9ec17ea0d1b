package settle.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import settle.scenarios.demo.Demonstrations;
import settle.scenarios.demo.ReadyMade;
import settle.scenarios.format.NearestName;

/** Ready-made runs that show one thing each. */
@Command(
    name = "demo",
    header = "Lists or runs teaching demonstrations: one thing changed, before and after.",
    description =
        "%nWithout a name, lists them. The rooms are invented; the figures come from the runs.%n",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {
      "%nExample:",
      "  settle demo",
      "  settle demo droop --out droop",
      "  settle demo all --out handout"
    })
final class DemoCommand implements Callable<Integer> {

  static final String ALL = "all";

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "NAME",
      arity = "0..1",
      completionCandidates = Names.class,
      description = "Which: ${COMPLETION-CANDIDATES}.")
  private String name;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      converter = FolderConverter.class,
      description =
          "Write report.html to print, summary.txt, summary.json, plots and the scenarios before and after to this folder.")
  private Path out;

  @Mixin private Speech speech;

  @Override
  public Integer call() throws Failure {
    List<ReadyMade> all = Demonstrations.all();
    DemoRun run = new DemoRun(spec, out, speech);
    if (name == null) {
      if (out != null) {
        throw new ParameterException(
            spec.commandLine(), "--out needs the name of a demonstration, or '" + ALL + "'");
      }
      run.list(all);
    } else {
      run.execute(name.equals(ALL) ? all : List.of(named(all)));
    }
    return ExitStatus.DONE;
  }

  private ReadyMade named(List<ReadyMade> all) {
    return all.stream()
        .filter(d -> d.demonstration().name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new ParameterException(
                    spec.commandLine(),
                    "there is no demonstration '"
                        + name
                        + "'"
                        + NearestName.hint(name, new Names().names())));
  }

  /** What can be named, asked for only where help or a shell needs it. */
  static final class Names implements Iterable<String> {

    List<String> names() {
      List<String> names = new ArrayList<>(Demonstrations.names());
      names.add(ALL);
      return names;
    }

    @Override
    public Iterator<String> iterator() {
      return names().iterator();
    }
  }
}
