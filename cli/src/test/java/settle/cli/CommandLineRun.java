package settle.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * One command as a script sees it.
 *
 * @param status exit status
 * @param out what it wrote to standard output
 * @param err what it wrote to standard error
 */
record CommandLineRun(int status, String out, String err) {

  static CommandLineRun of(Object... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] words = new String[args.length];
    for (int i = 0; i < args.length; i++) {
      words[i] = args[i].toString();
    }
    int status =
        Settle.commandLine(new PrintWriter(out), new PrintWriter(err), Terminal.NONE)
            .execute(words);
    return new CommandLineRun(status, out.toString(), err.toString());
  }
}
