package settle.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import settle.cli.output.CheckJson;
import settle.cli.output.CheckText;
import settle.cli.output.Layout;
import settle.scenarios.Scenario;
import settle.scenarios.ScenarioException;
import settle.scenarios.document.PlainText;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.DefaultUsed;
import settle.scenarios.finding.Finding;

/**
 * Everything that is wrong or doubtful with a scenario, and what is assumed for what it leaves out.
 */
@Command(
    name = "check",
    header = "Says everything that is wrong or doubtful in a scenario.",
    description =
        "%nAlso lists the values assumed for what the file leaves out, with their source.%n",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {"%nExample:", "  settle check house.yaml"})
final class CheckCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      converter = FileConverter.class,
      description = "The scenario (YAML).")
  private Path file;

  @Option(
      names = "--json",
      description = "Print the findings as one JSON document and nothing else on standard output.")
  private boolean json;

  @Option(
      names = {"-q", "--quiet"},
      description = "Do not list the values assumed for what the file leaves out.")
  private boolean quiet;

  @Override
  public Integer call() throws Failure {
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      return document(out);
    }
    Scenario scenario = ScenarioFile.read(spec, file);
    Layout layout = new Layout(Settle.of(spec).terminal().width(), !quiet);
    out.print(PlainText.of(CheckText.write(file.toString(), scenario, layout)));
    out.flush();
    return ExitStatus.DONE;
  }

  private int document(PrintWriter out) {
    List<Finding> problems = List.of();
    List<Finding> warnings = List.of();
    List<DefaultUsed> defaults = List.of();
    try {
      Scenario scenario =
          ScenarioFiles.read(ScenarioFiles.text(file), file, Settle.of(spec).format());
      warnings = scenario.warnings();
      defaults = scenario.defaultsUsed();
    } catch (ScenarioException e) {
      problems = e.problems();
    }
    out.print(CheckJson.write(file.toString(), problems, warnings, defaults, Version.number()));
    out.flush();
    return problems.isEmpty() ? ExitStatus.DONE : ExitStatus.WRONG_INPUT;
  }
}
