package settle.cli.output;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import settle.plots.figures.Table;

/**
 * A table in plain text: words to the left, figures to the right, columns as wide as what stands in
 * them.
 */
final class TextTable {

  private static final String GAP = "  ";

  private final int wordColumns;
  private final List<List<String>> rows = new ArrayList<>();
  private int headRows;

  /**
   * @param wordColumns how many columns, from the left, hold words
   */
  TextTable(int wordColumns) {
    this.wordColumns = wordColumns;
  }

  /** The same table in plain text. */
  static String text(Table table) {
    TextTable text = new TextTable(table.words());
    if (table.heads().stream().anyMatch(h -> !h.label().isEmpty())) {
      text.head(table.heads().stream().map(Table.Head::label).toArray(String[]::new));
    }
    if (table.heads().stream().anyMatch(h -> !h.unit().isEmpty())) {
      text.head(table.heads().stream().map(Table.Head::unit).toArray(String[]::new));
    }
    for (List<Table.Cell> row : table.rows()) {
      text.row(row.stream().map(Table.Cell::text).toArray(String[]::new));
    }
    return text.text();
  }

  void head(String... cells) {
    rows.add(headRows++, List.of(cells));
  }

  void row(String... cells) {
    rows.add(List.of(cells));
  }

  /** The table with a rule under its head; every line ends with a newline. */
  String text() {
    int columns = rows.stream().mapToInt(List::size).max().orElse(0);
    List<Integer> widths = new ArrayList<>(Collections.nCopies(columns, 0));
    for (List<String> row : rows) {
      for (int c = 0; c < row.size(); c++) {
        widths.set(c, Math.max(widths.get(c), width(row.get(c))));
      }
    }
    StringBuilder text = new StringBuilder();
    for (int r = 0; r < rows.size(); r++) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < rows.get(r).size(); c++) {
        String cell = rows.get(r).get(c);
        String padding = " ".repeat(widths.get(c) - width(cell));
        line.append(c == 0 ? "" : GAP).append(c < wordColumns ? cell + padding : padding + cell);
      }
      text.append(line.toString().stripTrailing()).append('\n');
      if (r + 1 == headRows) {
        int total = widths.stream().mapToInt(w -> w + GAP.length()).sum() - GAP.length();
        text.append("-".repeat(total)).append('\n');
      }
    }
    return text.toString();
  }

  /** Characters, not code units, so that a name outside the basic plane does not shift its line. */
  private static int width(String cell) {
    return cell.codePointCount(0, cell.length());
  }
}
