package settle.web;

import java.util.List;
import settle.plots.figures.Figures;
import settle.plots.figures.VerdictFigures;
import settle.plots.words.Answer;
import settle.plots.words.HouseholderAnswer;
import settle.plots.words.Points;
import settle.sim.house.House;
import settle.sim.study.Verdict;

/** Verdicts as a page shows them: the command line's figures and its words. */
final class AnswerWords {

  private AnswerWords() {}

  private static final Figures<Answer.Line> LINE =
      new Figures<Answer.Line>().text("name", Answer.Line::name).text("words", Answer.Line::words);

  private static final Figures<Points> POINTS =
      new Figures<Points>().text("name", Points::heading).texts("words", Points::points);

  private static final Figures<Answer> ANSWER =
      new Figures<Answer>()
          .text("name", a -> a.verdict().arrangement().name())
          .word("outcome", a -> a.verdict().outcome())
          .flag("tried", a -> a.verdict().odds().isPresent())
          .text("plain", a -> new HouseholderAnswer(a).plain())
          .text("sentence", Answer::sentence)
          .texts("steps", a -> new HouseholderAnswer(a).toDo())
          .texts("cure", Answer::cure)
          .list("lines", Answer::lines, LINE)
          .list("points", Answer::points, POINTS);

  /** All of them. */
  static String json(House house, List<Verdict> verdicts) {
    List<Answer> answers = verdicts.stream().map(v -> new Answer(house, v)).toList();
    return JsonText.of(
        document -> {
          document.list("answers", answers, ANSWER);
          new VerdictFigures(house).write(document, verdicts);
        });
  }
}
