package settle.cli.output;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import settle.scenarios.finding.DefaultUsed;
import settle.scenarios.finding.Finding;

/** What a check found, as one JSON document. */
public final class CheckJson {

  private CheckJson() {}

  /**
   * The document.
   *
   * @param scenario the file as it was named
   * @param problems what is wrong
   * @param warnings what is doubtful
   * @param defaults what was taken for what is left out
   * @param version the tool's version
   * @return JSON text, ending with a newline
   */
  public static String write(
      String scenario,
      List<Finding> problems,
      List<Finding> warnings,
      List<DefaultUsed> defaults,
      String version) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeStringField("tool", "settle");
      json.writeStringField("version", version);
      json.writeStringField("command", "check");
      json.writeStringField("scenario", scenario);
      findings(json, "problems", problems);
      findings(json, "warnings", warnings);
      json.writeArrayFieldStart("defaults");
      for (DefaultUsed used : defaults) {
        json.writeStartObject();
        json.writeStringField("where", used.where());
        json.writeStringField("key", used.key());
        json.writeStringField("value", used.value());
        json.writeStringField("reason", used.reason());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.append('\n').toString();
  }

  private static void findings(JsonGenerator json, String name, List<Finding> findings)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (Finding finding : findings) {
      json.writeStartObject();
      json.writeStringField("file", finding.file());
      json.writeNumberField("line", finding.line());
      json.writeNumberField("column", finding.column());
      json.writeStringField("message", finding.message());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
