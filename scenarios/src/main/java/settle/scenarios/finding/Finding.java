package settle.scenarios.finding;

/**
 * Something wrong or doubtful in a file, with its place.
 *
 * @param file the file as the user named it
 * @param line line number, the first is 1
 * @param column column in characters, the first is 1
 * @param message one line: which key, what was found, what was expected, the nearest valid name
 */
public record Finding(String file, int line, int column, String message) {

  @Override
  public String toString() {
    return file + ":" + line + ":" + column + ": " + message;
  }
}
