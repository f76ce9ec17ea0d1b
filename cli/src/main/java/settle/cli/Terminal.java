package settle.cli;

import java.util.Map;
import settle.cli.output.Layout;

/**
 * What a command is read on.
 *
 * @param watched whether someone watches standard error
 * @param width of a line [characters]
 * @param program how the program was called
 */
record Terminal(boolean watched, int width, String program) {

  /** No terminal, and no known width. */
  static final Terminal NONE = new Terminal(false, Layout.USUAL_WIDTH, "settle");

  /**
   * From the environment of the process.
   *
   * @param watched whether someone watches standard error
   * @param environment of the process
   * @param program how it was called; null if that is not known
   */
  static Terminal of(boolean watched, Map<String, String> environment, String program) {
    String columns = environment.getOrDefault("COLUMNS", "");
    boolean known = columns.matches("[1-9]\\d{1,3}");
    return new Terminal(
        watched,
        known ? Integer.parseInt(columns) : NONE.width,
        program == null ? NONE.program : program);
  }

  /** A command as it must be typed to be carried out: words with spaces quoted. */
  String command(String... words) {
    StringBuilder line = new StringBuilder(quoted(program));
    for (String word : words) {
      line.append(' ').append(quoted(word));
    }
    return line.toString();
  }

  private static String quoted(String word) {
    return word.matches("[\\p{L}\\p{N}_./@%+=:,~-]+")
        ? word
        : "'" + word.replace("'", "'\\''") + "'";
  }
}
