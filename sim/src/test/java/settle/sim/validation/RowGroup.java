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
}
