package settle.plots.report;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import settle.plots.figures.VerdictFigures;
import settle.plots.words.Answer;
import settle.plots.words.Cautions;
import settle.plots.words.HouseholderAnswer;
import settle.plots.words.Quantities;

/**
 * The report of verdicts: one page for who lives in the house, then the designer's tables and
 * charts. One HTML file that needs nothing else, for a screen and for A4 paper.
 */
public final class AnswerReport {

  private final AnswerContent content;
  private final List<Answer> answers;
  private final VerdictFigures figures;

  private AnswerReport(AnswerContent content) {
    this.content = content;
    answers = content.verdicts().stream().map(v -> new Answer(content.house(), v)).toList();
    figures = new VerdictFigures(content.house());
  }

  /** The whole page. */
  public static String html(AnswerContent content) {
    return Page.html("answer", new AnswerReport(content).page());
  }

  private Map<String, Object> page() {
    List<Page.Pictured> charts = Page.pictured(content.charts());
    Map<String, Object> page = new HashMap<>();
    page.put("title", content.house().title());
    page.put(
        "question",
        say(
            "Is it warm enough at {} outside?",
            Quantities.setting(content.house().designOutdoor())));
    page.put(
        "answers",
        answers.stream()
            .map(a -> new Answer.Line(a.name(), new HouseholderAnswer(a).plain()))
            .toList());
    page.put("picture", charts.subList(0, 1));
    page.put("figures", Page.table(figures.householder(content.verdicts())));
    page.put("todo", toDo());
    page.put("season", answers.get(0).seasonNote());
    page.put("notRun", Answer.notRun());
    page.put("brief", Cautions.brief());
    page.put("arrangements", answers.stream().map(this::arrangement).toList());
    page.put("charts", charts.subList(1, charts.size()));
    page.put("beware", Page.points("Beware", content.warnings()));
    page.put("cautions", Cautions.all());
    page.put("made", "Made with settle " + content.version() + " from " + content.scenario() + ".");
    return page;
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

  private Map<String, Object> arrangement(Answer answer) {
    return Map.of(
        "name",
        answer.name(),
        "sentence",
        answer.sentence(),
        "rooms",
        Page.table(figures.rooms(answer.verdict())),
        "lines",
        answer.lines(),
        "points",
        answer.points(),
        "disagreements",
        Page.points("Where the house at rest is wrong", answer.disagreements()));
  }
}
