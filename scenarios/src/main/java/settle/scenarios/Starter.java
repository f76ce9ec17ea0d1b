package settle.scenarios;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A commented scenario to start from. */
public final class Starter {

  private Starter() {}

  /**
   * Its text.
   *
   * @return YAML that is read without a warning
   */
  public static String text() {
    try (InputStream in = Starter.class.getResourceAsStream("starter.yaml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
