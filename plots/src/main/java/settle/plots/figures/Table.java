package settle.plots.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Figures as words in rows and columns.
 *
 * @param heads one per column
 * @param words how many columns, from the left, hold words
 * @param rows as many cells each as there are columns
 */
public record Table(List<Head> heads, int words, List<List<Cell>> rows) {

  public Table {
    heads = List.copyOf(heads);
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * What stands over a column.
   *
   * @param label short name
   * @param unit its symbol; empty if it has none
   * @param meaning in a few words; empty where the name says it
   */
  public record Head(String label, String unit, String meaning) {}

  /**
   * What stands in it.
   *
   * @param text the figure
   * @param strong whether a reader should not miss it
   */
  public record Cell(String text, boolean strong) {}

  /**
   * A row per subject, a column per figure that has a heading and something to say of any row.
   *
   * @param words how many columns, from the left, hold words
   */
  public static <T> Table of(int words, List<T> rows, Figures<T> figures) {
    List<Figure<T>> columns =
        figures.all().stream()
            .filter(f -> !f.label().isEmpty() && rows.stream().anyMatch(f.said()))
            .toList();
    return new Table(
        columns.stream().map(c -> new Head(c.label(), c.unit().symbol(), c.meaning())).toList(),
        words,
        rows.stream()
            .map(
                row ->
                    columns.stream()
                        .map(c -> new Cell(c.shown().apply(row), c.strong().test(row)))
                        .toList())
            .toList());
  }

  /**
   * A row per figure that has a label and something to say, each with its unit; a column per
   * subject.
   *
   * @param what heads the labels; may be empty
   * @param names of the subjects
   */
  public static <T> Table across(
      String what, List<String> names, List<T> subjects, Figures<T> figures) {
    List<Head> heads = new ArrayList<>(List.of(new Head(what, "", "")));
    names.forEach(name -> heads.add(new Head(name, "", "")));
    List<List<Cell>> rows = new ArrayList<>();
    for (Figure<T> figure : figures.all()) {
      if (!figure.label().isEmpty() && subjects.stream().anyMatch(figure.said())) {
        List<Cell> row = new ArrayList<>(List.of(new Cell(figure.label(), false)));
        subjects.forEach(of -> row.add(new Cell(figure.withUnit(of), figure.strong().test(of))));
        rows.add(row);
      }
    }
    return new Table(heads, names.size() == 1 ? 2 : 1, rows);
  }

  /** What the columns mean, in one paragraph; empty if every label says it. */
  public String meanings() {
    return heads.stream()
        .filter(head -> !head.meaning().isEmpty())
        .map(head -> head.label() + ": " + head.meaning() + ".")
        .collect(Collectors.joining(" "));
  }
}
