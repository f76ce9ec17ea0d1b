package settle.cli.output;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import settle.scenarios.catalogue.CatalogueListing.Entry;

/** The catalogue as a list to read, or as one JSON document. */
public final class CatalogueText {

  private CatalogueText() {}

  /**
   * To read.
   *
   * @param entries what to list, section by section
   * @return text of several lines
   */
  public static String list(List<Entry> entries) {
    StringBuilder text = new StringBuilder();
    String section = "";
    for (Entry entry : entries) {
      if (!entry.section().equals(section)) {
        section = entry.section();
        text.append(text.length() == 0 ? "" : "\n");
        text.append(section.toUpperCase(Locale.ROOT)).append('\n');
      }
      text.append("  ").append(entry.name()).append(": ").append(entry.facts()).append('\n');
      text.append("      ").append(entry.about());
      text.append(" [").append(entry.source()).append("]\n");
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
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeStringField("tool", "settle");
      json.writeStringField("version", version);
      json.writeStringField("command", "catalogue");
      json.writeArrayFieldStart("entries");
      for (Entry entry : entries) {
        json.writeStartObject();
        json.writeStringField("section", entry.section());
        json.writeStringField("name", entry.name());
        json.writeStringField("about", entry.about());
        json.writeStringField("facts", entry.facts());
        json.writeStringField("source", entry.source());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.append('\n').toString();
  }
}
