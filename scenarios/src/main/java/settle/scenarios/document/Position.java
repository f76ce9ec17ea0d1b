package settle.scenarios.document;

/**
 * A place in a text file.
 *
 * @param line line number, the first is 1
 * @param column column number in characters, the first is 1
 */
public record Position(int line, int column) {

  /** The beginning of a file. */
  public static final Position START = new Position(1, 1);
}
