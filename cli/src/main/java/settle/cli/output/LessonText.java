package settle.cli.output;

import java.util.List;
import settle.plots.figures.LessonFigures;
import settle.plots.words.Cautions;
import settle.plots.words.Lesson;
import settle.sim.demo.Demonstration;

/** Demonstrations in words and tables. */
public final class LessonText {

  private final Paragraphs text;

  private LessonText(Layout layout) {
    text = new Paragraphs(layout);
  }

  /** One line and one sentence for each. */
  public static String list(List<Demonstration> demonstrations, Layout layout) {
    TextTable table = new TextTable(2);
    table.head("Name", "Shows");
    for (Demonstration d : demonstrations) {
      table.row(d.name(), d.title());
      table.row("", d.about());
    }
    return table.text(layout.width())
        + "\nRun one: settle demo NAME; all on one handout: settle demo all --out DIR\n";
  }

  /**
   * The summary.
   *
   * @param lessons what was run, in order
   * @param layout how it is set
   * @return text of several lines, the last ending with a newline
   */
  public static String write(List<Lesson> lessons, Layout layout) {
    LessonText summary = new LessonText(layout);
    lessons.forEach(summary::lesson);
    summary.text.paragraph(Cautions.brief());
    return summary.text.text();
  }

  private void lesson(Lesson lesson) {
    text.paragraph(lesson.demonstration().title());
    text.paragraph(lesson.wording().question());
    text.gap();
    text.paragraph(lesson.changed());
    text.paragraph(lesson.happened());
    text.table(LessonFigures.table(lesson));
    text.gap();
    text.paragraph("Look at: " + lesson.wording().lookAt());
    if (!lesson.wording().beware().isEmpty()) {
      text.paragraph("Beware: " + lesson.wording().beware());
    }
    text.paragraph("The house is invented; another would settle elsewhere, for the same reason.");
    text.gap();
  }
}
