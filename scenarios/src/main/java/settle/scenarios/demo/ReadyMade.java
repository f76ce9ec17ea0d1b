package settle.scenarios.demo;

import settle.scenarios.Scenario;
import settle.scenarios.ScenarioException;
import settle.scenarios.ScenarioReader;
import settle.scenarios.document.ScenarioFolder;
import settle.sim.demo.BeforeAndAfter;
import settle.sim.demo.Demonstration;

/**
 * A demonstration with its two scenarios.
 *
 * @param demonstration what it shows
 * @param before text of the first scenario
 * @param after text of the second
 */
public record ReadyMade(Demonstration demonstration, String before, String after) {

  /** Runs both. */
  public BeforeAndAfter run() {
    return BeforeAndAfter.of(
        demonstration, scenario("before", before).house(), scenario("after", after).house());
  }

  private Scenario scenario(String version, String text) {
    try {
      return ScenarioReader.read(
          text, demonstration.name() + "-" + version + ".yaml", ScenarioFolder.EMPTY);
    } catch (ScenarioException e) {
      throw new IllegalStateException("a demonstration's scenario is wrong: " + e.problems(), e);
    }
  }
}
