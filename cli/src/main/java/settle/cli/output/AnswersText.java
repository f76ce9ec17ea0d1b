package settle.cli.output;

import static settle.plots.words.Sentences.say;

import java.util.List;
import settle.plots.figures.VerdictFigures;
import settle.plots.words.Answer;
import settle.plots.words.Cautions;
import settle.plots.words.Points;
import settle.plots.words.Quantities;
import settle.sim.house.House;

/**
 * The answers in words and tables, one arrangement after the other: yes or no, the rooms, the
 * house, what would help.
 */
public final class AnswersText {

  private AnswersText() {}

  /**
   * The summary.
   *
   * @param answers what was found out
   * @param layout how it is set
   * @return text of several lines, the last ending with a newline
   */
  public static String write(Answers answers, Layout layout) {
    House house = answers.house();
    Paragraphs text = new Paragraphs(layout);
    text.paragraph(house.title());
    text.paragraph(
        say(
            "Does it keep the house warm at {} outdoors and in milder weather, without sun and other gains, within {} of want?",
            Quantities.setting(house.designOutdoor()),
            Quantities.tolerance(house.wantTolerance())));
    List<Answer> all = answers.words();
    for (Answer answer : all) {
      text.apart(answer.name() + ": " + answer.sentence());
      text.table(new VerdictFigures(house).rooms(answer.verdict()));
      if (layout.full()) {
        text.gap();
        for (Answer.Line line : answer.lines()) {
          text.indented(line.name() + ": " + line.words());
        }
      }
      answer.disagreement().ifPresent(d -> text.indented("Rest and run differ: " + d));
      for (Points points : layout.full() ? answer.points() : answer.firstPoints()) {
        text.points(points.heading() + ":", points.points());
      }
    }
    text.apart(Answer.notRun());
    if (layout.full()) {
      text.paragraph(all.get(0).seasonNote());
    }
    answers.written().ifPresent(text::apart);
    text.points("Beware:", answers.warnings());
    text.apart(Cautions.brief());
    if (!layout.full()) {
      text.apart(
          "Flow temperatures, warm-up, source, season, comfort, odds and everything that was tried:"
              + " --full.");
    }
    return text.text();
  }
}
