package settle.scenarios;

import java.util.ArrayList;
import java.util.List;
import settle.scenarios.document.DocumentException;
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
   * A scenario whose text is no document.
   *
   * @param file where the text stands
   * @param e what is wrong with it
   */
  public static ScenarioException of(String file, DocumentException e) {
    List<Finding> problems = new ArrayList<>();
    for (DocumentException.Fault fault : e.faults()) {
      problems.add(
          new Finding(file, fault.position().line(), fault.position().column(), fault.message()));
    }
    return new ScenarioException(problems);
  }

  /**
   * Something else than a scenario that cannot be used.
   *
   * @param problems everything that is wrong with it, at least one
   */
  public static ScenarioException of(List<Finding> problems) {
    return new ScenarioException(problems);
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
