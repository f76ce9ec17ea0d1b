package settle.sim.validation;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table of figures from outside: comma-separated values under a heading of comment lines that say
 * where they come from.
 *
 * <pre>
 *   # about: free text, any number of lines
 *   # source: a constant of {@link Source}
 *   # place: clause, table or page
 *   # kind: a constant of {@link Kind}
 *   # expect NAME: UNIT; TOLERANCE, REASON     one for each column that is an expected value
 *   # unprinted: NAME                          an input that another input's name stands for (optional)
 * </pre>
 *
 * <p>All other columns are inputs, headed "name" or "name [unit]", and are printed with each row. A
 * column "missed because" says why a record is known not to hold. A column that is expected but
 * that no group asserts fails {@link ValidationTest}. An empty cell expects nothing.
 */
final class DataFile {

  private static final String FOLDER = "/validation/";
  private static final String MISSED = "missed because";

  /** Expected columns of every file read so far, as "file: column". */
  private static final Set<String> EXPECTED = new TreeSet<>();

  /** Those of them that a group asserts. */
  private static final Set<String> ASSERTED = new TreeSet<>();

  private static final Set<String> READ = new TreeSet<>();

  private final String name;
  private final Map<String, String> heading = new LinkedHashMap<>();
  private final List<CSVRecord> records;
  private final List<Column> columns = new ArrayList<>();

  private DataFile(String name) {
    this.name = name;
    try (InputStream stream = DataFile.class.getResourceAsStream(FOLDER + name)) {
      if (stream == null) {
        throw new IllegalArgumentException("no data file " + name);
      }
      List<String> table = new ArrayList<>();
      BufferedReader reader =
          new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (line.startsWith("#")) {
          int colon = line.indexOf(':');
          if (colon < 0) {
            throw new IllegalArgumentException(name + ": heading line without a colon: " + line);
          }
          heading.merge(
              line.substring(1, colon).strip(),
              line.substring(colon + 1).strip(),
              (a, b) -> a + " " + b);
        } else if (!line.isBlank()) {
          table.add(line);
        }
      }
      CSVFormat format =
          CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
      try (CSVParser parser = CSVParser.parse(String.join("\n", table), format)) {
        records = parser.getRecords();
        for (String title : parser.getHeaderNames()) {
          Column column = Column.parse(title);
          columns.add(column);
          if (isExpected(column)) {
            EXPECTED.add(name + ": " + column.name());
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    for (String key : List.of("about", "source", "place", "kind")) {
      headingValue(key);
    }
    READ.add(name);
  }

  static DataFile read(String name) {
    return new DataFile(name);
  }

  /** Files read so far. */
  static Set<String> filesRead() {
    return READ;
  }

  /** Expected columns of the files read so far that no group has asserted. */
  static Set<String> unasserted() {
    Set<String> unasserted = new TreeSet<>(EXPECTED);
    unasserted.removeAll(ASSERTED);
    return unasserted;
  }

  private String headingValue(String key) {
    String value = heading.get(key);
    if (value == null) {
      throw new IllegalArgumentException(name + ": no heading line \"# " + key + ":\"");
    }
    return value;
  }

  private boolean isExpected(Column column) {
    return heading.containsKey("expect " + column.name());
  }

  private boolean isPrinted(Column column) {
    return !isExpected(column)
        && !column.name().equals(MISSED)
        && !column.name().equals(heading.get("unprinted"));
  }

  /**
   * One row for each record that has a value in an expected column.
   *
   * @param column the expected column
   * @param claim what the row claims
   * @param code what the code gives for the record's inputs, in the column's unit
   */
  List<Row> rows(String column, Function<Line, String> claim, ToDoubleFunction<Line> code) {
    return rows(column, fileTolerance(column), null, claim, code);
  }

  private Tolerance fileTolerance(String column) {
    String expectation = headingValue("expect " + column);
    return Tolerance.parse(expectation.substring(expectation.indexOf(';') + 1));
  }

  /** The same, for rows that bear on one of the program's main results. */
  List<Row> rows(
      String column, MainResult result, Function<Line, String> claim, ToDoubleFunction<Line> code) {
    return rows(column, fileTolerance(column), result, claim, code);
  }

  /** The same with another tolerance than the file's: that of a method which is not exact. */
  List<Row> rows(
      String column,
      Tolerance tolerance,
      Function<Line, String> claim,
      ToDoubleFunction<Line> code) {
    return rows(column, tolerance, null, claim, code);
  }

  private List<Row> rows(
      String column,
      Tolerance tolerance,
      MainResult result,
      Function<Line, String> claim,
      ToDoubleFunction<Line> code) {
    String expectation = headingValue("expect " + column);
    String unit = expectation.substring(0, expectation.indexOf(';')).strip();
    List<Row> rows = new ArrayList<>();
    for (Line line : lines()) {
      if (line.text(column).isEmpty()) {
        continue;
      }
      rows.add(
          expecting(line, column, unit, tolerance, claim.apply(line))
              .bearingOn(result)
              .missedBecause(missed(line))
              .codeGives(() -> code.applyAsDouble(line)));
    }
    ASSERTED.add(name + ": " + column);
    return rows;
  }

  /** The record's value, or from memory of the source a band about it. */
  private Row.Draft expecting(
      Line line, String column, String unit, Tolerance tolerance, String claim) {
    Kind kind = Kind.valueOf(headingValue("kind"));
    Row.Draft row =
        Row.claim(claim)
            .source(Source.valueOf(headingValue("source")), headingValue("place"))
            .kind(kind)
            .given(inputs(line));
    double expected = line.number(column);
    if (kind != Kind.MEMORY) {
      return row.expects(expected, line.text(column), unit, tolerance);
    }
    double margin = tolerance.absoluteFor(expected);
    return row.expectsBetween(
        expected - margin,
        expected + margin,
        unit,
        "table gives " + line.text(column) + "; " + tolerance.words() + ", " + tolerance.reason());
  }

  /** What the file says of a record that is known not to hold, in its column "missed because". */
  private String missed(Line line) {
    if (columns.stream().noneMatch(column -> column.name().equals(MISSED))) {
      return null;
    }
    String why = line.text(MISSED);
    return why.isEmpty() ? null : why;
  }

  /** All records. */
  List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    for (CSVRecord csv : records) {
      Map<String, String> values = new LinkedHashMap<>();
      for (int i = 0; i < columns.size(); i++) {
        values.put(columns.get(i).name(), csv.get(i));
      }
      lines.add(new Line(values));
    }
    return lines;
  }

  private String inputs(Line line) {
    return columns.stream()
        .filter(column -> isPrinted(column) && !line.text(column.name()).isEmpty())
        .map(column -> column.print(line.text(column.name())))
        .collect(Collectors.joining(", "));
  }

  /** One record of the table; columns are named without their unit in brackets. */
  static final class Line {
    private final Map<String, String> values;

    private Line(Map<String, String> values) {
      this.values = values;
    }

    double number(String column) {
      return Double.parseDouble(text(column));
    }

    String text(String column) {
      String value = values.get(column);
      if (value == null) {
        throw new IllegalArgumentException("no column " + column + " among " + values.keySet());
      }
      return value;
    }
  }

  /** A column heading, "name" or "name [unit]". */
  private record Column(String name, String unit) {

    static Column parse(String heading) {
      int bracket = heading.indexOf(" [");
      return bracket < 0
          ? new Column(heading, "")
          : new Column(
              heading.substring(0, bracket), heading.substring(bracket + 2, heading.length() - 1));
    }

    String print(String value) {
      return (name + " " + value + " " + unit).strip();
    }
  }
}
