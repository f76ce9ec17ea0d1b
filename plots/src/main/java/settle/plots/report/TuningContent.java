package settle.plots.report;

import java.util.List;
import settle.plots.chart.Chart;
import settle.sim.tuning.Tuning;

/**
 * What a report of a tuning tells.
 *
 * @param title of the house
 * @param tuning the settings, and what they do
 * @param charts in the order in which they are shown
 * @param notes what the reader should know before following it
 * @param scenario name of the scenario's file
 * @param version of the tool
 */
public record TuningContent(
    String title,
    Tuning tuning,
    List<Chart> charts,
    List<String> notes,
    String scenario,
    String version) {

  public TuningContent {
    charts = List.copyOf(charts);
    notes = List.copyOf(notes);
  }
}
