package settle.scenarios.survey;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import settle.scenarios.document.PlainText;
import settle.scenarios.format.Findings;
import settle.scenarios.format.Form;
import settle.scenarios.quantity.QuantityException;
import settle.scenarios.survey.SurveyTable.Row;

/** The cells of one row under their headings. What is wrong in one is noted at its place. */
final class Cells {

  /** What stands in a cell that is left empty. */
  private static final Set<String> NOTHING = Set.of("", "-", "–", "—", "n/a", "na", "none", "nil");

  private final Row row;
  private final Headings headings;
  private final Decimals decimals;
  private final Findings findings;

  Cells(Row row, Headings headings, Decimals decimals, Findings findings) {
    this.row = row;
    this.headings = headings;
    this.decimals = decimals;
    this.findings = findings;
  }

  Headings headings() {
    return headings;
  }

  int line() {
    return row.line();
  }

  /** Whether anything stands in a cell. */
  boolean has(int column) {
    return !NOTHING.contains(row.cell(column).toLowerCase(Locale.ROOT));
  }

  boolean has(Column column) {
    return headings.has(column) && has(headings.at(column));
  }

  /** Words of a cell, on one line; none where its column is not there. */
  String words(Column column) {
    return headings.has(column) ? PlainText.line(row.cell(headings.at(column))) : "";
  }

  String typed(int column) {
    return row.cell(column);
  }

  /** How many cells there are. */
  int width() {
    return row.size();
  }

  /** Notes a mistake in a cell. */
  void problem(int column, String message) {
    String what = headings.heading(column).map(h -> h.column().heading() + ": ").orElse("");
    findings.problem(row.position(column), room() + what + message);
  }

  void problem(Column column, String message) {
    problem(headings.at(column), message);
  }

  /** Notes that a cell is needed and empty. */
  void lacks(Column column, String expected) {
    int at = headings.has(column) ? headings.at(column) : headings.at(Column.ROOM);
    findings.problem(
        row.position(at), room() + "lacks '" + column.heading() + "', expected " + expected);
  }

  private String room() {
    String name = words(Column.ROOM);
    return name.isEmpty() ? "" : Measure.shown(name) + " / ";
  }

  /** What a cell measures; empty, and noted, where it holds nothing that can be read. */
  Optional<Measure.Value> value(Column column) {
    Measure measure = column.measure().orElseThrow();
    if (!headings.has(column)) {
      return Optional.empty();
    }
    if (!has(column)) {
      lacks(column, measure.expected());
      return Optional.empty();
    }
    int at = headings.at(column);
    return value(at, row.cell(at), measure);
  }

  /** What a text in a cell measures; empty, and noted, where it cannot be read. */
  Optional<Measure.Value> value(int at, String typed, Measure measure) {
    try {
      Measure.Unit usual = headings.heading(at).map(Heading::unit).orElse(null);
      return Optional.of(measure.read(typed, usual, decimals));
    } catch (QuantityException e) {
      problem(at, e.getMessage());
      return Optional.empty();
    }
  }

  /** A value within limits in SI, to a hundredth; empty where the cell is empty or wrong. */
  OptionalDouble within(Column column, Form.Quantity limits) {
    if (!has(column)) {
      return OptionalDouble.empty();
    }
    Optional<Measure.Value> value = value(column);
    if (value.isEmpty() || !isWithin(headings.at(column), limits, value.get().si())) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(value.get().si());
  }

  /** Whether a value is within limits; noted where it is not. */
  boolean isWithin(int at, Form.Quantity limits, double si) {
    // What feet and inches come to is rounded before it is written.
    double allowed = 1e-9 * Math.max(1, Math.abs(si));
    if (si >= limits.least() - allowed && si <= limits.most() + allowed) {
      return true;
    }
    problem(
        at,
        "found "
            + Measure.shown(row.cell(at))
            + ", expected "
            + limits.dimension().show(limits.least())
            + " to "
            + limits.dimension().show(limits.most())
            + (limits.limits().isEmpty() ? "" : ": " + limits.limits()));
    return false;
  }
}
