package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** What becomes of a command whose answer cannot be written, or that the machine cannot bear. */
class StandardOutputTest {

  private final StringWriter err = new StringWriter();

  /** A stream that takes so many bytes and then says why it takes no more. */
  private static StandardOutput taking(int most, String then) {
    return new StandardOutput(
        new OutputStream() {
          private int taken;

          @Override
          public void write(int b) throws IOException {
            if (++taken > most) {
              throw new IOException(then);
            }
          }
        });
  }

  private int run(StandardOutput out, String... args) {
    return Settle.execute(args, out, new PrintWriter(err, true), Terminal.NONE);
  }

  @Test
  void whatIsWrittenArrives() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    assertThat(run(new StandardOutput(bytes), "--version")).isZero();
    assertThat(bytes.toString(StandardCharsets.UTF_8)).startsWith("settle ");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aFullDiskIsNoticed() {
    assertThat(run(taking(1000, "No space left on device"), "catalogue")).isEqualTo(3);
    assertThat(err)
        .hasToString(
            "settle: cannot write to standard output: No space left on device"
                + System.lineSeparator());
  }

  @Test
  void aReaderThatHasSeenEnoughIsNoTrouble() {
    assertThat(run(taking(1000, "Broken pipe"), "catalogue")).isZero();
    assertThat(err.toString()).isEmpty();
  }

  @Command(name = "fail")
  private record Failing(Error error) implements Runnable {
    @Override
    public void run() {
      throw error;
    }
  }

  private String endedBy(Error error) {
    StringWriter said = new StringWriter();
    CommandLine settle =
        Settle.commandLine(new PrintWriter(said), new PrintWriter(said, true), Terminal.NONE)
            .addSubcommand("fail", new CommandLine(new Failing(error)));
    settle.getSubcommands().get("fail").setErr(new PrintWriter(said, true));
    assertThat(Settle.execute(settle, new String[] {"fail"})).isEqualTo(3);
    return said.toString();
  }

  @Test
  void whatEndsAThreadEndsInOneLine() {
    assertThat(endedBy(new OutOfMemoryError("Java heap space")))
        .startsWith("settle: could not finish: it needs more memory than the ")
        .hasLineCount(1);
    assertThat(endedBy(new StackOverflowError())).startsWith("settle: could not").hasLineCount(1);
    assertThat(endedBy(new AssertionError("a\u001bb")))
        .startsWith("settle: could not finish, by a fault of its own: java.lang.AssertionError: ab")
        .doesNotContain("\tat ");
  }
}
