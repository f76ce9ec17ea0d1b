package settle.scenarios.survey;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import settle.scenarios.document.Position;

/**
 * The cells of a table as spreadsheets write it: parted by commas, semicolons or tabs, quoted where
 * they need to be, with empty rows anywhere.
 */
final class SurveyTable {

  /** What may part cells. */
  private static final char[] SEPARATORS = {',', ';', '\t'};

  /** A line by which some spreadsheets say what parts the cells. */
  private static final String SAYS_SEPARATOR = "sep=";

  /** Lines by which cells are told apart. */
  private static final int LOOKED_AT = 20;

  private final String text;
  private final char separator;
  private final List<Row> rows = new ArrayList<>();

  /** A row that is not empty. */
  final class Row {
    private final List<String> cells;

    /** Where in the text it begins. */
    private final int start;

    Row(List<String> cells, int start) {
      this.cells = cells;
      this.start = start;
    }

    int size() {
      return cells.size();
    }

    /** What stands in a cell, without space about it; nothing where the row is too short. */
    String cell(int column) {
      return column < cells.size() ? cells.get(column) : "";
    }

    /** Where a cell begins. */
    Position position(int column) {
      int at = start;
      for (int i = 0; i < column && at < text.length(); i++) {
        at = next(at);
      }
      while (at < text.length() && text.charAt(at) == ' ') {
        at++;
      }
      return SurveyTable.this.position(Math.min(at, text.length()));
    }

    int line() {
      return SurveyTable.this.position(start).line();
    }

    /** Where the cell behind one begins. */
    private int next(int from) {
      int at = from;
      while (at < text.length() && text.charAt(at) == ' ') {
        at++;
      }
      boolean quoted = at < text.length() && text.charAt(at) == '"';
      at += quoted ? 1 : 0;
      while (at < text.length()) {
        char c = text.charAt(at);
        if (c == '"' && quoted) {
          boolean doubled = at + 1 < text.length() && text.charAt(at + 1) == '"';
          at += doubled ? 2 : 1;
          quoted = doubled;
        } else if (!quoted && c == separator) {
          return at + 1;
        } else if (!quoted && (c == '\n' || c == '\r')) {
          return at;
        } else {
          at++;
        }
      }
      return at;
    }
  }

  /** Something that is no table. */
  static final class NoTable extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient Position position;

    NoTable(Position position, String message) {
      super(message);
      this.position = position;
    }

    Position position() {
      return position;
    }
  }

  /**
   * Cuts a text into cells.
   *
   * @param text of the file
   */
  SurveyTable(String text) throws NoTable {
    this.text = text.startsWith("\uFEFF") ? text.substring(1) : text;
    int first =
        this.text.regionMatches(true, 0, SAYS_SEPARATOR, 0, SAYS_SEPARATOR.length())
            ? endOfLine(0)
            : 0;
    separator = first > SAYS_SEPARATOR.length() ? this.text.charAt(4) : separator(this.text);
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(separator)
            .setIgnoreSurroundingSpaces(true)
            .setIgnoreEmptyLines(false)
            .setTrailingData(true)
            .get();
    try (CSVParser parser = CSVParser.parse(this.text.substring(first), format)) {
      for (CSVRecord row : parser) {
        add(row, first);
      }
    } catch (IOException | UncheckedIOException e) {
      Position at = rows.isEmpty() ? Position.START : rows.get(rows.size() - 1).position(0);
      throw new NoTable(
          new Position(at.line() + (rows.isEmpty() ? 0 : 1), 1),
          "is no table that could be read: a quotation mark is not closed");
    }
  }

  private void add(CSVRecord row, int offset) {
    List<String> cells = new ArrayList<>();
    row.forEach(cell -> cells.add(cell.strip().replace('\u00A0', ' ').strip()));
    if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
      rows.add(new Row(cells, offset + (int) row.getCharacterPosition()));
    }
  }

  private int endOfLine(int from) {
    int at = from;
    while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
      at++;
    }
    return at;
  }

  /** What there is most of in the first lines, outside quotation marks. */
  private static char separator(String text) {
    String first = text.lines().limit(LOOKED_AT).collect(Collectors.joining("\n"));
    String bare = first.replaceAll("\"[^\"]*\"", "");
    char most = SEPARATORS[0];
    long count = 0;
    for (char c : SEPARATORS) {
      long found = bare.chars().filter(x -> x == c).count();
      if (found > count) {
        most = c;
        count = found;
      }
    }
    return most;
  }

  private Position position(int at) {
    int line = 1;
    int begin = 0;
    for (int i = 0; i < at; i++) {
      char c = text.charAt(i);
      if (c == '\n' || (c == '\r' && (i + 1 >= text.length() || text.charAt(i + 1) != '\n'))) {
        line++;
        begin = i + 1;
      }
    }
    return new Position(line, at - begin + 1);
  }

  /** What parts its cells. */
  char separator() {
    return separator;
  }

  /** Its rows from the first that is not empty, headings and all. */
  List<Row> rows() {
    return rows;
  }
}
