package settle.cli.output;

import java.util.List;
import java.util.Optional;
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

  /** What trying houses has found of an arrangement; empty if none were tried. */
  Optional<OddsWords> oddsOf(Verdict verdict) {
    return verdict.odds().map(o -> new OddsWords(o, house.aims().spreads()));
  }

  /** The same of every arrangement; empty if none were tried. */
  public List<OddsWords> odds() {
    return verdicts.stream().flatMap(v -> oddsOf(v).stream()).toList();
  }

  /** Whether every arrangement keeps up, be it only just. */
  public boolean keepsUp() {
    return verdicts.stream().allMatch(Verdict::keepsUp);
  }
}
