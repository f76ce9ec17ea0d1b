package settle.cli;

import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the script that lets a shell complete commands and options. */
@Command(
    name = "completion",
    header = "Prints a completion script for bash and zsh.",
    mixinStandardHelpOptions = true,
    footer = {"%nExample:", "  source <(settle completion)"})
final class CompletionCommand implements Runnable {

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    CommandLine settle = spec.parent().commandLine();
    settle.getOut().print(AutoComplete.bash(settle.getCommandName(), settle));
    settle.getOut().flush();
  }
}
