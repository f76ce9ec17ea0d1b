package settle.plots.figures;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import settle.plots.figures.Section.Extent;
import settle.plots.figures.Section.Look;
import settle.plots.words.Answer;
import settle.plots.words.Cautions;
import settle.plots.words.HouseholderAnswer;
import settle.plots.words.Quantities;
import settle.sim.house.House;
import settle.sim.study.Verdict;

/**
 * What verdicts on a house answer: a sheet for who lives in it, then the designer's.
 *
 * @param house the house
 * @param verdicts one per arrangement, in the scenario's order
 * @param doubts what is doubtful in the scenario
 * @param written what became of the file with the remedies, in a sentence; empty if none was asked
 *     for
 */
public record VerdictStudy(
    House house, List<Verdict> verdicts, List<String> doubts, Optional<String> written) {

  public VerdictStudy {
    verdicts = List.copyOf(verdicts);
    doubts = List.copyOf(doubts);
  }

  /** The whole answer. */
  public Study study() {
    VerdictFigures figures = new VerdictFigures(house);
    List<Answer> answers = verdicts.stream().map(v -> new Answer(house, v)).toList();
    List<Section> sections = new ArrayList<>();
    householder(sections, answers, figures);
    answers.forEach(answer -> designer(sections, answer, figures));
    sections.add(
        Section.of(Extent.SHORT, Look.PLAIN, "")
            .notes(
                Answer.heldMeans(house),
                Answer.notRun(),
                Answer.notReckoned(),
                Answer.notKnown(house),
                written.orElse("")));
    sections.add(Section.otherCharts());
    sections.add(Section.beware(doubts));
    return new Study(
        house.title(),
        say(
            "Is it warm enough at {} outdoors and in milder weather?",
            Quantities.setting(house.designOutdoor())),
        sections,
        doubts,
        answers.get(0).seasonNote()
            + " U-values, air change and valve settings of a real house are seldom known within 10 %.",
        "flow temperatures, warm-up, source, season, comfort, odds and everything that was tried",
        document -> {
          figures.write(document, verdicts);
          written.ifPresentOrElse(
              w -> document.text("written", w), () -> document.nothing("written"));
        });
  }

  /** One sheet: the answers, a picture, the few figures, what to do. */
  private void householder(List<Section> sections, List<Answer> answers, VerdictFigures figures) {
    for (Answer answer : answers) {
      sections.add(sheet(answer.name()).lead(new HouseholderAnswer(answer).plain()));
    }
    sections.add(sheet("").charts("need-and-delivery"));
    sections.add(sheet("").table(figures.householder(verdicts)));
    // Arrangements that ask for the same are put together.
    Map<List<String>, List<String>> bySteps = new LinkedHashMap<>();
    for (Answer answer : answers) {
      bySteps
          .computeIfAbsent(new HouseholderAnswer(answer).toDo(), steps -> new ArrayList<>())
          .add(answer.name());
    }
    Section toDo = sheet("What to do");
    bySteps.forEach((steps, names) -> toDo.line(String.join(", ", names), steps));
    sections.add(toDo.notes(Cautions.brief()));
  }

  private static Section sheet(String heading) {
    return Section.of(Extent.PAGE, Look.HOUSEHOLDER, heading);
  }

  private static void designer(List<Section> sections, Answer answer, VerdictFigures figures) {
    sections.add(
        Section.of(Extent.SHORT, Look.DESIGNER, answer.name())
            .lead(answer.sentence())
            .table(figures.rooms(answer.verdict()))
            .notes(answer.disagreement().orElse(""))
            .points(Answer.CURE, answer.cure()));
    Section all = Section.full("");
    answer.lines().forEach(line -> all.line(line.name(), List.of(line.words())));
    answer.points().forEach(points -> all.points(points.heading(), points.points()));
    if (answer.disagreements().size() > 1) {
      all.points("Where rest and run differ", answer.disagreements());
    }
    sections.add(all);
  }
}
