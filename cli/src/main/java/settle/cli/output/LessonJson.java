package settle.cli.output;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import settle.plots.words.Lesson;
import settle.plots.words.ReadingWords;
import settle.sim.demo.Change;
import settle.sim.demo.Demonstration;
import settle.sim.demo.Figure;

/**
 * Demonstrations as one JSON document. A figure's name ends with its unit; what has no value is
 * null.
 */
public final class LessonJson {

  /** Decimals kept in a figure. */
  private static final double ROUNDING = 1e3;

  private final JsonGenerator json;

  private LessonJson(JsonGenerator json) {
    this.json = json;
  }

  /** What is written below the head of the document. */
  private interface Body {
    void write(LessonJson document) throws IOException;
  }

  /** The demonstrations there are. */
  public static String list(List<Demonstration> demonstrations, String version) {
    return document(
        version,
        document -> {
          for (Demonstration d : demonstrations) {
            document.json.writeStartObject();
            document.about(d);
            document.json.writeEndObject();
          }
        });
  }

  /** What was run, in order. */
  public static String write(List<Lesson> lessons, String version) {
    return document(
        version,
        document -> {
          for (Lesson lesson : lessons) {
            document.lesson(lesson);
          }
        });
  }

  private static String document(String version, Body body) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeStringField("tool", "settle");
      json.writeStringField("version", version);
      json.writeStringField("command", "demo");
      json.writeArrayFieldStart("demonstrations");
      body.write(new LessonJson(json));
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.append('\n').toString();
  }

  private void about(Demonstration d) throws IOException {
    json.writeStringField("name", d.name());
    json.writeStringField("title", d.title());
    json.writeStringField("about", d.about());
    json.writeStringField("question", d.question());
  }

  private void lesson(Lesson lesson) throws IOException {
    Demonstration d = lesson.demonstration();
    json.writeStartObject();
    about(d);
    json.writeStringField("changed", lesson.changed());
    json.writeStringField("happened", lesson.happened());
    json.writeStringField("lookAt", d.lookAt());
    json.writeStringField("beware", d.beware());
    json.writeArrayFieldStart("changes");
    for (Change change : d.changes()) {
      json.writeStartObject();
      json.writeStringField("key", change.key());
      json.writeStringField("where", change.where());
      json.writeStringField("before", change.before());
      json.writeStringField("after", change.after());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeObjectFieldStart("figures");
    for (Figure figure : d.figures()) {
      figure(lesson, figure);
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private void figure(Lesson lesson, Figure figure) throws IOException {
    ReadingWords words = lesson.words(figure);
    json.writeObjectFieldStart(figure.key() + suffix(words.unit()));
    json.writeStringField("words", figure.words());
    number("before", words.scaled(lesson.runs().before(figure)));
    number("after", words.scaled(lesson.runs().after(figure)));
    json.writeEndObject();
  }

  private static String suffix(String unit) {
    return switch (unit) {
      case "°C" -> "C";
      case "l/h" -> "LPerHour";
      case "%" -> "Percent";
      case "kPa" -> "KPa";
      case "kWh" -> "KWh";
      case "min" -> "Min";
      default -> unit;
    };
  }

  private void number(String name, double value) throws IOException {
    if (Double.isFinite(value)) {
      json.writeNumberField(name, Math.rint(value * ROUNDING) / ROUNDING);
    } else {
      json.writeNullField(name);
    }
  }
}
