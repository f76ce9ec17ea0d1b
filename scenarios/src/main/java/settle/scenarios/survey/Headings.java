package settle.scenarios.survey;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import settle.scenarios.document.PlainText;
import settle.scenarios.format.Findings;
import settle.scenarios.format.NearestName;
import settle.scenarios.survey.SurveyTable.Row;

/** The headings of a survey: which column is where. */
final class Headings {

  /** Rows among which the headings are looked for: a title may stand above them. */
  private static final int FIRST_ROWS = 20;

  private final Row row;
  private final Findings findings;
  private final Map<Column, Integer> columns = new EnumMap<>(Column.class);
  private final Map<Integer, Heading> at = new HashMap<>();

  /** Columns of single walls, by their number. */
  private final SortedMap<Integer, Integer> walls = new TreeMap<>();

  private final List<String> passedOver = new ArrayList<>();

  private Headings(Row row, Findings findings) {
    this.row = row;
    this.findings = findings;
  }

  /** Which row has the headings: the first that has a room and something else. */
  static int row(List<Row> rows) {
    for (int r = 0; r < Math.min(FIRST_ROWS, rows.size()); r++) {
      Set<Column> found = new HashSet<>();
      for (int c = 0; c < rows.get(r).size(); c++) {
        Heading.of(rows.get(r).cell(c)).ifPresent(h -> found.add(h.column()));
      }
      if (found.contains(Column.ROOM) && found.size() > 1) {
        return r;
      }
    }
    return 0;
  }

  /** Reads a row of headings. */
  static Headings read(Row row, Findings findings) {
    Headings headings = new Headings(row, findings);
    List<Integer> unknown = new ArrayList<>();
    for (int c = 0; c < row.size(); c++) {
      Optional<Heading> heading = Heading.of(row.cell(c));
      if (heading.isPresent()) {
        headings.add(heading.get(), c);
      } else if (!row.cell(c).isEmpty()) {
        unknown.add(c);
      }
    }
    unknown.forEach(headings::unknown);
    headings.requireColumns();
    return headings;
  }

  private void add(Heading heading, int column) {
    Integer before =
        heading.number() > 0
            ? walls.putIfAbsent(heading.number(), column)
            : columns.putIfAbsent(heading.column(), column);
    if (before != null) {
      findings.problem(
          row.position(column),
          "found a second column '" + heading.column().heading() + "', expected one");
    }
    at.put(column, heading);
  }

  /** A heading that is nearly one of those there are is a slip; others are somebody else's. */
  private void unknown(int column) {
    String typed = row.cell(column);
    String words = Column.plain(typed.replaceFirst("[(\\[{].*", ""));
    Optional<Column> nearest = NearestName.of(words, Column.headings()).flatMap(Column::of);
    if (nearest.isPresent() && !columns.containsKey(nearest.get())) {
      findings.problem(
          row.position(column),
          "unknown heading '"
              + Measure.shown(typed)
              + "'; the nearest is '"
              + nearest.get().heading()
              + "'");
    } else {
      passedOver.add(PlainText.line(typed));
    }
  }

  private void requireColumns() {
    for (Column column : List.of(Column.ROOM, Column.WANT, Column.LOSS)) {
      if (!has(column)) {
        lacks("'" + column.heading() + "', " + column.meaning());
      }
    }
    boolean sides = has(Column.LENGTH) && has(Column.WIDTH);
    if (!has(Column.SIZE) && !((sides || has(Column.AREA)) && has(Column.HEIGHT))) {
      lacks(
          "'size', "
              + Column.SIZE.meaning()
              + "; or 'length', 'width' and 'height'; or 'area' and 'height'");
    }
  }

  private void lacks(String what) {
    findings.problem(row.position(0), "lacks a column " + what);
  }

  boolean has(Column column) {
    return columns.containsKey(column);
  }

  /** Where a column is; 0 where it is not. */
  int at(Column column) {
    return columns.getOrDefault(column, 0);
  }

  /** The heading over a column, if it means anything. */
  Optional<Heading> heading(int column) {
    return Optional.ofNullable(at.get(column));
  }

  /** Columns that hold quantities. */
  List<Integer> quantities() {
    return at.entrySet().stream()
        .filter(e -> e.getValue().column().measure().isPresent())
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Columns of single walls in the order of their numbers. */
  List<Integer> walls() {
    return List.copyOf(walls.values());
  }

  /** How many cells its row has. */
  int width() {
    return row.size();
  }

  /** What stands in the headings that mean nothing here. */
  List<String> passedOver() {
    return passedOver;
  }

  /** Notes what is wrong with the table as a whole. */
  void problem(String message) {
    findings.problem(row.position(0), message);
  }
}
