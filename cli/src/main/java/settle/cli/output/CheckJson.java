package settle.cli.output;

import java.util.List;
import settle.scenarios.finding.DefaultUsed;
import settle.scenarios.finding.Finding;

/** What a check found, as one JSON document. */
public final class CheckJson {

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
          json.list("problems", problems, f -> finding(json, f));
          json.list("warnings", warnings, f -> finding(json, f));
          json.list("defaults", defaults, d -> defaultUsed(json, d));
        });
  }

  private static void finding(JsonDocument json, Finding finding) {
    json.text("file", finding.file());
    json.count("line", finding.line());
    json.count("column", finding.column());
    json.text("message", finding.message());
  }

  private static void defaultUsed(JsonDocument json, DefaultUsed used) {
    json.text("where", used.where());
    json.text("key", used.key());
    json.text("value", used.value());
    json.text("reason", used.reason());
  }
}
