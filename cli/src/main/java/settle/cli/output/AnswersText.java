package settle.cli.output;

import java.util.List;
import java.util.OptionalDouble;
import settle.plots.words.Answer;
import settle.plots.words.Cautions;
import settle.plots.words.OddsWords;
import settle.plots.words.Quantities;
import settle.sim.house.House;
import settle.sim.study.Holding;

/**
 * The answers in words and tables, one arrangement after the other: yes or no, the rooms, the
 * house, what would help.
 */
public final class AnswersText {

  private final Answers answers;
  private final Paragraphs text = new Paragraphs();

  private AnswersText(Answers answers) {
    this.answers = answers;
  }

  /**
   * The summary.
   *
   * @param answers what was found out
   * @return text of several lines, the last ending with a newline
   */
  public static String write(Answers answers) {
    return new AnswersText(answers).write();
  }

  private String write() {
    House house = answers.house();
    text.paragraph(house.title());
    text.paragraph(
        "Does it keep the house warm at "
            + Quantities.setting(house.designOutdoor())
            + " outdoors and in milder weather, without sun and other gains, within "
            + Quantities.tolerance(house.wantTolerance())
            + " of want?");
    List<Answer> all = answers.verdicts().stream().map(v -> new Answer(house, v)).toList();
    for (Answer answer : all) {
      text.gap();
      text.paragraph(answer.name() + ": " + answer.sentence());
      text.gap();
      text.lines(rooms(answer));
      text.gap();
      for (Answer.Line line : answer.lines()) {
        text.indented(line.name() + ": " + line.words());
      }
      answers
          .oddsOf(answer.verdict())
          .ifPresentOrElse(
              odds -> {
                text.indented(OddsWords.KEEPS_UP + ": " + odds.keepUp());
                text.indented(OddsWords.MATTERS + ": " + odds.ranking());
              },
              () -> text.indented(OddsWords.KEEPS_UP + ": " + OddsWords.NONE_TRIED));
      answer.disagreement().ifPresent(d -> text.indented("Rest and run differ: " + d));
      text.points("To have every room held:", answer.cure());
      text.points("Tried by itself, carried out and run, least effort first:", answer.remedies());
      text.points("Doubtful about the source:", answer.doubts());
    }
    text.gap();
    text.paragraph(Answer.notRun());
    text.paragraph(all.get(0).seasonNote());
    answers
        .written()
        .ifPresent(
            words -> {
              text.gap();
              text.paragraph(words);
            });
    text.points("Beware:", answers.warnings());
    text.gap();
    text.paragraph(Cautions.brief());
    return text.text();
  }

  private static String rooms(Answer answer) {
    TextTable table = new TextTable(1);
    table.head(
        "Room", "Want", "Load", "Output", "Margin", "Design day", "Held?", "Held to", "Least flow");
    table.head("", "°C", "W", "W", "%", "°C", "", "°C", "°C");
    for (Holding.RoomAnswer room : answer.verdict().rooms()) {
      table.row(
          room.room(),
          Quantities.number(room.want(), 1),
          Quantities.number(room.load(), 0),
          Quantities.number(room.output(), 0),
          Quantities.number(100 * room.margin(), 0),
          Quantities.below(room.settled(), room.want() - answer.house().wantTolerance()),
          room.holds() ? "yes" : "no",
          answer.heldTo(room),
          leastFlow(room.leastFlow()));
    }
    return table.text();
  }

  private static String leastFlow(OptionalDouble flow) {
    return flow.isEmpty()
        ? "above " + Quantities.number(Holding.HOTTEST_FLOW, 0)
        : Quantities.number(flow.getAsDouble(), 1);
  }
}
