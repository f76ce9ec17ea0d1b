package settle.cli.output;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import settle.plots.figures.Table;

/**
 * A table in plain text: words to the left, figures to the right, columns as wide as what stands in
 * them. One that is too wide goes on below, its rows named again; words too long for their column
 * go on in the next line.
 */
final class TextTable {

  private static final String GAP = "  ";

  /** Least that a column of words is narrowed to [characters]. */
  private static final int NARROWEST = 10;

  private final int wordColumns;
  private final List<List<String>> rows = new ArrayList<>();
  private int headRows;

  /**
   * @param wordColumns how many columns, from the left, hold words
   */
  TextTable(int wordColumns) {
    this.wordColumns = wordColumns;
  }

  /** A table in plain text, no line longer than a width [characters]. */
  static String text(Table table, int width) {
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
    return text.text(width);
  }

  void head(String... cells) {
    rows.add(headRows++, List.of(cells));
  }

  void row(String... cells) {
    rows.add(List.of(cells));
  }

  /**
   * The table with a rule under its head; every line ends with a newline.
   *
   * @param width longest line [characters]
   */
  String text(int width) {
    int[] widths = widths();
    int[] names = IntStream.range(0, Math.min(wordColumns, widths.length)).toArray();
    int[] figures = IntStream.range(names.length, widths.length).toArray();
    int widest = IntStream.of(figures).map(c -> widths[c] + GAP.length()).max().orElse(0);
    narrow(widths, names, width - widest);
    List<String> blocks = new ArrayList<>();
    for (int c = 0; c < figures.length || blocks.isEmpty(); ) {
      List<Integer> columns = new ArrayList<>(IntStream.of(names).boxed().toList());
      int taken = total(widths, names);
      int first = c;
      while (c < figures.length
          && (c == first || taken + GAP.length() + widths[figures[c]] <= width)) {
        taken += GAP.length() + widths[figures[c]];
        columns.add(figures[c++]);
      }
      blocks.add(block(widths, columns));
    }
    return String.join("\n", blocks);
  }

  private int[] widths() {
    int[] widths = new int[rows.stream().mapToInt(List::size).max().orElse(0)];
    for (List<String> row : rows) {
      for (int c = 0; c < row.size(); c++) {
        widths[c] = Math.max(widths[c], width(row.get(c)));
      }
    }
    return widths;
  }

  /** Narrows the widest columns of words until they fit. */
  private static void narrow(int[] widths, int[] names, int room) {
    while (total(widths, names) > room) {
      int widest = names[0];
      for (int c : names) {
        widest = widths[c] > widths[widest] ? c : widest;
      }
      if (widths[widest] <= NARROWEST) {
        return;
      }
      widths[widest]--;
    }
  }

  private static int total(int[] widths, int[] columns) {
    return IntStream.of(columns).map(c -> widths[c] + GAP.length()).sum() - GAP.length();
  }

  private String block(int[] widths, List<Integer> columns) {
    StringBuilder text = new StringBuilder();
    for (int r = 0; r < rows.size(); r++) {
      List<String> row = rows.get(r);
      List<List<String>> cells =
          columns.stream()
              .map(c -> c < row.size() ? row.get(c) : "")
              .map(cell -> new ArrayList<String>(List.of(cell)))
              .<List<String>>map(cell -> cell)
              .toList();
      int lines = 1;
      for (int i = 0; i < columns.size() && columns.get(i) < wordColumns; i++) {
        cells.get(i).clear();
        cells.get(i).addAll(broken(row.get(columns.get(i)), widths[columns.get(i)]));
        lines = Math.max(lines, cells.get(i).size());
      }
      for (int l = 0; l < lines; l++) {
        text.append(line(widths, columns, cells, l)).append('\n');
      }
      if (r + 1 == headRows) {
        int[] all = columns.stream().mapToInt(Integer::intValue).toArray();
        text.append("-".repeat(total(widths, all))).append('\n');
      }
    }
    return text.toString();
  }

  private String line(int[] widths, List<Integer> columns, List<List<String>> cells, int line) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < columns.size(); i++) {
      int c = columns.get(i);
      String cell = line < cells.get(i).size() ? cells.get(i).get(line) : "";
      String padding = " ".repeat(Math.max(0, widths[c] - width(cell)));
      text.append(i == 0 ? "" : GAP).append(c < wordColumns ? cell + padding : padding + cell);
    }
    return text.toString().stripTrailing();
  }

  /** A cell of words in lines of a width. */
  private static List<String> broken(String words, int width) {
    if (width(words) <= width) {
      return List.of(words);
    }
    StringBuilder lines = new StringBuilder();
    WrappedText.append(lines, width, "", words);
    return lines.toString().lines().toList();
  }

  /** Characters, not code units, so that a name outside the basic plane does not shift its line. */
  private static int width(String cell) {
    return cell.codePointCount(0, cell.length());
  }
}
