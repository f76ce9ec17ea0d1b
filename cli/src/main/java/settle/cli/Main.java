package settle.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Where the process starts. */
@Command(name = "settle", version = "settle 0.1.0", mixinStandardHelpOptions = true)
public final class Main implements Runnable {
  private Main() {}

  public static void main(String[] args) {
    System.exit(new CommandLine(new Main()).execute(args));
  }

  @Override
  public void run() {}
}
