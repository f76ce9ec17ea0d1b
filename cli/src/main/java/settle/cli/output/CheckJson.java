package settle.cli.output;

import java.util.List;
import settle.plots.figures.Figures;
import settle.scenarios.finding.DefaultUsed;
import settle.scenarios.finding.Finding;

/** What a check found, as one JSON document. */
public final class CheckJson {

  private static final Figures<Finding> FINDING =
      new Figures<Finding>()
          .text("file", Finding::file)
          .count("line", Finding::line)
          .count("column", Finding::column)
          .text("message", Finding::message);

  private static final Figures<DefaultUsed> DEFAULT =
      new Figures<DefaultUsed>()
          .text("where", DefaultUsed::where)
          .text("key", DefaultUsed::key)
          .text("value", DefaultUsed::value)
          .text("reason", DefaultUsed::reason);

  private CheckJson() {}

  /**
   * The document.
   *
   * @param scenario the file as it was named
   * @param problems what is wrong
   * @param warnings what is doubtful
   * @param defaults what was taken for what is left out
   * @param version the tool's version
   * @return JSON text, ending with a newline
   */
  public static String write(
      String scenario,
      List<Finding> problems,
      List<Finding> warnings,
      List<DefaultUsed> defaults,
      String version) {
    return JsonDocument.write(
        "check",
        scenario,
        version,
        json -> {
          json.list("problems", problems, FINDING);
          json.list("warnings", warnings, FINDING);
          json.list("defaults", defaults, DEFAULT);
        });
  }
}
