package settle.plots.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import settle.plots.drawing.Picture;
import settle.plots.figures.Study;
import settle.plots.words.Cautions;
import settle.plots.words.Points;

/** The report of a study. One HTML file that needs nothing else, for a screen and for A4 paper. */
public final class StudyReport {

  private StudyReport() {}

  /**
   * The whole page.
   *
   * @param study what it tells
   * @param charts its pictures, each with its section or else after all of them
   * @param scenario name of the scenario's file
   * @param version of the tool
   */
  public static String html(Study study, List<Picture> charts, String scenario, String version) {
    List<String> placed = study.sections().stream().flatMap(s -> s.charts().stream()).toList();
    Map<String, Object> page = new HashMap<>();
    page.put("title", study.title());
    page.put("question", study.question());
    page.put("answer", Page.unbroken(study.answer()));
    List<Points> boxes = new ArrayList<>(study.first());
    boxes.addAll(Page.points("Beware", study.beware()));
    page.put("boxes", boxes);
    page.put("sections", study.sections().stream().map(s -> section(s, charts)).toList());
    page.put(
        "charts", Page.pictured(charts.stream().filter(c -> !placed.contains(c.name())).toList()));
    page.put("points", study.points());
    page.put("trust", study.trust());
    page.put("cautions", Cautions.all());
    page.put("made", "Made with settle " + version + " from " + scenario + ".");
    return Page.html("study", page);
  }

  private static Map<String, Object> section(Study.Section section, List<Picture> charts) {
    return Map.of(
        "heading",
        section.heading(),
        "lead",
        Page.unbroken(section.lead()),
        "tables",
        Page.tables(section.tables()),
        "notes",
        Page.unbroken(section.notes()),
        "pictures",
        Page.pictured(charts.stream().filter(c -> section.charts().contains(c.name())).toList()));
  }
}
