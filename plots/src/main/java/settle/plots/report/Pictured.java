package settle.plots.report;

import java.util.Map;
import settle.plots.chart.Chart;

/** A chart as a report's template shows it. */
final class Pictured {

  private Pictured() {}

  static Map<String, Object> of(Chart chart) {
    return Map.of(
        "name",
        chart.name(),
        "title",
        chart.title(),
        "meaning",
        Report.unbroken(chart.meaning()),
        "svg",
        chart.picture().svg(chart.name()));
  }
}
