package settle.cli;

import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.concurrent.CompletionException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
import settle.scenarios.document.PlainText;

/**
 * Says what went wrong: one message on standard error, what to try, and never a stack trace unless
 * asked for.
 */
final class ErrorMessages implements IParameterExceptionHandler, IExecutionExceptionHandler {

  private static final long MEGABYTE = 1 << 20;

  @Override
  public int handleParseException(ParameterException e, String[] args) {
    CommandLine command = e.getCommandLine();
    PrintWriter err = command.getErr();
    String name = command.getCommandSpec().qualifiedName();
    err.println("settle: " + PlainText.line(message(e)));
    err.println("Try '" + name + " --help'.");
    // The command line may be wrong before the option is reached.
    if (List.of(args).contains(Settle.DEBUG)) {
      e.printStackTrace(err);
    }
    return ExitStatus.WRONG_INPUT;
  }

  @Override
  public int handleExecutionException(Exception e, CommandLine command, ParseResult parsed) {
    return end(e, command.getErr(), ((Settle) parsed.commandSpec().userObject()).debug());
  }

  /**
   * Says what ended a command.
   *
   * @param e what was thrown
   * @param err where to say it
   * @param debug whether the stack trace is wanted
   * @return exit status
   */
  static int end(Throwable e, PrintWriter err, boolean debug) {
    Throwable reason = e instanceof CompletionException && e.getCause() != null ? e.getCause() : e;
    int status = ExitStatus.COULD_NOT_FINISH;
    boolean ownFault = false;
    if (reason instanceof Failure failure) {
      failure.messages().forEach(message -> err.println("settle: " + PlainText.line(message)));
      status = failure.exitStatus();
    } else if (reason instanceof OutOfMemoryError) {
      err.println(
          "settle: could not finish: it needs more memory than the "
              + Runtime.getRuntime().maxMemory() / MEGABYTE
              + " MB it may have. A shorter run or fewer rooms need less; JDK_JAVA_OPTIONS=-Xmx4g lets"
              + " it have more.");
    } else if (reason instanceof StackOverflowError) {
      err.println("settle: could not finish: the input is nested too deeply.");
    } else if (reason instanceof ArithmeticException) {
      err.println("settle: the model cannot be solved: " + PlainText.line(message(reason)));
    } else if (reason instanceof UncheckedIOException) {
      err.println("settle: could not finish: " + PlainText.line(message(reason)));
    } else {
      ownFault = true;
      err.println(
          "settle: could not finish, by a fault of its own: " + PlainText.line(reason.toString()));
    }
    if (debug) {
      e.printStackTrace(err);
    } else if (ownFault) {
      err.println("Run it again with " + Settle.DEBUG + " for the details a fault report needs.");
    }
    return status;
  }

  private static String message(Throwable e) {
    return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
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
