package settle.plots.gallery;

import java.util.List;
import java.util.OptionalDouble;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Mark;
import settle.plots.chart.Panel;
import settle.plots.drawing.Stroke;
import settle.plots.words.Comparison;
import settle.plots.words.Quantities;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;

/**
 * Flow temperature at the source above, return temperature below, arrangements overlaid. Every step
 * is drawn, or means where a burner's starts would fill the plot.
 */
record FlowAndReturn(Comparison comparison, TimeWindow window) {

  private static final int HEIGHT = 165;

  /** So many starts can be told apart on one panel. */
  private static final double MOST_STARTS = 40;

  Chart chart(String name, String title, String meaning) {
    List<Key> keys = Overlaid.keys(comparison);
    if (comparison.house().control().flowCurve().isPresent()) {
      keys.add(Key.line("set-point, by the weather", Stroke.THIN));
    }
    return new Chart(name, title, meaning, keys, flow(), returning());
  }

  private Panel flow() {
    Trace first = comparison.results().get(0).trace();
    Curve asked = Courses.ofMeans(first, first.column(HouseColumn.SET_POINT), window, 1);
    double setPoint = comparison.house().source().flowSetPoint();
    boolean byWeather = comparison.house().control().flowCurve().isPresent();
    boolean moves = byWeather && !asked.isEmpty();
    List<Curve> curves = curves(HouseColumn.FLOW);
    Axis axis = axis(curves, moves ? asked.least() : setPoint);
    List<Mark> below =
        moves ? List.of(new Mark.Line("set-point", asked, Look.ink(Stroke.THIN))) : List.of();
    OptionalDouble level =
        !byWeather && setPoint > axis.min() && setPoint < axis.max()
            ? OptionalDouble.of(setPoint)
            : OptionalDouble.empty();
    return panel("flow", curves, axis, below, level, "set-point " + Quantities.setting(setPoint));
  }

  private Panel returning() {
    OptionalDouble dewPoint = comparison.house().source().dewPoint();
    boolean burns = dewPoint.isPresent();
    List<Curve> curves = curves(burns ? HouseColumn.SOURCE_RETURN : HouseColumn.RETURN);
    double coldest = Overlaid.least(curves);
    double mark =
        dewPoint.orElse(
            Double.isFinite(coldest) ? coldest : comparison.house().source().flowSetPoint());
    return panel(
        burns ? "return into the boiler" : "return",
        curves,
        axis(curves, mark),
        List.of(),
        dewPoint,
        "flue dew point " + Quantities.setting(mark) + ": nothing condenses above");
  }

  /** Curves upon what lies below them, and a level with what it means, if there is one. */
  private Panel panel(
      String name,
      List<Curve> curves,
      Axis axis,
      List<Mark> below,
      OptionalDouble level,
      String meaning) {
    String means =
        everyStep() ? "" : ", means over " + Quantities.duration(window.readableInterval());
    Panel panel =
        Panel.of(name + means, HEIGHT, window.axis(), axis)
            .with(below)
            .with(Overlaid.lines(comparison, curves));
    return level.isEmpty()
        ? panel
        : panel
            .level(meaning, level.getAsDouble())
            .noted(meaning, new Key.LineSample(Look.ink(Stroke.FINE_DASH), 34));
  }

  private boolean everyStep() {
    return comparison.results().stream()
        .allMatch(r -> r.plant().cycling().startsPerHour() * window.length() / 3600 <= MOST_STARTS);
  }

  private List<Curve> curves(HouseColumn column) {
    boolean everyStep = everyStep();
    return Overlaid.curves(
        comparison,
        (RunResult r) -> Courses.of(r.trace(), r.trace().column(column), window, everyStep, 1));
  }

  /** The axis takes in {@code mark}, a temperature that matters, whether or not it is reached. */
  private static Axis axis(List<Curve> curves, double mark) {
    return Axis.padded(
        Math.min(mark, Overlaid.least(curves)) - 1,
        Math.max(mark, Overlaid.most(curves)) + 1,
        10,
        7,
        "°C");
  }
}
