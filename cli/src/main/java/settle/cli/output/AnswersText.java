package settle.cli.output;

import java.util.List;
import java.util.OptionalDouble;
import settle.plots.words.Answer;
import settle.plots.words.Cautions;
import settle.plots.words.Quantities;
import settle.sim.house.House;
import settle.sim.study.Holding;
import settle.sim.study.Verdict;

/**
 * The answers in words and tables, one arrangement after the other: yes or no, the rooms, the
 * house, what would help.
 */
public final class AnswersText {

  private final Answers answers;
  private final StringBuilder text = new StringBuilder();

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
    wrap("", house.title());
    wrap(
        "",
        "Does it keep the house warm at "
            + Quantities.setting(house.designOutdoor())
            + " outdoors, without sun and other gains, within "
            + Quantities.tolerance(house.wantTolerance())
            + " of want?");
    for (Verdict verdict : answers.verdicts()) {
      Answer answer = new Answer(house, verdict);
      text.append('\n');
      wrap("", answer.name() + ": " + answer.sentence());
      text.append('\n').append(rooms(verdict.rooms())).append('\n');
      for (Answer.Line line : answer.lines()) {
        wrap("  ", line.name() + ": " + line.words());
      }
      list("What would help, each by itself, cheapest first:", answer.remedies());
      list("Doubtful about the source:", answer.doubts());
    }
    list("Beware:", answers.warnings());
    text.append('\n');
    wrap("", Cautions.brief());
    return text.toString();
  }

  private static String rooms(List<Holding.RoomAnswer> rooms) {
    TextTable table = new TextTable(1);
    table.head(
        "Room", "Want", "Load", "Output", "Margin", "Settles", "Held?", "Held to", "Least flow");
    table.head("", "°C", "W", "W", "%", "°C", "", "°C", "°C");
    for (Holding.RoomAnswer room : rooms) {
      table.row(
          room.room(),
          Quantities.number(room.want(), 1),
          Quantities.number(room.load(), 0),
          Quantities.number(room.output(), 0),
          Quantities.number(100 * room.margin(), 0),
          Quantities.number(room.settled(), 1),
          room.holds() ? "yes" : "no",
          heldTo(room.holdingOutdoor()),
          leastFlow(room.leastFlow()));
    }
    return table.text();
  }

  private static String heldTo(OptionalDouble outdoor) {
    if (outdoor.isEmpty()) {
      return "never";
    }
    return outdoor.getAsDouble() <= Holding.COLDEST
        ? "below " + Quantities.number(Holding.COLDEST, 0)
        : Quantities.number(outdoor.getAsDouble(), 1);
  }

  private static String leastFlow(OptionalDouble flow) {
    return flow.isEmpty()
        ? "above " + Quantities.number(Holding.HOTTEST_FLOW, 0)
        : Quantities.number(flow.getAsDouble(), 1);
  }

  private void list(String heading, List<String> points) {
    if (!points.isEmpty()) {
      text.append('\n');
      wrap("", heading);
      points.forEach(p -> wrap("- ", p));
    }
  }

  private void wrap(String lead, String words) {
    WrappedText.append(text, lead, words);
  }
}
