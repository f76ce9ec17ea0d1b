package settle.sim.validation;

import java.util.List;

/** The rows of one subject. */
interface RowGroup {

  /** Heading in the table. */
  String title();

  /** All rows, in the order of the table. */
  List<Row> rows();

  /** Whether its rows come from days of weather or many houses, and take seconds of computing. */
  default boolean takesDays() {
    return false;
  }

  /**
   * Where its worked-out figures belong: a formula again, an exact solution of what is stepped, or
   * a check of what the tests themselves bring along.
   */
  default Part workedOut() {
    return Part.FORMULAS;
  }

  /** Where a row of this group stands in the table. */
  default Part partOf(Row row) {
    if (workedOut() == Part.CHECKS) {
      return Part.CHECKS;
    }
    if (row.kind().isOutside()) {
      return Part.OUTSIDE;
    }
    return row.kind() == Kind.ANALYTIC ? Part.CLOSED_FORMS : workedOut();
  }
}
