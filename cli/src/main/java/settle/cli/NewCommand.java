package settle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import settle.scenarios.Scenario;
import settle.scenarios.ScenarioException;
import settle.scenarios.Starter;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.Finding;
import settle.scenarios.survey.SurveyScenario;
import settle.scenarios.survey.SurveyTemplate;

/** A scenario to begin with. */
@Command(
    name = "new",
    header = "Writes a commented starter scenario, or the scenario of a survey.",
    description = {
      "",
      "A survey is a table (CSV) with a row of headings and then a row a room: room, size (or length,"
          + " width and height), want, loss; and where they are known floor, free walls (free lengths in order"
          + " round the room, 4.2 + 3.1 + 4.2 + 2.2, or a column each: wall 1, wall 2), the existing"
          + " radiator, radiator height and radiator length, and outdoor. Units stand in the heading,"
          + " loss (W), or in the cell; feet, inches, BTU/h and °F are read too.%n"
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {
      "%nExample:",
      "  settle new house.yaml",
      "  settle new --template survey.csv",
      "  settle new --from survey.csv house.yaml"
    })
final class NewCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @ArgGroup private What what;

  /** What is written instead of the starter. */
  private static final class What {
    @Option(
        names = "--from",
        paramLabel = "SURVEY",
        converter = FileConverter.class,
        description = "Make the scenario of a survey (CSV), one row a room.")
    private Path survey;

    @Option(
        names = "--template",
        description = "Write the headings of an empty survey, to be filled in a spreadsheet.")
    private boolean template;
  }

  @Parameters(
      paramLabel = "FILE",
      converter = FileConverter.class,
      arity = "0..1",
      description =
          "Where to write it; standard output if not named. An existing file is never overwritten.")
  private Path file;

  @Override
  public Integer call() throws Failure {
    PrintWriter out = spec.commandLine().getOut();
    boolean template = what != null && what.template;
    String text = what == null ? Starter.text() : template ? SurveyTemplate.text() : surveyed();
    if (file == null) {
      out.print(text);
    } else {
      write(text);
      out.println(file + " is written. " + next(template));
    }
    out.flush();
    return ExitStatus.DONE;
  }

  private String next(boolean template) {
    Terminal terminal = Settle.of(spec).terminal();
    String name = file.toString();
    if (template) {
      return "Fill it, a row a room, then: "
          + terminal.command("new", "--from", name, "house.yaml");
    }
    return what == null
        ? "Change it to your house, then: " + terminal.command("compare", name)
        : "What it assumes: "
            + terminal.command("check", name)
            + "; then: "
            + terminal.command("size", name)
            + ", "
            + terminal.command("compare", name);
  }

  /** The scenario of the survey, read once so that nothing is written that cannot be used. */
  private String surveyed() throws Failure {
    try {
      String text =
          SurveyScenario.write(
              ScenarioFiles.survey(what.survey), what.survey.getFileName().toString());
      Scenario scenario = ScenarioFile.read(spec, text, file == null ? what.survey : file);
      PrintWriter err = spec.commandLine().getErr();
      scenario.warnings().forEach(w -> err.println("settle: " + w.message()));
      err.flush();
      return text;
    } catch (ScenarioException e) {
      throw new Failure(
          ExitStatus.WRONG_INPUT, e.problems().stream().map(Finding::toString).toList(), e);
    }
  }

  private void write(String text) throws Failure {
    try {
      Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
    } catch (IOException e) {
      throw new Failure(
          ExitStatus.COULD_NOT_FINISH, "cannot write " + FileTrouble.describe(e, file), e);
    }
  }
}
