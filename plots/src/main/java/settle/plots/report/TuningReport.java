package settle.plots.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import settle.plots.words.Cautions;
import settle.plots.words.TuningTables;
import settle.plots.words.TuningWords;

/**
 * The report of a tuning: what to set, what it does, how far each setting may be off. One HTML file
 * that needs nothing else, for a screen and for A4 paper.
 */
public final class TuningReport {

  private final TuningContent content;
  private final TuningWords words;
  private final TuningTables tables;

  private TuningReport(TuningContent content) {
    this.content = content;
    words = new TuningWords(content.tuning());
    tables = new TuningTables(content.tuning());
  }

  /** The whole page. */
  public static String html(TuningContent content) {
    return Page.html("tuning", new TuningReport(content).page());
  }

  private Map<String, Object> page() {
    Map<String, Object> page = new HashMap<>();
    page.put("title", content.title());
    page.put("name", content.tuning().found().arrangement().name());
    page.put("answer", Page.unbroken(words.headline()));
    page.put("missed", boxed(words.missed()));
    page.put("settings", rows(tables.settings()));
    page.put("settingHeads", TuningTables.SETTINGS.subList(1, TuningTables.SETTINGS.size()));
    page.put("about", said(words.careless(), words.offMarks(), words.search()));
    page.put("house", rows(tables.house()));
    page.put("days", said(words.days(), words.prices()));
    page.put("rooms", rows(tables.rooms()));
    page.put("spreads", said(words.spreads().toArray(String[]::new)));
    page.put("reasons", boxed(words.reasons()));
    page.put("charts", Page.pictured(content.charts()));
    page.put("beware", boxed(content.notes()));
    page.put("cautions", Cautions.all());
    page.put("made", "Made with settle " + content.version() + " from " + content.scenario() + ".");
    return page;
  }

  /** A row's first cell and its others. */
  private static List<Map<String, Object>> rows(List<List<String>> rows) {
    return rows.stream()
        .map(
            row ->
                Map.<String, Object>of(
                    "first",
                    row.get(0),
                    "cells",
                    row.subList(1, row.size()).stream().map(Page::unbroken).toList()))
        .toList();
  }

  /** Sentences that say something. */
  private static List<String> said(String... sentences) {
    return Stream.of(sentences).filter(s -> !s.isEmpty()).map(Page::unbroken).toList();
  }

  /** Nothing to show, or one list. */
  private static List<Map<String, Object>> boxed(List<String> points) {
    return points.isEmpty() ? List.of() : List.of(Map.of("points", points));
  }
}
