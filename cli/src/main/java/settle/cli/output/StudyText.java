package settle.cli.output;

import java.util.HashSet;
import java.util.Set;
import settle.plots.figures.Section;
import settle.plots.figures.Section.Extent;
import settle.plots.figures.Study;
import settle.plots.figures.Table;
import settle.plots.words.Cautions;
import settle.plots.words.Points;

/** What a study says, in words and tables. */
public final class StudyText {

  private StudyText() {}

  /**
   * The summary.
   *
   * @param study what it says
   * @param layout how it is set
   * @return text of several lines, the last ending with a newline
   */
  public static String write(Study study, Layout layout) {
    Paragraphs text = new Paragraphs(layout);
    text.paragraph(study.title());
    text.paragraph(study.question());
    Set<String> meant = new HashSet<>(Set.of(""));
    for (Section section : study.sections()) {
      if (section.extent() == Extent.SHORT || (section.extent() == Extent.FULL && layout.full())) {
        section(text, section, layout.full(), meant);
      }
    }
    if (layout.full() && !study.trust().isEmpty()) {
      text.apart(headed("How far to trust this", study.trust()));
    }
    text.points("Beware:", study.beware());
    text.apart(Cautions.brief());
    if (!layout.full()) {
      text.apart("--full adds " + study.more() + ".");
    }
    return text.text();
  }

  /**
   * @param meant what columns mean, as far as that was said
   */
  private static void section(Paragraphs text, Section section, boolean full, Set<String> meant) {
    if (!section.lead().isEmpty()) {
      text.apart(headed(section.heading(), String.join(" ", section.lead())));
    }
    for (Table table : section.tables()) {
      text.table(table);
      if (full && meant.add(table.meanings())) {
        text.paragraph(table.meanings());
      }
    }
    if (!section.lines().isEmpty()) {
      text.gap();
    }
    for (Points line : section.lines()) {
      text.indented(line.heading() + ": " + String.join(" ", line.points()));
    }
    section.points().forEach(p -> text.points(p.heading() + ":", p.points()));
    section.notes().forEach(text::apart);
  }

  /** A heading is a sentence by itself where one follows, and else begins it. */
  private static String headed(String heading, String words) {
    if (heading.isEmpty()) {
      return words;
    }
    return heading + (Character.isLowerCase(words.charAt(0)) ? ": " : ". ") + words;
  }
}
