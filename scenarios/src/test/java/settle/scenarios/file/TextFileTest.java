package settle.scenarios.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import settle.scenarios.document.DocumentException;
import settle.scenarios.document.Position;

class TextFileTest {

  private static final int LIMIT = 1_000_000;
  private static final Path MKFIFO = Path.of("/usr/bin/mkfifo");

  @TempDir Path folder;

  private String read(Path file) throws DocumentException {
    return TextFile.read(file, "a scenario", LIMIT);
  }

  private Path file(byte[] bytes) throws Exception {
    return Files.write(folder.resolve("house.yaml"), bytes);
  }

  @Test
  void aMissingFile() {
    assertThatThrownBy(() -> read(folder.resolve("nowhere.yaml"))).hasMessage("no such file");
  }

  @Test
  void aDirectory() {
    assertThatThrownBy(() -> read(folder)).hasMessage("is a directory; expected a scenario file");
  }

  @Test
  void anEmptyFile() throws Exception {
    Path empty = file(new byte[0]);
    assertThatThrownBy(() -> read(empty)).hasMessage("is empty; expected a scenario");
    Path blank = file("  \n\n".getBytes(StandardCharsets.UTF_8));
    assertThatThrownBy(() -> read(blank)).hasMessage("is empty; expected a scenario");
  }

  @Test
  void aFileOverTheLimit() throws Exception {
    Path huge = file(new byte[10 * LIMIT]);
    assertThatThrownBy(() -> read(huge))
        .hasMessage("is larger than 1 MB, the limit for a scenario file");
  }

  @Test
  void anotherEncodingIsToldWithItsPlace() throws Exception {
    Path latin1 = file("title: a\nsite: 5 \u00B0C".getBytes(StandardCharsets.ISO_8859_1));
    DocumentException e = catchThrowableOfType(DocumentException.class, () -> read(latin1));
    assertThat(e)
        .hasMessage("is not UTF-8: found the byte 0xB0; save the file with UTF-8 encoding");
    assertThat(e.faults().get(0).position()).isEqualTo(new Position(2, 9));
  }

  @Test
  void aFileCutInTheMiddleOfACharacter() throws Exception {
    Path cut = file(new byte[] {'a', (byte) 0xC2});
    DocumentException e = catchThrowableOfType(DocumentException.class, () -> read(cut));
    assertThat(e)
        .hasMessage("is not UTF-8: found the byte 0xC2; save the file with UTF-8 encoding");
  }

  @Test
  void aByteOrderMarkIsNoContent() throws Exception {
    Path marked = file("\uFEFFtitle: a".getBytes(StandardCharsets.UTF_8));
    assertThat(read(marked)).isEqualTo("title: a");
  }

  /** As a shell's {@code <(…)} hands one over. */
  @Test
  void aPipeIsReadToItsEnd() throws Exception {
    Path pipe = pipe();
    Thread writer =
        new Thread(
            () -> {
              try {
                Files.writeString(pipe, "title: a");
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
    writer.setDaemon(true);
    writer.start();
    assertThat(read(pipe)).isEqualTo("title: a");
  }

  @Test
  void whoIsInterruptedWaitsForNobodyToWrite() throws Exception {
    Path pipe = pipe();
    Thread.currentThread().interrupt();
    assertThatThrownBy(() -> read(pipe)).hasMessage("cannot be read: interrupted");
    assertThat(Thread.interrupted()).as("still interrupted").isTrue();
  }

  private Path pipe() throws Exception {
    assumeTrue(Files.isExecutable(MKFIFO), "no pipes that have a name here");
    Path pipe = folder.resolve("pipe");
    assertThat(new ProcessBuilder(MKFIFO.toString(), pipe.toString()).start().waitFor()).isZero();
    return pipe;
  }

  @Test
  void aDeviceWithNothingInItIsEmpty() {
    Path nothing = Path.of("/dev/null");
    assumeTrue(Files.exists(nothing), "no such device here");
    assertThatThrownBy(() -> read(nothing)).hasMessage("is empty; expected a scenario");
  }
}
