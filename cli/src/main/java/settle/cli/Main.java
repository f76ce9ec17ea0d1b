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

  /** Set by the launcher to how it was called. */
  private static final String PROGRAM = "settle.program";

  private static volatile boolean ended;

  private Main() {}

  /**
   * Runs one command.
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    StandardOutput out = new StandardOutput(new FileOutputStream(FileDescriptor.out));
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    boolean watched = Boolean.getBoolean(TERMINAL);
    Runtime.getRuntime().addShutdownHook(new Thread(() -> sayInterrupted(err, watched)));
    Terminal terminal = Terminal.of(watched, System.getenv(), System.getProperty(PROGRAM));
    int status = Settle.execute(args, out, err, terminal);
    ended = true;
    System.exit(status);
  }

  private static void sayInterrupted(PrintWriter err, boolean watched) {
    if (!ended) {
      err.println(
          (watched ? Progress.ERASE_LINE : "") + "settle: interrupted; nothing was written.");
    }
  }
}
