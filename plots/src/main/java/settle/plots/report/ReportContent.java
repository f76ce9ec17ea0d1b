package settle.plots.report;

import java.util.List;
import settle.plots.drawing.Picture;
import settle.plots.words.Comparison;

/**
 * What a report tells.
 *
 * @param comparison the runs
 * @param charts in the order they are shown
 * @param inputs what the scenario says
 * @param defaults what it leaves out, with the value taken instead and why
 * @param warnings what the reader should know before believing the figures
 * @param accuracy a sentence on the numerical error of these very runs; empty if it was not
 *     estimated
 * @param scenario name of the scenario's file
 * @param version of the tool
 */
public record ReportContent(
    Comparison comparison,
    List<Picture> charts,
    List<Entry> inputs,
    List<Entry> defaults,
    List<String> warnings,
    String accuracy,
    String scenario,
    String version) {

  public ReportContent {
    charts = List.copyOf(charts);
    inputs = List.copyOf(inputs);
    defaults = List.copyOf(defaults);
    warnings = List.copyOf(warnings);
  }
}
