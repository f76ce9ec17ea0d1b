package settle.web;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.teavm.jso.JSExport;
import settle.plots.drawing.Picture;
import settle.plots.figures.RunStudy;
import settle.plots.figures.Study;
import settle.plots.figures.VerdictStudy;
import settle.plots.gallery.Charts;
import settle.scenarios.Scenario;
import settle.scenarios.ScenarioException;
import settle.scenarios.ScenarioReader;
import settle.scenarios.document.ScenarioFolder;
import settle.scenarios.finding.Finding;
import settle.sim.house.House;
import settle.sim.study.Verdict;

/** What a page can ask. A scenario that cannot be read ends in an exception with what is wrong. */
public final class Page {

  private Page() {}

  /** Where the compiler begins; a page calls the rest. */
  public static void main(String[] arguments) {
    // There is nothing to start.
  }

  /**
   * What every arrangement does at rest in design weather and in the first day of its run.
   *
   * @param text the scenario, YAML
   * @param file its name, for messages
   * @return a figure a line: its name, a tab, its value
   */
  @JSExport
  public static String figures(String text, String file) {
    return DayFigures.of(read(text, file)).entrySet().stream()
        .map(figure -> figure.getKey() + "\t" + figure.getValue() + "\n")
        .collect(Collectors.joining());
  }

  /**
   * What is to be said of the first day of every arrangement.
   *
   * @param text the scenario, YAML
   * @param file its name, for messages
   * @return a paragraph a line
   */
  @JSExport
  public static String day(String text, String file) {
    House house = DayFigures.firstDay(read(text, file));
    return words(
        new RunStudy(house, DayFigures.runs(house), List.of(), List.of(), List.of(), List.of())
            .study());
  }

  /**
   * The pictures of the first day, arrangements compared.
   *
   * @param text the scenario, YAML
   * @param file its name, for messages
   * @return SVG elements, one after the other
   */
  @JSExport
  public static String pictures(String text, String file) {
    House house = DayFigures.firstDay(read(text, file));
    return Charts.forComparison(house, DayFigures.runs(house)).stream()
        .map(Picture::svg)
        .collect(Collectors.joining());
  }

  /**
   * Whether every arrangement keeps the house warm, why, and what would help.
   *
   * @param text the scenario, YAML
   * @param file its name, for messages
   * @return a sentence, what it rests on and what would help, a line each
   */
  @JSExport
  public static String verdict(String text, String file) {
    House house = read(text, file);
    List<Verdict> verdicts = house.arrangements().stream().map(a -> Verdict.of(house, a)).toList();
    return words(new VerdictStudy(house, verdicts, List.of(), Optional.empty()).study());
  }

  /** What a study says in sentences, a line each. */
  private static String words(Study study) {
    return study.sections().stream()
        .flatMap(
            s ->
                Stream.concat(
                    Stream.of(s.heading() + ": " + String.join(" ", s.lead())),
                    Stream.concat(
                        Stream.concat(s.lines().stream(), s.points().stream())
                            .map(list -> list.heading() + ": " + String.join(" ", list.points())),
                        s.notes().stream())))
        .map(line -> line + "\n")
        .collect(Collectors.joining());
  }

  private static House read(String text, String file) {
    try {
      Scenario scenario = ScenarioReader.read(text, file, ScenarioFolder.EMPTY);
      return scenario.house();
    } catch (ScenarioException e) {
      throw new IllegalArgumentException(
          e.problems().stream().map(Finding::toString).collect(Collectors.joining("\n")), e);
    }
  }
}
