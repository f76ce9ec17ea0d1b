package settle.cli.output;

import java.util.List;
import settle.plots.words.Cautions;
import settle.plots.words.TuningTables;
import settle.plots.words.TuningWords;
import settle.sim.tuning.Tuning;

/** A tuning in words and tables: the settings, what they do, room by room, why. */
public final class TuningText {

  private final TunedOutcome outcome;
  private final Tuning tuning;
  private final TuningWords words;
  private final TuningTables tables;
  private final Paragraphs text = new Paragraphs();

  private TuningText(TunedOutcome outcome) {
    this.outcome = outcome;
    tuning = outcome.tuning();
    words = new TuningWords(tuning);
    tables = new TuningTables(tuning);
  }

  /**
   * The summary.
   *
   * @param outcome what was found
   * @return text of several lines, the last ending with a newline
   */
  public static String write(TunedOutcome outcome) {
    return new TuningText(outcome).write();
  }

  private String write() {
    text.paragraph(tuning.found().house().title());
    text.gap();
    text.paragraph(tuning.found().arrangement().name() + ": " + words.headline());
    text.points("Missed with the best settings that were found:", words.missed());
    if (!tuning.changes().isEmpty()) {
      text.gap();
      text.lines(table(1, TuningTables.SETTINGS, tables.settings()));
      paragraph(words.careless());
      paragraph(words.offMarks());
      paragraph(words.search());
    }
    text.gap();
    text.lines(table(2, TuningTables.HOUSE, tables.house()));
    paragraph(words.days());
    paragraph(words.prices());
    text.gap();
    text.lines(rooms());
    text.gap();
    words.spreads().forEach(text::paragraph);
    text.points("How it was worked out, before the search:", words.reasons());
    text.points("Beware:", outcome.notes());
    text.gap();
    text.paragraph(Cautions.brief());
    return text.text();
  }

  private void paragraph(String words) {
    if (!words.isEmpty()) {
      text.gap();
      text.paragraph(words);
    }
  }

  private static String table(int wordColumns, List<String> head, List<List<String>> rows) {
    TextTable table = new TextTable(wordColumns);
    table.head(head.toArray(String[]::new));
    rows.forEach(row -> table.row(row.toArray(String[]::new)));
    return table.text();
  }

  private String rooms() {
    TextTable table = new TextTable(1);
    table.head(
        "Room", "Want", "Usual", "day", "Coldest", "held", "Late,", "usual", "Late,", "cold",
        "Over", "want");
    table.head(
        "", "", "found", "tuned", "found", "tuned", "found", "tuned", "found", "tuned", "found",
        "tuned");
    table.head("", "°C", "°C", "°C", "°C", "°C", "min", "min", "min", "min", "K", "K");
    tables.rooms().forEach(row -> table.row(row.toArray(String[]::new)));
    return table.text();
  }
}
