package settle.scenarios;

import java.util.List;
import settle.scenarios.definition.Definitions;
import settle.scenarios.finding.DefaultUsed;
import settle.scenarios.finding.Finding;
import settle.sim.house.House;

/**
 * A scenario as it was read.
 *
 * @param house the house
 * @param known everything it can use by name
 * @param defaultsUsed every value the file left out, with what was taken and why
 * @param warnings what is legal but doubtful, in the order of the file
 */
public record Scenario(
    House house, Definitions known, List<DefaultUsed> defaultsUsed, List<Finding> warnings) {

  public Scenario {
    defaultsUsed = List.copyOf(defaultsUsed);
    warnings = List.copyOf(warnings);
  }
}
