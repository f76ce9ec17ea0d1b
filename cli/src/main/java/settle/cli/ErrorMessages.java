package settle.cli;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * Says what went wrong: one message on standard error, what to try, and never a stack trace unless
 * asked for.
 */
final class ErrorMessages implements IParameterExceptionHandler, IExecutionExceptionHandler {

  @Override
  public int handleParseException(ParameterException e, String[] args) {
    CommandLine command = e.getCommandLine();
    PrintWriter err = command.getErr();
    String name = command.getCommandSpec().qualifiedName();
    err.println("settle: " + message(e));
    err.println("Try '" + name + " --help'.");
    // The command line may be wrong before the option is reached.
    if (List.of(args).contains(Settle.DEBUG)) {
      e.printStackTrace(err);
    }
    return ExitStatus.WRONG_INPUT;
  }

  @Override
  public int handleExecutionException(Exception e, CommandLine command, ParseResult parsed) {
    PrintWriter err = command.getErr();
    int status = ExitStatus.COULD_NOT_FINISH;
    if (e instanceof Failure failure) {
      failure.messages().forEach(message -> err.println("settle: " + message));
      status = failure.exitStatus();
    } else {
      err.println("settle: could not finish, by a fault of its own: " + e);
    }
    if (((Settle) parsed.commandSpec().userObject()).debug()) {
      e.printStackTrace(err);
    } else if (!(e instanceof Failure)) {
      err.println("Run it again with " + Settle.DEBUG + " for what a report of the fault needs.");
    }
    return status;
  }

  private static String message(ParameterException e) {
    if (!(e instanceof UnmatchedArgumentException unmatched)) {
      return e.getMessage();
    }
    String found = unmatched.getUnmatched().get(0);
    String kind = "argument";
    if (unmatched.isUnknownOption()) {
      kind = "option";
    } else if (!e.getCommandLine().getSubcommands().isEmpty()) {
      kind = "command";
    }
    String nearest = String.join(" or ", unmatched.getSuggestions());
    return "unknown "
        + kind
        + " '"
        + found
        + "'"
        + (nearest.isEmpty() ? "" : "; nearest: " + nearest);
  }
}
