package settle.cli.output;

import java.util.List;
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
 */
public record Answers(
    String command, String scenario, House house, List<Verdict> verdicts, List<String> warnings) {

  public Answers {
    verdicts = List.copyOf(verdicts);
    warnings = List.copyOf(warnings);
  }

  /** Whether every arrangement keeps up. */
  public boolean keepsUp() {
    return verdicts.stream().allMatch(Verdict::keepsUp);
  }
}
