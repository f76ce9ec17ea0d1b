package settle.cli;

import java.io.PrintWriter;
import java.util.List;

/** Commands for tests outside the package. */
public final class CommandLines {

  private CommandLines() {}

  /** Carries out a command line as the process would. */
  public static int execute(List<String> args, PrintWriter out, PrintWriter err) {
    return Settle.execute(Settle.commandLine(out, err, Terminal.NONE), args.toArray(String[]::new));
  }
}
