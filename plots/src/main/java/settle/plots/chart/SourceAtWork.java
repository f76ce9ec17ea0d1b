package settle.plots.chart;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.words.Comparison;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;

/**
 * A source that cycles, close enough to see it do so: heat given, power used above, water
 * temperatures below, a mark at every start. Two panels per arrangement; a line's weight and dashes
 * say what it is, its colour which arrangement it belongs to.
 */
final class SourceAtWork {

  private static final int POWER_HEIGHT = 130;
  private static final int TEMPERATURE_HEIGHT = 130;

  /** Half the width of a start's mark [px]. */
  private static final double MARK = 5;

  private final Comparison comparison;
  private final TimeWindow window;

  SourceAtWork(Comparison comparison, TimeWindow window) {
    this.comparison = comparison;
    this.window = window;
  }

  Picture draw(String title) {
    StackedPanels stack = stack();
    Sketch g = new Sketch();
    legend(g);
    List<Panel> panels = stack.panels();
    for (int i = 0; i < comparison.results().size(); i++) {
      double[] starts = shown(Starts.within(comparison.results().get(i), window));
      rules(g, panels.get(2 * i), starts);
      rules(g, panels.get(2 * i + 1), starts);
    }
    stack.paint(g);
    for (int i = 0; i < comparison.results().size(); i++) {
      RunResult result = comparison.results().get(i);
      double[] starts = Starts.within(result, window);
      marks(g, panels.get(2 * i), shown(starts));
      panels
          .get(2 * i)
          .remark(g, count(starts.length) + (starts.length > Starts.MOST ? ", some marked" : ""));
    }
    return g.picture(title, HouseTheme.WIDTH, stack.height());
  }

  private void legend(Sketch g) {
    Legend legend = new Legend(g, Panel.LEFT);
    legend
        .line("given, flow", heavy(HouseTheme.INK))
        .line("used", used(HouseTheme.INK))
        .line("return", returning(HouseTheme.INK))
        .line("set-point", Look.line(HouseTheme.INK, HouseTheme.THIN));
    if (comparison.results().stream().anyMatch(this::usesBackup)) {
      legend.band("backup heater’s share");
    }
    legend.start();
  }

  StackedPanels stack() {
    StackedPanels stack = new StackedPanels(TimeAxis.clock(window, StackedPanels.PLOT_WIDTH));
    List<RunResult> results = comparison.results();
    List<Curve> given = curves(HouseColumn.SOURCE_HEAT, 1e-3);
    List<Curve> used = curves(HouseColumn.SOURCE_INPUT, 1e-3);
    List<Curve> flow = curves(HouseColumn.SOURCE_FLOW, 1);
    List<Curve> returning = curves(HouseColumn.RETURN, 1);
    List<Curve> setPoint = curves(HouseColumn.SET_POINT, 1);
    Axis power = Axis.round(Math.min(0, least(given)), Math.max(most(given), most(used)), 4, "kW");
    double coldest = Math.min(least(returning), Math.min(least(flow), least(setPoint)));
    double hottest = Math.max(most(flow), Math.max(most(returning), most(setPoint)));
    Axis temperature = Axis.padded(coldest - 1, hottest + 1, 10, 5, "°C");
    for (int i = 0; i < results.size(); i++) {
      String name = results.get(i).arrangement().name();
      Color colour = HouseTheme.arrangement(i).colour();
      Panel upper = stack.add(name + ": heat given, power used", POWER_HEIGHT, power);
      if (power.min() < 0) {
        upper.zeroed();
      }
      if (usesBackup(results.get(i))) {
        Curve backup = upper.thinned(curve(results.get(i), HouseColumn.BACKUP_HEAT, 1e-3));
        upper.band(new Curve(backup.x(), new double[backup.x().length]), backup);
      }
      upper.line("used", used.get(i), used(colour));
      upper.line("given", given.get(i), heavy(colour));
      Panel lower =
          stack.add(
              name + ": water leaving the source and coming back", TEMPERATURE_HEIGHT, temperature);
      lower.line("set-point", setPoint.get(i), Look.line(HouseTheme.INK, HouseTheme.THIN));
      lower.line("return", returning.get(i), returning(colour));
      lower.line("flow", flow.get(i), heavy(colour));
    }
    return stack;
  }

  private static Look heavy(Color colour) {
    return Look.line(colour, HouseTheme.SOLID);
  }

  private static Look used(Color colour) {
    return Look.line(colour, HouseTheme.stroke(2f, 2.5f, 3));
  }

  private static Look returning(Color colour) {
    return Look.line(colour, HouseTheme.stroke(2f, 9, 4));
  }

  private boolean usesBackup(RunResult result) {
    return curve(result, HouseColumn.BACKUP_HEAT, 1).most() > 0;
  }

  private List<Curve> curves(HouseColumn column, double scale) {
    List<Curve> curves = new ArrayList<>();
    for (RunResult result : comparison.results()) {
      curves.add(curve(result, column, scale));
    }
    return curves;
  }

  private Curve curve(RunResult result, HouseColumn column, double scale) {
    Trace trace = result.trace();
    return Curve.ofMeans(trace, trace.column(column), window, 0, scale);
  }

  private static double least(List<Curve> curves) {
    return curves.stream().mapToDouble(Curve::least).min().orElseThrow();
  }

  private static double most(List<Curve> curves) {
    return curves.stream().mapToDouble(Curve::most).max().orElseThrow();
  }

  /** Every start, or every so-manieth where all would run together. */
  private static double[] shown(double[] starts) {
    int every = (starts.length + Starts.MOST - 1) / Starts.MOST;
    return every <= 1
        ? starts
        : IntStream.range(0, starts.length)
            .filter(i -> i % every == 0)
            .mapToDouble(i -> starts[i])
            .toArray();
  }

  private static String count(int starts) {
    return starts == 0 ? "no start" : starts == 1 ? "1 start" : starts + " starts";
  }

  private static void rules(Sketch g, Panel panel, double[] starts) {
    g.setColor(HouseTheme.PALE_INK);
    g.setStroke(HouseTheme.HAIRLINE);
    for (double start : starts) {
      double x = panel.px(start / 3600);
      g.draw(new Line2D.Double(x, panel.area().getY(), x, panel.area().getMaxY()));
    }
  }

  private static void marks(Sketch g, Panel panel, double[] starts) {
    g.setColor(HouseTheme.INK);
    Arrays.stream(starts).forEach(s -> g.fill(mark(panel.px(s / 3600), panel.area().getY())));
  }

  /** A triangle that points down at the instant of a start. */
  static Path2D mark(double x, double y) {
    Path2D mark = new Path2D.Double();
    mark.moveTo(x, y + MARK);
    mark.lineTo(x - MARK, y - MARK);
    mark.lineTo(x + MARK, y - MARK);
    mark.closePath();
    return mark;
  }
}
