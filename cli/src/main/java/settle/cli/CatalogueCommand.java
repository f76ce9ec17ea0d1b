package settle.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import settle.cli.output.CatalogueText;
import settle.cli.output.Layout;
import settle.scenarios.catalogue.Catalogue;
import settle.scenarios.catalogue.CatalogueListing;
import settle.scenarios.catalogue.CatalogueListing.Entry;
import settle.scenarios.format.NearestName;

/** What a scenario can use by name without defining it. */
@Command(
    name = "catalogue",
    header = "Lists the built-in constructions, emitters, pipes, valves, boilers and heat pumps.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {"%nExample:", "  settle catalogue emitters"})
final class CatalogueCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "SECTION",
      arity = "0..*",
      completionCandidates = Sections.class,
      description = "Only these: ${COMPLETION-CANDIDATES}.")
  private List<String> sections;

  @Option(names = "--json", description = "Print it as one JSON document.")
  private boolean json;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    List<Entry> entries = chosen(new CatalogueListing(Catalogue.builtIn()).entries());
    out.print(
        json
            ? CatalogueText.json(entries, Version.number())
            : CatalogueText.list(entries, new Layout(Settle.of(spec).terminal().width(), true)));
    out.flush();
    return ExitStatus.DONE;
  }

  private List<Entry> chosen(List<Entry> all) {
    if (sections == null) {
      return all;
    }
    List<Entry> chosen = new ArrayList<>();
    for (String section : sections) {
      List<Entry> found = all.stream().filter(e -> e.section().equals(section)).toList();
      if (found.isEmpty()) {
        throw new ParameterException(
            spec.commandLine(),
            "the catalogue has no section '"
                + section
                + "'"
                + NearestName.hint(section, new Sections().names()));
      }
      chosen.addAll(found);
    }
    return chosen;
  }

  /** Names of the sections, asked for only where help or a shell needs them. */
  static final class Sections implements Iterable<String> {

    List<String> names() {
      return new CatalogueListing(Catalogue.builtIn())
          .entries().stream().map(Entry::section).distinct().toList();
    }

    @Override
    public Iterator<String> iterator() {
      return names().iterator();
    }
  }
}
