package settle.plots.report;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import settle.plots.drawing.Picture;
import settle.plots.figures.Section;
import settle.plots.figures.Section.Look;
import settle.plots.figures.Study;
import settle.plots.words.Cautions;
import settle.plots.words.Points;

/** The report of a study. One HTML file that needs nothing else, for a screen and for A4 paper. */
public final class StudyReport {

  private final List<Picture> charts;
  private final List<String> named;

  private StudyReport(Study study, List<Picture> charts) {
    this.charts = charts;
    named = study.sections().stream().flatMap(s -> s.charts().stream()).toList();
  }

  /**
   * The whole page.
   *
   * @param study what it says
   * @param charts its pictures
   * @param scenario name of the scenario's file
   * @param version of the tool
   */
  public static String html(Study study, List<Picture> charts, String scenario, String version) {
    Map<String, Object> page = new HashMap<>();
    page.put("title", study.title());
    page.put("question", Page.unbroken(study.question()));
    StudyReport report = new StudyReport(study, charts);
    page.put(
        "sections",
        study.sections().stream()
            .filter(s -> !s.empty() || !report.pictures(s).isEmpty())
            .map(report::section)
            .toList());
    page.put("trust", Page.unbroken(study.trust()));
    page.put("cautions", Cautions.all());
    page.put(
        "made",
        "Made with settle "
            + version
            + " from "
            + scenario
            + ". 'settle page' makes a page of the same scenario that answers anew when something is moved.");
    return Page.html("study", page);
  }

  private Map<String, Object> section(Section section) {
    boolean answers =
        section.look() == Look.VERDICT
            || (section.look() == Look.HOUSEHOLDER && !section.lead().isEmpty());
    List<String> lead = Page.unbroken(section.lead());
    Map<String, Object> content = new HashMap<>();
    content.put("look", section.look().name().toLowerCase(Locale.ROOT));
    content.put("heading", some(answers ? "" : section.heading()));
    content.put(
        "answer",
        answers ? List.of(Map.of("name", section.heading(), "words", lead.get(0))) : List.of());
    content.put("lead", some(String.join(" ", answers ? lead.subList(1, lead.size()) : lead)));
    content.put("pictures", Page.pictured(pictures(section)));
    content.put("tables", Page.tables(section.tables()));
    content.put(
        "lines",
        section.lines().isEmpty()
            ? List.of()
            : List.of(
                Map.of("rows", section.lines().stream().map(StudyReport::unbroken).toList())));
    content.put("points", section.points().stream().map(StudyReport::unbroken).toList());
    content.put("notes", Page.unbroken(section.notes()));
    return content;
  }

  /** A word or two, or none: what a template repeats never or once. */
  private static List<String> some(String words) {
    return words.isEmpty() ? List.of() : List.of(words);
  }

  private static Points unbroken(Points points) {
    return new Points(points.heading(), Page.unbroken(points.points()));
  }

  private List<Picture> pictures(Section section) {
    boolean others = section.charts().contains(Section.OTHER_CHARTS);
    return charts.stream()
        .filter(c -> section.charts().contains(c.name()) || (others && !named.contains(c.name())))
        .toList();
  }
}
