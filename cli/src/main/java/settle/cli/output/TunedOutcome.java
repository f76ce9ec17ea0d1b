package settle.cli.output;

import java.util.List;
import settle.plots.figures.Study;
import settle.plots.figures.TuningFigures;
import settle.sim.tuning.Tuning;

/**
 * What tune found.
 *
 * @param command name of the command
 * @param scenario the scenario file as it was named
 * @param tuning the settings, and what they do
 * @param notes what the reader should know
 */
public record TunedOutcome(String command, String scenario, Tuning tuning, List<String> notes) {

  public TunedOutcome {
    notes = List.copyOf(notes);
  }

  /** What is told of it. */
  public Study study() {
    return new TuningFigures(tuning).study(notes);
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
          new TuningFigures(tuning).write(json);
          json.texts("warnings", notes);
        });
  }
}
