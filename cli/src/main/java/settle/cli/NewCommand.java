package settle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import settle.scenarios.Starter;

/** A scenario to begin with. */
@Command(
    name = "new",
    header = "Writes a commented starter scenario.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    footer = {"%nExample:", "  settle new house.yaml"})
final class NewCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      converter = FileConverter.class,
      arity = "0..1",
      description =
          "Where to write it; standard output if not named. An existing file is never overwritten.")
  private Path file;

  @Override
  public Integer call() throws Failure {
    PrintWriter out = spec.commandLine().getOut();
    if (file == null) {
      out.print(Starter.text());
    } else {
      write();
      out.println(
          file
              + " is written. Change it to your house, then: "
              + Settle.of(spec).terminal().command("compare", file.toString()));
    }
    out.flush();
    return ExitStatus.DONE;
  }

  private void write() throws Failure {
    try {
      Files.writeString(
          file, Starter.text(), StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
    } catch (IOException e) {
      throw new Failure(
          ExitStatus.COULD_NOT_FINISH, "cannot write " + FileTrouble.describe(e, file), e);
    }
  }
}
