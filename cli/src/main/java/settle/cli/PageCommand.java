package settle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import settle.plots.live.Engine;
import settle.plots.live.LivePage;
import settle.scenarios.ScenarioException;
import settle.scenarios.ScenarioReader;
import settle.scenarios.Starter;
import settle.scenarios.document.ScenarioFolder;
import settle.scenarios.file.ScenarioFiles;

/** A scenario on a page that answers by itself. */
@Command(
    name = "page",
    header = "Writes a page that answers by itself, without this program and without a network.",
    description =
        "%nOne HTML file that holds the house and what works it out: opened in a browser, from a disk, it says whether the house is kept warm, and what moving flow temperature, lockshields,"
            + " lengths or wants does to it. Its figures and words are those of 'settle verdict'. Without FILE it holds the starter scenario of 'settle new' and asks for rooms, sizes, walls and what heats them.%n",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {"%nExample:", "  settle page house.yaml --out house.html"})
final class PageCommand implements Callable<Integer> {

  /** Where the launcher has the engine compiled to. */
  static final String ENGINE = "settle.engine";

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      converter = FileConverter.class,
      arity = "0..1",
      description = "The scenario: a house and how it is heated (YAML).")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      converter = FileConverter.class,
      required = true,
      description = "Write the page there. An existing file is left alone unless --force is given.")
  private Path out;

  @Option(
      names = "--javascript",
      description =
          "Put the engine in as JavaScript: about half as quick, for browsers older than the end of 2024.")
  private boolean javaScript;

  @Option(names = "--force", description = "Let --out overwrite a file.")
  private boolean force;

  @Override
  public Integer call() throws Failure {
    try {
      WholeFile.require(out, force);
      WholeFile.write(out, page().html());
    } catch (IOException e) {
      throw new Failure(
          ExitStatus.COULD_NOT_FINISH, "cannot write " + FileTrouble.describe(e, out), e);
    }
    PrintWriter print = spec.commandLine().getOut();
    print.println(out + " is written. Open it in a browser.");
    print.flush();
    return ExitStatus.DONE;
  }

  private LivePage page() throws Failure {
    if (file == null) {
      return new LivePage(engine(), "", Starter.text(), Map.of(), Version.number());
    }
    String text = ScenarioFile.text(file);
    Map<String, String> beside = beside(text);
    return new LivePage(engine(), file.getFileName().toString(), text, beside, Version.number());
  }

  /** What the scenario names from beside it, by the names it has for it. */
  private Map<String, String> beside(String text) throws Failure {
    Map<String, String> beside = new LinkedHashMap<>();
    ScenarioFolder folder = ScenarioFiles.beside(file);
    ScenarioFolder kept =
        (name, what, mostBytes) -> {
          String found = folder.text(name, what, mostBytes);
          beside.put(name, found);
          return found;
        };
    try {
      ScenarioReader.read(text, file.toString(), kept, Settle.of(spec).format());
    } catch (ScenarioException e) {
      throw ScenarioFile.wrong(e);
    }
    return beside;
  }

  private Engine engine() throws Failure {
    String folder = System.getProperty(ENGINE, "");
    try {
      return javaScript ? Engine.javaScript(Path.of(folder)) : Engine.webAssembly(Path.of(folder));
    } catch (Engine.MissingException e) {
      throw new Failure(
          ExitStatus.COULD_NOT_FINISH,
          "what computes in the page is not built; the launcher of this program, './settle page', builds it",
          e);
    } catch (IOException e) {
      throw new Failure(
          ExitStatus.COULD_NOT_FINISH,
          "cannot read " + FileTrouble.describe(e, Path.of(folder)),
          e);
    }
  }
}
