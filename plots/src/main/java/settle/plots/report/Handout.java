package settle.plots.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import settle.plots.drawing.Picture;
import settle.plots.figures.LessonFigures;
import settle.plots.words.Cautions;
import settle.plots.words.Lesson;
import settle.sim.demo.Demonstration;

/** Demonstrations to hand out: one a page on A4, in one HTML file that needs nothing else. */
public final class Handout {

  private Handout() {}

  /**
   * The whole file.
   *
   * @param lessons what was run
   * @param charts the picture of each, in the same order
   * @param version of the tool
   */
  public static String html(List<Lesson> lessons, List<Picture> charts, String version) {
    List<Map<String, Object>> pages = new ArrayList<>();
    for (int i = 0; i < lessons.size(); i++) {
      pages.add(page(lessons.get(i), charts.get(i)));
    }
    Map<String, Object> all = new HashMap<>();
    all.put(
        "title", lessons.size() == 1 ? lessons.get(0).demonstration().title() : "Demonstrations");
    all.put("pages", pages);
    all.put("caution", Cautions.brief());
    all.put("made", "Made with settle " + version + ". The houses are invented.");
    return Page.html("handout", all);
  }

  private static Map<String, Object> page(Lesson lesson, Picture chart) {
    Demonstration d = lesson.demonstration();
    Demonstration.Wording said = lesson.wording();
    Map<String, Object> page = new HashMap<>();
    page.put("name", d.name());
    page.put("title", d.title());
    page.put("question", said.question());
    page.put("changed", lesson.changed());
    page.put("happened", lesson.happened());
    page.put("look", said.lookAt());
    page.put("beware", said.beware().isEmpty() ? List.of() : List.of(said.beware()));
    page.put("figures", Page.table(LessonFigures.table(lesson)));
    page.put("svg", chart.svg());
    return page;
  }
}
