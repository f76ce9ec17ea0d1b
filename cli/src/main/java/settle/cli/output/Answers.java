package settle.cli.output;

import java.util.List;
import java.util.Optional;
import settle.plots.words.OddsWords;
import settle.sim.house.House;
import settle.sim.study.Odds;
import settle.sim.study.Verdict;

/**
 * What verdict found out.
 *
 * @param command name of the command
 * @param scenario the scenario file as it was named
 * @param house the house
 * @param verdicts one per arrangement, in the scenario's order
 * @param odds one per verdict; empty if no houses were tried
 * @param warnings what is doubtful in the scenario
 */
public record Answers(
    String command,
    String scenario,
    House house,
    List<Verdict> verdicts,
    List<Odds> odds,
    List<String> warnings) {

  public Answers {
    verdicts = List.copyOf(verdicts);
    odds = List.copyOf(odds);
    warnings = List.copyOf(warnings);
  }

  /** What trying houses has found of an arrangement; empty if none were tried. */
  Optional<OddsWords> oddsOf(Verdict verdict) {
    for (int i = 0; i < odds.size(); i++) {
      if (verdicts.get(i).arrangement().name().equals(verdict.arrangement().name())) {
        return Optional.of(new OddsWords(odds.get(i), house.aims().spreads()));
      }
    }
    return Optional.empty();
  }

  /** Whether every arrangement keeps up. */
  public boolean keepsUp() {
    return verdicts.stream().allMatch(Verdict::keepsUp);
  }
}
