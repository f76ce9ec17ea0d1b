package settle.plots.figures;

import java.util.List;

/**
 * One thing that went into a run, in words.
 *
 * @param key what it is
 * @param value its value with its unit
 * @param reason where the value comes from; empty if it was simply given
 */
public record Entry(String key, String value, String reason) {

  private static final Figures<Entry> COLUMNS =
      new Figures<Entry>()
          .column("What", Entry::key)
          .column("Value", Entry::value)
          .column("Why", Entry::reason)
          .where(e -> !e.reason().isEmpty());

  /** A row for each. */
  static List<Table> tables(List<Entry> entries) {
    return entries.isEmpty() ? List.of() : List.of(Table.of(3, entries, COLUMNS));
  }
}
