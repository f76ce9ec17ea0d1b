package settle.cli.output;

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

  private final JsonDocument json;

  private LessonJson(JsonDocument json) {
    this.json = json;
  }

  /** The demonstrations there are. */
  public static String list(List<Demonstration> demonstrations, String version) {
    return JsonDocument.write(
        "demo",
        version,
        json -> json.list("demonstrations", demonstrations, new LessonJson(json)::about));
  }

  /** What was run, in order. */
  public static String write(List<Lesson> lessons, String version) {
    return JsonDocument.write(
        "demo",
        version,
        json -> json.list("demonstrations", lessons, new LessonJson(json)::lesson));
  }

  private void about(Demonstration d) {
    json.text("name", d.name());
    json.text("title", d.title());
    json.text("about", d.about());
    json.text("question", d.question());
  }

  private void lesson(Lesson lesson) {
    Demonstration d = lesson.demonstration();
    about(d);
    json.text("changed", lesson.changed());
    json.text("happened", lesson.happened());
    json.text("lookAt", d.lookAt());
    json.text("beware", d.beware());
    json.list("changes", d.changes(), this::change);
    json.start("figures");
    for (Figure figure : d.figures()) {
      figure(lesson, figure);
    }
    json.end();
  }

  private void change(Change change) {
    json.text("key", change.key());
    json.text("where", change.where());
    json.text("before", change.before());
    json.text("after", change.after());
  }

  private void figure(Lesson lesson, Figure figure) {
    ReadingWords words = lesson.words(figure);
    json.start(figure.key() + suffix(words.unit()));
    json.text("words", figure.words());
    json.number("before", words.scaled(lesson.runs().before(figure)), 3);
    json.number("after", words.scaled(lesson.runs().after(figure)), 3);
    json.end();
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
}
