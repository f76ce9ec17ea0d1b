package settle.scenarios.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import settle.scenarios.document.DocumentException;
import settle.scenarios.document.Position;

/** Reads a whole UTF-8 text file within a size limit, and says plainly why not. */
final class TextFile {

  private static final int MEGABYTE = 1_000_000;

  /** Longest wait for the other end of a pipe [s]. */
  private static final int LONGEST_WAIT = 5;

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private TextFile() {}

  /**
   * The text of a file, without a byte order mark.
   *
   * @param file the file
   * @param what what the file is, for messages, such as "a scenario"
   * @param mostBytes the size limit [bytes]
   * @return its text
   * @throws DocumentException where it is missing, a directory, unreadable, empty, too large or not
   *     UTF-8
   */
  static String read(Path file, String what, int mostBytes) throws DocumentException {
    if (Files.isDirectory(file)) {
      throw fault("is a directory; expected " + what + " file");
    }
    if (!Files.exists(file)) {
      throw fault(
          Files.isSymbolicLink(file) ? "is a link to a file that is not there" : "no such file");
    }
    byte[] bytes;
    try (InputStream in = open(file)) {
      // One byte over the limit is enough to know: the rest of a huge file, or of a device without
      // end, stays unread.
      bytes = in.readNBytes(mostBytes + 1);
    } catch (IOException e) {
      throw fault(
          "cannot be read: " + (Files.isReadable(file) ? e.getMessage() : "permission denied"));
    }
    if (bytes.length > mostBytes) {
      throw fault(
          "is larger than " + mostBytes / MEGABYTE + " MB, the limit for " + what + " file");
    }
    String text = decode(bytes);
    if (text.isBlank()) {
      throw fault("is empty; expected " + what);
    }
    return text;
  }

  /**
   * Opens a file; a pipe only where somebody writes to it. Opening one waits for its other end, and
   * what waits there cannot be called back: it is left behind.
   */
  private static InputStream open(Path file) throws IOException, DocumentException {
    if (Files.isRegularFile(file)) {
      return Files.newInputStream(file);
    }
    BlockingQueue<Opened> opened = new ArrayBlockingQueue<>(1);
    Thread opener = new Thread(() -> opened.add(Opened.of(file)), "opening " + file);
    opener.setDaemon(true);
    opener.start();
    Opened end;
    try {
      end = opened.poll(LONGEST_WAIT, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted");
    }
    if (end == null) {
      throw fault("is a pipe to which nobody writes");
    }
    if (end.trouble() != null) {
      throw end.trouble();
    }
    return end.stream();
  }

  /** The end of a pipe, or why there is none; one of the two is null. */
  private record Opened(InputStream stream, IOException trouble) {

    static Opened of(Path file) {
      try {
        return new Opened(Files.newInputStream(file), null);
      } catch (IOException e) {
        return new Opened(null, e);
      }
    }
  }

  private static String decode(byte[] bytes) throws DocumentException {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    if (result.isError()) {
      throw notUtf8(out.flip().toString(), bytes[in.position()] & 0xFF);
    }
    String text = out.flip().toString();
    return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
  }

  private static DocumentException notUtf8(String before, int badByte) {
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    int column = before.length() - before.lastIndexOf('\n');
    return new DocumentException(
        new Position(line, column),
        "is not UTF-8: found the byte 0x"
            + Integer.toHexString(badByte).toUpperCase(Locale.ROOT)
            + "; save the file with UTF-8 encoding");
  }

  private static DocumentException fault(String message) {
    return new DocumentException(Position.START, message);
  }
}
