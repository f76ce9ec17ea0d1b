package settle.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
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
    StandardOutput out = new StandardOutput(new FileOutputStream(FileDescriptor.out));
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(Settle.execute(args, out, err, Boolean.getBoolean(TERMINAL)));
  }
}
