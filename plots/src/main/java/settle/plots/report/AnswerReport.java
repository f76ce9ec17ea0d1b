package settle.plots.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import settle.plots.words.Answer;
import settle.plots.words.Cautions;
import settle.plots.words.HouseholderAnswer;
import settle.plots.words.OddsWords;
import settle.plots.words.Quantities;
import settle.sim.study.Holding;
import settle.sim.study.Verdict;

/**
 * The report of verdicts: one page for who lives in the house, then the designer's tables and
 * charts. One HTML file that needs nothing else, for a screen and for A4 paper.
 */
public final class AnswerReport {

  private static final String TEMPLATE = "answer.mustache";

  private final AnswerContent content;
  private final List<Answer> answers;

  private AnswerReport(AnswerContent content) {
    this.content = content;
    answers = content.verdicts().stream().map(v -> new Answer(content.house(), v)).toList();
  }

  private Optional<OddsWords> odds(Answer answer) {
    return answer.verdict().odds().map(o -> new OddsWords(o, content.house().aims().spreads()));
  }

  /** The whole page. */
  public static String html(AnswerContent content) {
    try (InputStream in = AnswerReport.class.getResourceAsStream(TEMPLATE)) {
      return Isolation.compiler()
          .compile(new InputStreamReader(in, StandardCharsets.UTF_8))
          .execute(new AnswerReport(content).page());
    } catch (IOException e) {
      throw new UncheckedIOException("the report's template cannot be read", e);
    }
  }

  private Map<String, Object> page() {
    List<Map<String, Object>> charts = content.charts().stream().map(Pictured::of).toList();
    Map<String, Object> page = new HashMap<>();
    page.put("title", content.house().title());
    page.put(
        "question",
        "Is it warm enough at "
            + Quantities.setting(content.house().designOutdoor())
            + " outside?");
    page.put(
        "answers", answers.stream().map(a -> named(a, new HouseholderAnswer(a).plain())).toList());
    page.put("picture", charts.subList(0, 1));
    page.put("names", answers.stream().map(Answer::name).toList());
    page.put("figures", figures());
    page.put("todo", toDo());
    page.put("season", answers.get(0).seasonNote());
    page.put("notRun", Answer.notRun());
    page.put("brief", Cautions.brief());
    page.put("arrangements", arrangements());
    page.put("charts", charts.subList(1, charts.size()));
    page.put(
        "beware",
        content.warnings().isEmpty() ? List.of() : List.of(Map.of("points", content.warnings())));
    page.put("cautions", Cautions.all());
    page.put("made", "Made with settle " + content.version() + " from " + content.scenario() + ".");
    return page;
  }

  private static Map<String, Object> named(Answer answer, String words) {
    return Map.of("name", answer.name(), "words", words);
  }

  private List<Map<String, Object>> figures() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (int i = 0; i < HouseholderAnswer.FIGURES.size(); i++) {
      int row = i;
      rows.add(
          Map.of(
              "what",
              HouseholderAnswer.FIGURES.get(i),
              "values",
              answers.stream().map(a -> new HouseholderAnswer(a).figures().get(row)).toList()));
    }
    List<String> brief =
        answers.stream().flatMap(a -> odds(a).stream()).map(OddsWords::brief).toList();
    if (!brief.isEmpty()) {
      rows.add(Map.of("what", OddsWords.BRIEF, "values", brief));
    }
    return rows;
  }

  /** What to do, arrangements that ask for the same put together. */
  private List<Map<String, Object>> toDo() {
    Map<List<String>, List<String>> bySteps = new LinkedHashMap<>();
    for (Answer answer : answers) {
      bySteps
          .computeIfAbsent(new HouseholderAnswer(answer).toDo(), steps -> new ArrayList<>())
          .add(answer.name());
    }
    List<Map<String, Object>> rows = new ArrayList<>();
    bySteps.forEach(
        (steps, names) -> rows.add(Map.of("name", String.join(", ", names), "steps", steps)));
    return rows;
  }

  private List<Map<String, Object>> arrangements() {
    List<Map<String, Object>> arrangements = new ArrayList<>();
    for (Answer answer : answers) {
      Verdict verdict = answer.verdict();
      arrangements.add(
          Map.of(
              "name",
              answer.name(),
              "sentence",
              answer.sentence(),
              "rooms",
              verdict.rooms().stream().map(r -> room(answer, r)).toList(),
              "lines",
              lines(answer),
              "cure",
              boxed(answer.cure()),
              "remedies",
              boxed(answer.remedies()),
              "doubts",
              boxed(answer.doubts()),
              "disagreements",
              boxed(answer.disagreements())));
    }
    return arrangements;
  }

  private List<Map<String, String>> lines(Answer answer) {
    List<Map<String, String>> lines = new ArrayList<>();
    for (Answer.Line line : answer.lines()) {
      lines.add(Map.of("name", line.name(), "words", line.words()));
    }
    Optional<OddsWords> odds = odds(answer);
    if (odds.isPresent()) {
      lines.add(Map.of("name", OddsWords.KEEPS_UP, "words", odds.get().keepUp()));
      lines.add(Map.of("name", OddsWords.MATTERS, "words", odds.get().ranking()));
    }
    return lines;
  }

  /** Nothing to show, or one list. */
  private static List<Map<String, Object>> boxed(List<String> points) {
    return points.isEmpty() ? List.of() : List.of(Map.of("points", points));
  }

  private static Map<String, Object> room(Answer answer, Holding.RoomAnswer room) {
    Map<String, Object> row = new HashMap<>();
    row.put("room", room.room());
    row.put("want", Quantities.number(room.want(), 1));
    row.put("load", Quantities.number(room.load(), 0));
    row.put("output", Quantities.number(room.output(), 0));
    row.put("margin", Quantities.number(100 * room.margin(), 0));
    row.put("settled", Quantities.number(room.settled(), 1));
    row.put("short", !room.holds());
    row.put("holds", room.holds() ? "yes" : "no");
    row.put("to", answer.heldTo(room));
    row.put(
        "flow",
        room.leastFlow().isEmpty() ? "none" : Quantities.number(room.leastFlow().getAsDouble(), 1));
    return row;
  }
}
