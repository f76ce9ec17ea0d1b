package settle.scenarios;

import java.util.List;
import settle.scenarios.finding.Finding;

/** A scenario that cannot be used, with everything that is wrong with it. */
public final class ScenarioException extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<Finding> problems;

  ScenarioException(List<Finding> problems) {
    super(problems.get(0).toString());
    this.problems = List.copyOf(problems);
  }

  /**
   * Everything that is wrong, in the order of the file.
   *
   * @return at least one finding
   */
  public List<Finding> problems() {
    return problems;
  }
}
