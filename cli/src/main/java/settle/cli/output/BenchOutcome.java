package settle.cli.output;

import java.util.List;
import settle.plots.figures.BenchFigures;
import settle.plots.figures.Study;
import settle.sim.bench.BenchFindings;

/**
 * What the bench found of a valve.
 *
 * @param scenario the scenario file as it was named
 * @param findings what was found
 * @param others which other valves there are
 * @param warnings what the reader should know first
 */
public record BenchOutcome(
    String scenario, BenchFindings findings, List<String> others, List<String> warnings) {

  public BenchOutcome {
    others = List.copyOf(others);
    warnings = List.copyOf(warnings);
  }

  /** What is told of it. */
  public Study study() {
    return new BenchFigures(findings).study(others, warnings);
  }

  /**
   * All of it as one JSON document.
   *
   * @param version the tool's
   */
  public String json(String version) {
    return JsonDocument.write(
        "valve",
        scenario,
        version,
        json -> {
          new BenchFigures(findings).write(json);
          json.texts("warnings", warnings);
        });
  }
}
