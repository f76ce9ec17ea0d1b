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
 * Flow temperature at the source above, return temperature below, arrangements overlaid. Every step
 * is drawn, or means where a burner's starts would fill the plot.
 */
final class FlowAndReturn {

  private static final int HEIGHT = 165;
  private static final Look SET_POINT = Look.line(HouseTheme.INK, HouseTheme.THIN);

  /** So many starts can be told apart on one panel. */
  private static final double MOST_STARTS = 40;

  private final Comparison comparison;
  private final TimeWindow window;
  private final boolean everyStep;

  FlowAndReturn(Comparison comparison, TimeWindow window) {
    this.comparison = comparison;
    this.window = window;
    this.everyStep =
        comparison.results().stream()
            .allMatch(
                r -> r.plant().cycling().startsPerHour() * window.length() / 3600 <= MOST_STARTS);
  }

  Picture draw(String title) {
    StackedPanels stack = stack();
    Sketch g = new Sketch();
    boolean byWeather = comparison.house().control().flowCurve().isPresent();
    Legend legend = new Legend(g, Panel.LEFT).arrangements(comparison);
    if (byWeather) {
      legend.line("set-point, by the weather", SET_POINT);
    }
    stack.paint(g);
    Panel flow = stack.panels().get(0);
    double setPoint = comparison.house().source().flowSetPoint();
    if (!byWeather && setPoint > flow.vertical().min() && setPoint < flow.vertical().max()) {
      flow.level(g, setPoint, "set-point " + Quantities.setting(setPoint));
    }
    if (comparison.house().source().dewPoint().isPresent()) {
      double dewPoint = comparison.house().source().dewPoint().getAsDouble();
      stack
          .panels()
          .get(1)
          .level(
              g, dewPoint, "flue dew point " + Quantities.setting(dewPoint) + ": condensing below");
    }
    return g.picture(title, HouseTheme.WIDTH, stack.height());
  }

  StackedPanels stack() {
    StackedPanels stack = new StackedPanels(TimeAxis.clock(window, StackedPanels.PLOT_WIDTH));
    double setPoint = comparison.house().source().flowSetPoint();
    Trace first = comparison.results().get(0).trace();
    Curve asked = Curve.ofMeans(first, first.column(HouseColumn.SET_POINT), window, 0, 1);
    boolean byWeather = comparison.house().control().flowCurve().isPresent() && !asked.isEmpty();
    Panel flow =
        add(stack, "flow" + means(), HouseColumn.FLOW, byWeather ? asked.least() : setPoint);
    if (byWeather) {
      flow.line("set-point", asked, SET_POINT);
    }
    double mark = comparison.house().source().dewPoint().orElseGet(this::coldest);
    add(stack, "return" + means(), HouseColumn.RETURN, mark);
    return stack;
  }

  /** Coldest return there is [°C]; the flow asked for if there is none. */
  private double coldest() {
    return comparison.results().stream()
        .mapToDouble(r -> curve(r.trace(), HouseColumn.RETURN).least())
        .filter(Double::isFinite)
        .min()
        .orElse(comparison.house().source().flowSetPoint());
  }

  private Curve curve(Trace trace, HouseColumn column) {
    double[] values = trace.column(column);
    return everyStep
        ? Curve.ofMeans(trace, values, window, 0, 1)
        : Curve.ofIntervalMeans(trace, values, window, window.readableInterval(), 0, 1);
  }

  private String means() {
    return everyStep ? "" : ", means over " + Quantities.duration(window.readableInterval());
  }

  /** The axis takes in {@code mark}, a temperature that matters, whether or not it is reached. */
  private Panel add(StackedPanels stack, String name, HouseColumn column, double mark) {
    List<Curve> curves = new ArrayList<>();
    double least = mark;
    double most = mark;
    for (RunResult result : comparison.results()) {
      Trace trace = result.trace();
      Curve curve = curve(trace, column);
      curves.add(curve);
      least = Math.min(least, curve.least());
      most = Math.max(most, curve.most());
    }
    Panel panel = stack.add(name, HEIGHT, Axis.padded(least - 1, most + 1, 10, 7, "°C"));
    for (int i = 0; i < curves.size(); i++) {
      panel.line(
          comparison.results().get(i).arrangement().name(),
          curves.get(i),
          HouseTheme.arrangement(i));
    }
    return panel;
  }
}
