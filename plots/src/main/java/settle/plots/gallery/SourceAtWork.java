package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Mark;
import settle.plots.chart.Marker;
import settle.plots.chart.Panel;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.Stroke.Dash;
import settle.plots.drawing.Theme;
import settle.plots.words.Comparison;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;

/**
 * A source that cycles, close enough to see it do so: heat given, power used above, water
 * temperatures below, a mark at every start. Two panels per arrangement; a line's weight and dashes
 * say what it is, its colour which arrangement it belongs to.
 */
record SourceAtWork(Comparison comparison, TimeWindow window) {

  private static final int HEIGHT = 130;
  private static final Look START = new Look(Theme.INK, Stroke.THIN, Marker.POINTER);
  private static final Stroke USED = new Stroke(2, Dash.DOTTED);
  private static final Stroke RETURN = new Stroke(2, Dash.DASHED);

  Chart chart(String name, String title, String meaning) {
    List<Key> keys = new ArrayList<>();
    keys.add(Key.line("given, flow", Stroke.HEAVY));
    keys.add(Key.line("used", USED));
    keys.add(Key.line("return", RETURN));
    keys.add(Key.line("set-point", Stroke.THIN));
    if (comparison.results().stream().anyMatch(this::usesBackup)) {
      keys.add(Key.band("backup heater’s share"));
    }
    keys.add(Key.markers("start", List.of(START)));
    return new Chart(name, title, meaning, keys, 1, panels());
  }

  private List<Panel> panels() {
    List<Curve> given = curves(HouseColumn.SOURCE_HEAT, 1e-3);
    List<Curve> used = curves(HouseColumn.SOURCE_INPUT, 1e-3);
    List<Curve> waters = new ArrayList<>(curves(HouseColumn.SOURCE_FLOW, 1));
    waters.addAll(curves(HouseColumn.RETURN, 1));
    waters.addAll(curves(HouseColumn.SET_POINT, 1));
    Axis power =
        Axis.round(
            Math.min(0, Overlaid.least(given)),
            Math.max(Overlaid.most(given), Overlaid.most(used)),
            4,
            "kW");
    Axis temperature =
        Axis.padded(Overlaid.least(waters) - 1, Overlaid.most(waters) + 1, 10, 5, "°C");
    List<Panel> panels = new ArrayList<>();
    for (int i = 0; i < comparison.results().size(); i++) {
      RunResult result = comparison.results().get(i);
      Look look = Look.arrangement(i);
      double[] starts = Starts.within(result, window);
      String some = starts.length > Starts.MOST ? ", some marked" : "";
      String name = result.arrangement().name();
      panels.add(
          Panel.of(name + ": heat given, power used", HEIGHT, window.axis(), power)
              .with(power(result, look, starts, power))
              .noted(count(starts.length) + some));
      String water = name + ": water leaving the source and returning";
      panels.add(
          Panel.of(water, HEIGHT, window.axis(), temperature).with(water(result, look, starts)));
    }
    return panels;
  }

  private List<Mark> power(RunResult result, Look look, double[] starts, Axis power) {
    List<Mark> marks = new ArrayList<>();
    Curve given = curve(result, HouseColumn.SOURCE_HEAT, 1e-3);
    if (usesBackup(result)) {
      Curve backup = curve(result, HouseColumn.BACKUP_HEAT, 1e-3);
      marks.add(new Mark.Band(new Curve(backup.x(), new double[backup.x().length]), backup));
    }
    marks.addAll(at(starts, Mark.Instant::new));
    if (given.least() < 0) {
      Axis time = window.axis();
      marks.add(
          new Mark.Line(
              "nothing", Curve.straight(time.min(), 0, time.max(), 0), Look.ink(Stroke.THIN)));
    }
    Curve used = curve(result, HouseColumn.SOURCE_INPUT, 1e-3);
    marks.add(new Mark.Line("used", used, look.with(USED)));
    marks.add(new Mark.Line("given", given, look.with(Stroke.HEAVY)));
    marks.addAll(at(starts, x -> new Mark.Point(x, power.max(), START)));
    return marks;
  }

  private List<Mark> water(RunResult result, Look look, double[] starts) {
    List<Mark> marks = new ArrayList<>(at(starts, Mark.Instant::new));
    Curve setPoint = curve(result, HouseColumn.SET_POINT, 1);
    marks.add(new Mark.Line("set-point", setPoint, Look.ink(Stroke.THIN)));
    marks.add(new Mark.Line("return", curve(result, HouseColumn.RETURN, 1), look.with(RETURN)));
    marks.add(
        new Mark.Line("flow", curve(result, HouseColumn.SOURCE_FLOW, 1), look.with(Stroke.HEAVY)));
    return marks;
  }

  private boolean usesBackup(RunResult result) {
    return curve(result, HouseColumn.BACKUP_HEAT, 1).most() > 0;
  }

  private List<Curve> curves(HouseColumn column, double scale) {
    return Overlaid.curves(comparison, r -> curve(r, column, scale));
  }

  private Curve curve(RunResult result, HouseColumn column, double scale) {
    Trace trace = result.trace();
    return Courses.ofMeans(trace, trace.column(column), window, scale);
  }

  /** Every start, or every n-th where all would run together. */
  private static List<Mark> at(double[] starts, DoubleFunction<Mark> mark) {
    int every = Math.max(1, (starts.length + Starts.MOST - 1) / Starts.MOST);
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < starts.length; i += every) {
      marks.add(mark.apply(starts[i] / 3600));
    }
    return marks;
  }

  private static String count(int starts) {
    return starts == 0 ? "no start" : starts == 1 ? "1 start" : starts + " starts";
  }
}
