package settle.cli.output;

import java.util.List;
import settle.plots.figures.Study;
import settle.plots.figures.Table;
import settle.plots.words.Cautions;
import settle.plots.words.Points;

/** What a study tells, in words and tables. */
public final class StudyText {

  private StudyText() {}

  /**
   * The summary.
   *
   * @param study what it tells
   * @param layout how it is set
   * @return text of several lines, the last ending with a newline
   */
  public static String write(Study study, Layout layout) {
    Paragraphs text = new Paragraphs(layout);
    text.paragraph(study.title());
    text.paragraph(study.question() + ".");
    text.points("What it comes to:", study.answer());
    points(text, study.first());
    int sections = layout.full() ? study.sections().size() : 1;
    for (Study.Section section : study.sections().subList(0, sections)) {
      text.apart(section.heading() + (section.lead().isEmpty() ? ":" : ". " + section.lead()));
      for (Table table : section.tables()) {
        text.table(table);
        if (!table.meanings().isEmpty()) {
          text.paragraph(table.meanings());
        }
      }
      section.notes().forEach(text::apart);
    }
    if (layout.full()) {
      points(text, study.points());
    }
    text.points("Beware:", study.beware());
    text.apart(Cautions.brief());
    if (!layout.full()) {
      text.apart("All the rest: --full.");
    }
    return text.text();
  }

  private static void points(Paragraphs text, List<Points> all) {
    all.forEach(points -> text.points(points.heading() + ":", points.points()));
  }
}
