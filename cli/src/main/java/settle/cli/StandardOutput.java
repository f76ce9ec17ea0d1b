package settle.cli;

import java.io.IOException;
import java.io.OutputStream;

/**
 * The process's standard output. Writers on top of it swallow what goes wrong; it remembers the
 * first trouble, so that an answer that never arrived is not called done.
 */
final class StandardOutput extends OutputStream {

  private final OutputStream target;
  private IOException trouble;

  /**
   * @param target where it leads
   */
  StandardOutput(OutputStream target) {
    this.target = target;
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public synchronized void write(byte[] bytes, int from, int count) throws IOException {
    if (trouble == null) {
      try {
        target.write(bytes, from, count);
      } catch (IOException e) {
        trouble = e;
        throw e;
      }
    }
  }

  @Override
  public synchronized void flush() throws IOException {
    if (trouble == null) {
      try {
        target.flush();
      } catch (IOException e) {
        trouble = e;
        throw e;
      }
    }
  }

  /**
   * Why something could not be written; null where all was. A reader that has seen enough and gone
   * away is no trouble.
   */
  synchronized IOException trouble() {
    return trouble != null && isReaderGone(trouble) ? null : trouble;
  }

  /** The platform says so in words only. */
  private static boolean isReaderGone(IOException e) {
    String message = String.valueOf(e.getMessage());
    return message.contains("Broken pipe") || message.contains("pipe is being closed");
  }
}
