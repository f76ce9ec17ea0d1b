package settle.scenarios.readings;

import java.util.ArrayList;
import java.util.List;

/**
 * The cells of a table, each with its place: parted by commas, semicolons or tabs, quoted where
 * they need to be.
 */
final class ReadingsTable {

  /**
   * A cell.
   *
   * @param text what stands in it, without space about it
   * @param line where it begins
   * @param column where it begins, in characters
   */
  record Cell(String text, int line, int column) {}

  private static final char[] SEPARATORS = {';', '\t', ','};

  private final char separator;
  private final List<List<Cell>> rows = new ArrayList<>();

  // Where the cell being read began, and what of it was read
  private final StringBuilder open = new StringBuilder();
  private List<Cell> row = new ArrayList<>();
  private int line = 1;
  private int column = 1;
  private int beganAt = 1;
  private int beganIn = 1;

  /**
   * @param text of the whole file, without a byte order mark
   */
  ReadingsTable(String text) {
    separator = separator(text);
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean newLine =
          c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'));
      column++;
      if (c == '"') {
        boolean doubled = quoted && i + 1 < text.length() && text.charAt(i + 1) == '"';
        if (doubled) {
          open.append(c);
          i++;
          column++;
        } else {
          quoted = !quoted;
        }
      } else if (c == separator && !quoted) {
        endCell();
      } else if (newLine) {
        // A quotation mark that is never closed must not swallow the rest of the table.
        quoted = false;
        endRow();
      } else {
        open.append(c);
      }
    }
    endRow();
  }

  private void endCell() {
    String typed = open.toString();
    String text = typed.replace('\u00A0', ' ').strip();
    int indent = typed.length() - typed.stripLeading().length();
    row.add(new Cell(text, beganIn, beganAt + (text.isEmpty() ? 0 : indent)));
    open.setLength(0);
    beganAt = column;
    beganIn = line;
  }

  private void endRow() {
    endCell();
    if (row.stream().anyMatch(cell -> !cell.text().isEmpty())) {
      rows.add(row);
    }
    row = new ArrayList<>();
    line++;
    column = 1;
    beganAt = 1;
    beganIn = line;
  }

  /** Semicolon or tab where the first line has one; else a comma. */
  private static char separator(String text) {
    String first = text.lines().filter(l -> !l.isBlank()).findFirst().orElse("");
    for (char c : SEPARATORS) {
      if (first.indexOf(c) >= 0) {
        return c;
      }
    }
    return ',';
  }

  /** Rows that are not empty, headings first. */
  List<List<Cell>> rows() {
    return rows;
  }
}
