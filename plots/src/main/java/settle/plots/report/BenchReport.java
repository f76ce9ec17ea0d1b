package settle.plots.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import settle.plots.chart.Chart;
import settle.plots.words.BenchWords;
import settle.plots.words.Cautions;
import settle.plots.words.Quantities;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.Course;
import settle.sim.bench.LoadLine;

/**
 * The report of a valve on the bench. One HTML file that needs nothing else, for a screen and for
 * A4 paper.
 */
public final class BenchReport {

  private BenchReport() {}

  /**
   * The whole page.
   *
   * @param findings what the bench found
   * @param charts its pictures
   * @param warnings what the reader should know first
   * @param scenario name of the scenario's file
   * @param version of the tool
   */
  public static String html(
      BenchFindings findings,
      List<Chart> charts,
      List<String> warnings,
      String scenario,
      String version) {
    return Page.html("bench", page(findings, charts, warnings, scenario, version));
  }

  private static Map<String, Object> page(
      BenchFindings findings,
      List<Chart> charts,
      List<String> warnings,
      String scenario,
      String version) {
    BenchWords words = new BenchWords(findings);
    Map<String, Object> page = new HashMap<>();
    page.put("title", findings.house().title());
    page.put("valve", words.valve());
    page.put("answer", words.answer());
    page.put("rig", figures(words.rig()));
    page.put(
        "limits",
        boxed(
            words.limits().stream()
                .map(
                    l ->
                        Map.<String, Object>of(
                            "name",
                            l.name(),
                            "read",
                            l.read(),
                            "limit",
                            l.limit(),
                            "within",
                            l.within(),
                            "missed",
                            l.within().equals("no")))
                .toList()));
    page.put("aboutLimits", BenchWords.ABOUT_EN_215);
    page.put("branch", figures(words.branch()));
    page.put("lines", findings.lines().stream().map(l -> line(findings, l)).toList());
    page.put("roomTests", words.roomTests());
    page.put("courses", boxed(findings.courses().stream().map(BenchReport::course).toList()));
    page.put("rigPictures", pictures(charts, "hysteresis-loop", "response"));
    page.put("loadPicture", pictures(charts, "load-line"));
    page.put("roomPicture", pictures(charts, "room-tests"));
    page.put("left", words.left());
    page.put("beware", boxed(warnings));
    page.put("brief", Cautions.brief());
    page.put("made", "Made with settle " + version + " from " + scenario + ".");
    return page;
  }

  /** Nothing to show, or one list. */
  private static List<Map<String, Object>> boxed(List<?> rows) {
    return rows.isEmpty() ? List.of() : List.of(Map.of("rows", rows));
  }

  private static List<Map<String, String>> figures(List<BenchWords.Figure> figures) {
    return figures.stream().map(f -> Map.of("name", f.name(), "value", f.value())).toList();
  }

  private static Map<String, Object> line(BenchFindings findings, LoadLine line) {
    return Map.of(
        "outdoor", Quantities.number(line.outdoor(), 0),
        "water", Quantities.number(line.flowTemperature(), 1),
        "crossing", Quantities.number(line.crossing(), 2),
        "settled", Quantities.number(line.settled(), 2),
        "droop", Quantities.number(findings.want() - line.crossing(), 2),
        "heat", Quantities.number(line.heat(), 0),
        "flow", Quantities.number(findings.house().water().litresPerHour(line.flow()), 1),
        "opening", Quantities.number(100 * line.opening(), 0));
  }

  private static Map<String, Object> course(Course course) {
    return Map.of(
        "change", BenchWords.change(course),
        "before", Quantities.number(course.before(), 2),
        "after", Quantities.number(course.after(), 2),
        "rest", Quantities.number(course.atRest(), 2),
        "droop", Quantities.number(course.droop(), 2),
        "above", Quantities.number(course.above(), 2),
        "below", Quantities.number(course.below(), 2),
        "swing", Quantities.number(course.swing(), 2),
        "settling", BenchWords.settling(course));
  }

  private static List<Page.Pictured> pictures(List<Chart> charts, String... names) {
    List<String> wanted = List.of(names);
    return Page.pictured(charts.stream().filter(c -> wanted.contains(c.name())).toList());
  }
}
