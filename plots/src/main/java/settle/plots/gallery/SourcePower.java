package settle.plots.gallery;

import java.util.List;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Look;
import settle.plots.chart.Panel;
import settle.plots.drawing.Stroke;
import settle.plots.words.Comparison;
import settle.plots.words.Quantities;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;

/**
 * Heat from the source over time, arrangements overlaid, and the outdoor temperature that calls for
 * it.
 */
record SourcePower(Comparison comparison, TimeWindow window) {

  Chart chart(String name, String title, String meaning) {
    Axis time = window.axis(comparison.house().weather().firstDay());
    double interval = window.readableInterval();
    List<Curve> heat =
        Overlaid.curves(
            comparison,
            r ->
                Courses.ofIntervalMeans(
                    r.trace(), r.trace().column(HouseColumn.SOURCE_HEAT), window, interval, 1e-3));
    Trace trace = comparison.results().get(0).trace();
    Curve outdoor = Courses.ofMeans(trace, trace.column(HouseColumn.OUTDOOR), window, 1);
    Axis power = Axis.round(0, Math.max(0, Overlaid.most(heat)), 5, "kW");
    Axis cold = Axis.padded(outdoor.least() - 0.5, outdoor.most() + 0.5, 5, 4, "°C");
    String means = "heat from the source, means over " + Quantities.duration(interval);
    return new Chart(
        name,
        title,
        meaning,
        Overlaid.keys(comparison),
        Panel.of(means, 240, time, power).with(Overlaid.lines(comparison, heat)),
        Panel.of("outdoors", 80, time, cold).line("outdoors", outdoor, Look.ink(Stroke.THIN)));
  }
}
