package settle.cli;

import java.io.PrintWriter;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import settle.cli.output.CatalogueKind;
import settle.cli.output.CatalogueText;
import settle.scenarios.format.NearestName;

/** What a scenario can use by name without defining it. */
@Command(
    name = "catalogue",
    header = "Lists the built-in constructions, emitters, pipes, valves and sources.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {"%nExample:", "  settle catalogue emitters"})
final class CatalogueCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "KIND",
      arity = "0..*",
      completionCandidates = Kinds.class,
      description = "Only these: ${COMPLETION-CANDIDATES}.")
  private List<String> kinds;

  @Option(names = "--json", description = "Print it as one JSON document.")
  private boolean json;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    List<CatalogueKind> listed =
        kinds == null ? List.of(CatalogueKind.values()) : kinds.stream().map(this::kind).toList();
    out.print(json ? CatalogueText.json(listed, Version.number()) : CatalogueText.list(listed));
    out.flush();
    return ExitStatus.DONE;
  }

  private CatalogueKind kind(String word) {
    return Stream.of(CatalogueKind.values())
        .filter(k -> k.word().equals(word))
        .findAny()
        .orElseThrow(
            () ->
                new ParameterException(
                    spec.commandLine(),
                    "unknown kind '" + word + "'" + NearestName.hint(word, new Kinds().words)));
  }

  /** The words for the kinds. */
  static final class Kinds implements Iterable<String> {

    private final List<String> words =
        Stream.of(CatalogueKind.values()).map(CatalogueKind::word).toList();

    @Override
    public Iterator<String> iterator() {
      return words.iterator();
    }
  }
}
