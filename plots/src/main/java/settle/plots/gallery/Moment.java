package settle.plots.gallery;

import java.util.Arrays;
import settle.plots.words.Comparison;
import settle.plots.words.Quantities;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;
import settle.sim.units.Times;

/**
 * The instant a drawing of the network shows.
 *
 * @param index the step that holds it, by position in the trace
 * @param words when it is, for a title
 */
record Moment(int index, String words) {

  /**
   * An hour after the first call for heat, when rooms still warm up but the water has come round;
   * or, should nothing flow then, when most flows; null if it never does.
   */
  static Moment of(Comparison comparison, RunResult result) {
    Trace trace = result.trace();
    double[] flow = trace.column(HouseColumn.MASS_FLOW);
    double hourOn = comparison.results().get(0).firstCall() + Times.HOUR;
    int index = Arrays.binarySearch(trace.time(), hourOn);
    index = index < 0 ? -index - 1 : index;
    if (!Double.isNaN(hourOn) && index < trace.size() && index > 0 && flow[index] > 0) {
      return new Moment(index, "an hour after the first call for heat");
    }
    int most = 0;
    for (int i = 1; i < flow.length; i++) {
      most = flow[i] > (most == 0 ? 0 : flow[most]) ? i : most;
    }
    return most == 0
        ? null
        : new Moment(
            most,
            Quantities.duration(trace.time()[most] - trace.time()[0])
                + " into the run, when most water flows");
  }
}
