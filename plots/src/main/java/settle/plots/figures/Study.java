package settle.plots.figures;

import java.util.List;
import settle.plots.words.Points;

/**
 * What a study tells, in the order in which it is read: summary and report are two ways to set it.
 *
 * @param title of the house
 * @param question what was asked
 * @param answer in a few sentences
 * @param first what is told in lists right after it
 * @param sections figures, each kind under its heading
 * @param points what is told in lists after them
 * @param beware what the reader should know before believing it
 * @param trust how far to trust it; empty where nothing more than the cautions is to be said
 */
public record Study(
    String title,
    String question,
    List<String> answer,
    List<Points> first,
    List<Section> sections,
    List<Points> points,
    List<String> beware,
    String trust) {

  public Study {
    answer = List.copyOf(answer);
    sections = List.copyOf(sections);
    first = first.stream().filter(p -> !p.points().isEmpty()).toList();
    points = points.stream().filter(p -> !p.points().isEmpty()).toList();
    beware = List.copyOf(beware);
  }

  /**
   * Figures of one kind.
   *
   * @param heading of the section
   * @param lead a sentence or two before them; may be empty
   * @param tables the figures
   * @param notes what is to be said of them
   * @param charts names of those that belong to them
   */
  public record Section(
      String heading, String lead, List<Table> tables, List<String> notes, List<String> charts) {

    public Section {
      tables = List.copyOf(tables);
      notes = notes.stream().filter(note -> !note.isEmpty()).toList();
      charts = List.copyOf(charts);
    }
  }
}
