package settle.cli.output;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Consumer;
import settle.plots.figures.Document;
import settle.plots.figures.Figures;

/**
 * A command's JSON document: which command said it, of which scenario, then what it found. Figures
 * are rounded to decimals beyond which the model says nothing, so that the same answer reads the
 * same; what has no value is null.
 */
public final class JsonDocument implements Document {

  private final JsonGenerator json;

  private JsonDocument(JsonGenerator json) {
    this.json = json;
  }

  /**
   * The whole document.
   *
   * @param command which command
   * @param scenario the file as it was named
   * @param version the tool's version
   * @param content writes the fields that follow
   * @return JSON text, ending with a newline
   */
  public static String write(
      String command, String scenario, String version, Consumer<JsonDocument> content) {
    return write(
        command,
        version,
        document -> {
          document.text("scenario", scenario);
          content.accept(document);
        });
  }

  /** A document from a command that reads no scenario. */
  public static String write(String command, String version, Consumer<JsonDocument> content) {
    StringWriter text = new StringWriter();
    try (JsonGenerator generator = new JsonFactory().createGenerator(text)) {
      generator.useDefaultPrettyPrinter();
      JsonDocument document = new JsonDocument(generator);
      generator.writeStartObject();
      document.text("tool", "settle");
      document.text("version", version);
      document.text("command", command);
      content.accept(document);
      generator.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.append('\n').toString();
  }

  @Override
  public <T> void part(String name, T of, Figures<T> figures) {
    tell(() -> json.writeObjectFieldStart(name));
    figures.write(this, of);
    tell(json::writeEndObject);
  }

  @Override
  public <T> void list(String name, List<T> of, Figures<T> figures) {
    tell(() -> json.writeArrayFieldStart(name));
    for (T one : of) {
      tell(json::writeStartObject);
      figures.write(this, one);
      tell(json::writeEndObject);
    }
    tell(json::writeEndArray);
  }

  @Override
  public void texts(String name, List<String> values) {
    tell(
        () -> {
          json.writeArrayFieldStart(name);
          for (String value : values) {
            json.writeString(value);
          }
          json.writeEndArray();
        });
  }

  @Override
  public void text(String name, String value) {
    tell(() -> json.writeStringField(name, value));
  }

  @Override
  public void flag(String name, boolean value) {
    tell(() -> json.writeBooleanField(name, value));
  }

  @Override
  public void count(String name, long value) {
    tell(() -> json.writeNumberField(name, value));
  }

  @Override
  public void exactly(String name, double value) {
    tell(() -> json.writeNumberField(name, value));
  }

  @Override
  public void nothing(String name) {
    tell(() -> json.writeNullField(name));
  }

  @Override
  public void number(String name, double value, int decimals) {
    if (Double.isFinite(value)) {
      double scale = Math.pow(10, decimals);
      tell(() -> json.writeNumberField(name, Math.rint(value * scale) / scale));
    } else {
      nothing(name);
    }
  }

  /** Writing to memory never fails. */
  private static void tell(Words words) {
    try {
      words.write();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private interface Words {
    void write() throws IOException;
  }
}
