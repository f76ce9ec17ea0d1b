package settle.plots.chart;

import java.util.ArrayList;
import java.util.List;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.words.Comparison;
import settle.plots.words.Quantities;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;

/**
 * Heat from the source over time, arrangements overlaid, and the outdoor temperature that calls for
 * it.
 */
final class SourcePower {

  private final Comparison comparison;
  private final TimeWindow window;

  SourcePower(Comparison comparison, TimeWindow window) {
    this.comparison = comparison;
    this.window = window;
  }

  Picture draw(String title) {
    StackedPanels stack = stack();
    Sketch g = new Sketch();
    new Legend(g, Panel.LEFT).arrangements(comparison);
    stack.paint(g);
    return g.picture(title, HouseTheme.WIDTH, stack.height());
  }

  StackedPanels stack() {
    StackedPanels stack =
        new StackedPanels(
            TimeAxis.season(
                window, StackedPanels.PLOT_WIDTH, comparison.house().weather().firstDay()));
    double interval = window.readableInterval();
    List<Curve> curves = new ArrayList<>();
    double most = 0;
    for (RunResult result : comparison.results()) {
      Trace trace = result.trace();
      Curve curve =
          Curve.ofIntervalMeans(
              trace, trace.column(HouseColumn.SOURCE_HEAT), window, interval, 0, 1e-3);
      curves.add(curve);
      most = Math.max(most, curve.most());
    }
    Panel heat =
        stack.add(
            "heat from the source, means over " + Quantities.duration(interval),
            240,
            Axis.round(0, most, 5, "kW"));
    for (int i = 0; i < curves.size(); i++) {
      heat.line(
          comparison.results().get(i).arrangement().name(),
          curves.get(i),
          HouseTheme.arrangement(i));
    }
    Trace trace = comparison.results().get(0).trace();
    Curve outdoor = Curve.ofMeans(trace, trace.column(HouseColumn.OUTDOOR), window, 0, 1);
    stack
        .add("outdoors", 80, Axis.padded(outdoor.least() - 0.5, outdoor.most() + 0.5, 5, 4, "°C"))
        .line("outdoors", outdoor, Look.line(HouseTheme.INK, HouseTheme.THIN));
    return stack;
  }
}
