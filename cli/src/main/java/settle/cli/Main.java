package settle.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Where the process starts, and the only place that knows its streams. */
public final class Main {

  /**
   * Set by the launcher where standard error is a terminal: the Java platform cannot tell it apart.
   */
  private static final String TERMINAL = "settle.terminal";

  private Main() {}

  /**
   * Runs one command.
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int status = Settle.commandLine(out, err, Boolean.getBoolean(TERMINAL)).execute(args);
    out.flush();
    System.exit(status);
  }
}
