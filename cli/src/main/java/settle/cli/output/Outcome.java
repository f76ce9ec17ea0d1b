package settle.cli.output;

import java.util.ArrayList;
import java.util.List;
import settle.plots.figures.RunFigures;
import settle.plots.words.Notices;
import settle.sim.house.House;
import settle.sim.notice.Notice;
import settle.sim.result.RunResult;
import settle.sim.study.ErrorEstimate;

/**
 * What a command found out.
 *
 * @param command name of the command
 * @param scenario the scenario file as it was named
 * @param house the house with the run's settings in force
 * @param runs one per arrangement simulated, in the scenario's order
 * @param errors how far each run's figures move when it is run finer, one per run; empty if that
 *     was not asked for
 * @param scenarioWarnings what is doubtful in the scenario
 */
public record Outcome(
    String command,
    String scenario,
    House house,
    List<RunResult> runs,
    List<ErrorEstimate> errors,
    List<String> scenarioWarnings) {

  public Outcome {
    runs = List.copyOf(runs);
    errors = List.copyOf(errors);
    scenarioWarnings = List.copyOf(scenarioWarnings);
  }

  /** The figures, as tables and documents have them. */
  RunFigures figures() {
    return new RunFigures(house, runs, errors);
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
          figures().write(json);
          json.texts("warnings", warnings());
        });
  }

  /** Whether every arrangement keeps up. */
  public boolean keepsUp() {
    return runs.stream().allMatch(RunResult::keepsUp);
  }

  /**
   * Everything the reader should know, the scenario's doubts first; a run's and its balance's are
   * headed by its arrangement.
   */
  public List<String> warnings() {
    List<String> all = new ArrayList<>(scenarioWarnings);
    for (RunResult run : runs) {
      List<Notice> notices = new ArrayList<>(run.notices());
      notices.addAll(run.balance().notices());
      for (String words : Notices.gathered(notices)) {
        all.add(run.arrangement().name() + ": " + words);
      }
    }
    return all;
  }
}
