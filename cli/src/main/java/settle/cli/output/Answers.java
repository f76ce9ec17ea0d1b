package settle.cli.output;

import java.util.List;
import java.util.Optional;
import settle.plots.figures.VerdictFigures;
import settle.plots.words.Answer;
import settle.plots.words.OddsWords;
import settle.sim.house.House;
import settle.sim.study.Verdict;

/**
 * What verdict found out.
 *
 * @param command name of the command
 * @param scenario the scenario file as it was named
 * @param house the house
 * @param verdicts one per arrangement, in the scenario's order
 * @param warnings what is doubtful in the scenario
 * @param written what became of the file with the remedies, in a sentence; empty if none was asked
 *     for
 */
public record Answers(
    String command,
    String scenario,
    House house,
    List<Verdict> verdicts,
    List<String> warnings,
    Optional<String> written) {

  public Answers {
    verdicts = List.copyOf(verdicts);
    warnings = List.copyOf(warnings);
  }

  /** Each verdict in words. */
  List<Answer> words() {
    return verdicts.stream().map(v -> new Answer(house, v)).toList();
  }

  /** What trying houses has found of every arrangement; empty if none were tried. */
  public List<OddsWords> odds() {
    return words().stream().flatMap(a -> a.odds().stream()).toList();
  }

  /**
   * All of it as one JSON document.
   *
   * @param version the tool's
   */
  public String json(String version) {
    return JsonDocument.write(
        command,
        scenario,
        version,
        json -> {
          new VerdictFigures(house).write(json, verdicts);
          written.ifPresentOrElse(w -> json.text("written", w), () -> json.nothing("written"));
          json.texts("warnings", warnings);
        });
  }

  /** Whether every arrangement keeps up, be it only just. */
  public boolean keepsUp() {
    return verdicts.stream().allMatch(Verdict::keepsUp);
  }
}
