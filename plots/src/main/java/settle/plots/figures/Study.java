package settle.plots.figures;

import java.util.List;
import java.util.function.Consumer;

/**
 * What a command answers, written once: text, page and document are three ways to set it.
 *
 * @param title of the house
 * @param question what was asked
 * @param sections in the order in which they are read
 * @param beware what the reader should know before believing it
 * @param trust how far to trust it; empty where nothing more than the cautions is to be said
 * @param more what there is besides the short answer
 * @param document writes its figures
 */
public record Study(
    String title,
    String question,
    List<Section> sections,
    List<String> beware,
    String trust,
    String more,
    Consumer<Document> document) {

  public Study {
    sections = List.copyOf(sections);
    beware = List.copyOf(beware);
  }

  /** All of it as a document has it. */
  public void write(Document to) {
    document.accept(to);
    to.texts("warnings", beware);
  }
}
