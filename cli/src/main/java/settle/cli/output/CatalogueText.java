package settle.cli.output;

import java.util.List;
import java.util.Locale;
import settle.plots.figures.Figures;
import settle.scenarios.catalogue.CatalogueListing.Entry;

/** The catalogue as a list to read, or as one JSON document. */
public final class CatalogueText {

  private CatalogueText() {}

  /**
   * To read.
   *
   * @param entries what to list, section by section
   * @param layout how it is set
   * @return text of several lines
   */
  public static String list(List<Entry> entries, Layout layout) {
    StringBuilder text = new StringBuilder();
    String section = "";
    for (Entry entry : entries) {
      if (!entry.section().equals(section)) {
        section = entry.section();
        text.append(text.length() == 0 ? "" : "\n");
        text.append(section.toUpperCase(Locale.ROOT)).append('\n');
      }
      WrappedText.append(text, layout.textWidth(), "  ", entry.name() + ": " + entry.facts());
      WrappedText.append(
          text, layout.textWidth(), "      ", entry.about() + " [" + entry.source() + "]");
    }
    return text.toString();
  }

  /**
   * The document.
   *
   * @param entries what to list, section by section
   * @param version the tool's version
   * @return JSON text, ending with a newline
   */
  public static String json(List<Entry> entries, String version) {
    return JsonDocument.write(
        "catalogue",
        version,
        json ->
            json.list(
                "entries",
                entries,
                new Figures<Entry>()
                    .text("section", Entry::section)
                    .text("name", Entry::name)
                    .text("about", Entry::about)
                    .text("facts", Entry::facts)
                    .text("source", Entry::source)));
  }
}
