package settle.cli;

import java.nio.file.Path;
import settle.scenarios.Scenario;
import settle.scenarios.ScenarioException;
import settle.scenarios.ScenarioReader;
import settle.scenarios.finding.Finding;

/** Reads the scenario a command was given. */
final class ScenarioFile {

  private ScenarioFile() {}

  /**
   * Reads it.
   *
   * @throws Failure with a message for everything that is wrong with it
   */
  static Scenario read(Path file) throws Failure {
    try {
      return ScenarioReader.read(file);
    } catch (ScenarioException e) {
      throw new Failure(
          ExitStatus.WRONG_INPUT, e.problems().stream().map(Finding::toString).toList(), e);
    }
  }
}
