package settle.cli.output;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Collectors;
import settle.scenarios.catalogue.Catalogue;
import settle.scenarios.catalogue.Definitions;

/** The built-in catalogue as a list to read, or as one JSON document. */
public final class CatalogueText {

  private CatalogueText() {}

  /**
   * To read.
   *
   * @param kinds what to list
   * @return text of several lines
   */
  public static String list(List<CatalogueKind> kinds) {
    Definitions definitions = Catalogue.builtIn();
    StringBuilder text = new StringBuilder();
    for (CatalogueKind kind : kinds) {
      text.append(text.length() == 0 ? "" : "\n");
      text.append(kind.name()).append('\n');
      for (CatalogueKind.Entry entry : kind.entries(definitions)) {
        String figures =
            entry.figures().stream()
                .map(CatalogueKind.Figure::text)
                .collect(Collectors.joining(", "));
        text.append("  ")
            .append(entry.described().name())
            .append(": ")
            .append(figures)
            .append('\n');
        text.append("      ").append(entry.described().about());
        text.append(" [").append(entry.described().source()).append("]\n");
      }
    }
    return text.toString();
  }

  /**
   * The document.
   *
   * @param kinds what to list
   * @param version the tool's version
   * @return JSON text, ending with a newline
   */
  public static String json(List<CatalogueKind> kinds, String version) {
    Definitions definitions = Catalogue.builtIn();
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeStringField("tool", "settle");
      json.writeStringField("version", version);
      json.writeStringField("command", "catalogue");
      for (CatalogueKind kind : kinds) {
        json.writeArrayFieldStart(kind.word());
        for (CatalogueKind.Entry entry : kind.entries(definitions)) {
          json.writeStartObject();
          json.writeStringField("name", entry.described().name());
          json.writeStringField("about", entry.described().about());
          json.writeStringField("source", entry.described().source());
          for (CatalogueKind.Figure figure : entry.figures()) {
            json.writeNumberField(figure.jsonName(), figure.si() / figure.jsonUnit());
          }
          json.writeEndObject();
        }
        json.writeEndArray();
      }
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.append('\n').toString();
  }
}
