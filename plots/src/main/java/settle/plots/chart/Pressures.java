package settle.plots.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.words.Comparison;
import settle.plots.words.Quantities;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;

/**
 * What the pump makes and what of it arrives where the index branch, the one that needs most, is
 * connected; below it what passes the bypass, if there is one. Arrangements overlaid.
 */
final class Pressures {

  private static final int HEIGHT = 140;

  /** Pressures closer than this share are alike [-]. */
  private static final double ALIKE = 0.05;

  private final Comparison comparison;
  private final TimeWindow window;

  Pressures(Comparison comparison, TimeWindow window) {
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

  /**
   * Whether pressures tell anything: they change while the pump runs, or differ from one
   * arrangement to the other, or something passes a bypass.
   */
  boolean worthDrawing() {
    return comparison.house().distribution().bypass().isPresent()
        || varies(r -> r.trace().column(HouseColumn.PUMP_HEAD))
        || (balanceKnown() && varies(Pressures::atIndexBranch));
  }

  private boolean varies(Function<RunResult, double[]> column) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (RunResult result : comparison.results()) {
      for (double value : flowing(result, column)) {
        least = value < least ? value : least;
        most = value > most ? value : most;
      }
    }
    return most > (1 + ALIKE) * least;
  }

  private boolean balanceKnown() {
    return comparison.results().stream().noneMatch(r -> r.balance().branches().isEmpty());
  }

  private static double[] atIndexBranch(RunResult result) {
    return result.trace().column(BranchColumn.PRESSURE, result.balance().indexBranch());
  }

  private static double[] flowing(RunResult result, Function<RunResult, double[]> column) {
    return Curve.whileFlowing(result.trace(), column.apply(result));
  }

  StackedPanels stack() {
    StackedPanels stack = new StackedPanels(TimeAxis.clock(window, StackedPanels.PLOT_WIDTH));
    add(stack, "made by the pump", "kPa", 1e-3, r -> r.trace().column(HouseColumn.PUMP_HEAD));
    if (balanceKnown()) {
      add(
          stack,
          "left at the branch that needs most: " + indexBranches(),
          "kPa",
          1e-3,
          Pressures::atIndexBranch);
    }
    if (comparison.house().distribution().bypass().isPresent()) {
      add(
          stack,
          "flow through the bypass",
          "l/h",
          comparison.house().water().litresPerHour(1),
          r -> r.trace().column(HouseColumn.BYPASS_FLOW));
    }
    return stack;
  }

  /** Its room; arrangement by arrangement where they differ. */
  private String indexBranches() {
    List<String> rooms =
        comparison.results().stream()
            .map(r -> r.arrangement().place(r.balance().indexBranch()))
            .toList();
    if (rooms.stream().distinct().count() == 1) {
      return rooms.get(0);
    }
    List<String> named = new ArrayList<>();
    for (int i = 0; i < rooms.size(); i++) {
      named.add(rooms.get(i) + " (" + comparison.results().get(i).arrangement().name() + ")");
    }
    return String.join(", ", named);
  }

  private void add(
      StackedPanels stack,
      String name,
      String unit,
      double scale,
      Function<RunResult, double[]> column) {
    boolean everyStep =
        comparison.results().stream()
            .allMatch(
                r ->
                    Curve.canBeTold(
                        r.trace(), column.apply(r), window, 2 * BranchFlows.MOST_CHANGES));
    double interval = window.readableInterval();
    List<Curve> curves = new ArrayList<>();
    double most = 0;
    for (RunResult result : comparison.results()) {
      Trace trace = result.trace();
      double[] values = flowing(result, column);
      Curve curve =
          everyStep
              ? Curve.ofMeans(trace, values, window, 0, scale)
              : Curve.ofIntervalMeans(trace, values, window, interval, 0, scale);
      curves.add(curve);
      most = Math.max(most, curve.most());
    }
    String shown = everyStep ? name : name + ", means over " + Quantities.duration(interval);
    Panel panel = stack.add(shown, HEIGHT, Axis.round(0, most, 4, unit));
    for (int i = 0; i < curves.size(); i++) {
      panel.line(
          comparison.results().get(i).arrangement().name(),
          curves.get(i),
          HouseTheme.arrangement(i));
    }
  }
}
