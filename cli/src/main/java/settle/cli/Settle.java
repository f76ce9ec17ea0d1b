package settle.cli;

import java.io.BufferedWriter;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import settle.scenarios.house.ScenarioFormat;

/** The program: the commands and what holds for all of them. */
@Command(
    name = "settle",
    header = "Heated skirting or radiators: which room gets warm, how soon, and stays warm?",
    description = {
      "",
      "Simulates a house on wet central heating, described in a file, with each arrangement of emitters in it,"
          + " and says how each settles.%n"
    },
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND",
    commandListHeading = "%nCommands:%n",
    exitCodeListHeading = "%nExit status:%n",
    exitCodeList = {
      "0:done",
      "1:done, and the answer is: does not keep up (only with --strict)",
      "2:the command line or the scenario is wrong",
      "3:it could not finish"
    },
    footer = {"%nExample:", "  settle new house.yaml", "  settle compare house.yaml --out result"},
    subcommands = {
      CompareCommand.class,
      VerdictCommand.class,
      TuneCommand.class,
      SimulateCommand.class,
      SizeCommand.class,
      CommissionCommand.class,
      AcceptCommand.class,
      ValveCommand.class,
      CheckCommand.class,
      NewCommand.class,
      CatalogueCommand.class,
      DemoCommand.class,
      PageCommand.class,
      CompletionCommand.class
    })
final class Settle implements Runnable {

  static final String DEBUG = "--debug";

  @Spec private CommandSpec spec;

  @Option(
      names = DEBUG,
      scope = ScopeType.INHERIT,
      description = "Print the stack trace if something fails.")
  private boolean debug;

  private final Terminal terminal;
  private final ScenarioFormat format;

  private Settle(Terminal terminal, ScenarioFormat format) {
    this.terminal = terminal;
    this.format = format;
  }

  /** The program that a command is one of. */
  static Settle of(CommandSpec command) {
    return (Settle) command.parent().userObject();
  }

  /**
   * The command line, ready to execute.
   *
   * @param out standard output: results, and nothing else with --json
   * @param err standard error: messages and progress
   * @param terminal what they are read on
   */
  static CommandLine commandLine(PrintWriter out, PrintWriter err, Terminal terminal) {
    return commandLine(out, err, terminal, ScenarioFormat.BUILT_IN);
  }

  /** The command line for scenarios in a format that may know further kinds. */
  static CommandLine commandLine(
      PrintWriter out, PrintWriter err, Terminal terminal, ScenarioFormat format) {
    ErrorMessages messages = new ErrorMessages();
    return new CommandLine(new Settle(terminal, format))
        .setOut(out)
        .setErr(err)
        .setUsageHelpWidth(Math.min(Math.max(terminal.width(), 60), 120))
        .setParameterExceptionHandler(messages)
        .setExecutionExceptionHandler(messages);
  }

  /**
   * Carries out a command line, whatever happens.
   *
   * @param args the command line
   * @param stream standard output
   * @param err standard error
   * @param terminal what they are read on
   * @return exit status
   */
  static int execute(String[] args, StandardOutput stream, PrintWriter err, Terminal terminal) {
    PrintWriter out =
        new PrintWriter(
            new BufferedWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8)), false);
    int status = execute(commandLine(out, err, terminal), args);
    out.flush();
    if (stream.trouble() != null) {
      err.println("settle: cannot write to standard output: " + stream.trouble().getMessage());
      status = ExitStatus.COULD_NOT_FINISH;
    }
    return status;
  }

  /**
   * Carries out a command line that is already set up. Whatever would end the thread ends in a
   * message: too little memory is no reason for a stack trace.
   */
  static int execute(CommandLine command, String[] args) {
    try {
      return command.execute(args);
    } catch (Throwable e) {
      return ErrorMessages.end(e, command.getErr(), List.of(args).contains(DEBUG));
    }
  }

  /** Whether the stack trace of a failure is wanted. */
  boolean debug() {
    return debug;
  }

  /** What it is read on. */
  Terminal terminal() {
    return terminal;
  }

  /** What a scenario may say. */
  ScenarioFormat format() {
    return format;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "a command is missing");
  }
}
