package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Panel;
import settle.plots.words.Comparison;
import settle.plots.words.Quantities;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.result.RunResult;

/**
 * What the pump makes and what of it arrives where the index branch, the one that needs most, is
 * connected; below it what passes the bypass, if there is one. Arrangements overlaid.
 */
record Pressures(Comparison comparison, TimeWindow window) {

  private static final int HEIGHT = 140;

  /** Pressures closer than this share are alike [-]. */
  private static final double ALIKE = 0.05;

  Chart chart(String name, String title, String meaning) {
    List<Panel> panels = new ArrayList<>();
    panels.add(
        panel("made by the pump", "kPa", 1e-3, r -> r.trace().column(HouseColumn.PUMP_HEAD)));
    if (balanceKnown()) {
      panels.add(
          panel(
              "left at the branch that needs most: " + indexBranches(),
              "kPa",
              1e-3,
              Pressures::atIndexBranch));
    }
    if (comparison.house().distribution().bypass().isPresent()) {
      panels.add(
          panel(
              "flow through the bypass",
              "l/h",
              comparison.house().water().litresPerHour(1),
              r -> r.trace().column(HouseColumn.BYPASS_FLOW)));
    }
    return new Chart(name, title, meaning, Overlaid.keys(comparison), 1, panels);
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
      for (double value : Courses.whileFlowing(result.trace(), column.apply(result))) {
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

  private Panel panel(
      String name, String unit, double scale, Function<RunResult, double[]> column) {
    int most = 2 * BranchFlows.MOST_CHANGES;
    boolean everyStep =
        comparison.results().stream()
            .allMatch(r -> Courses.canBeTold(r.trace(), column.apply(r), window, most));
    List<Curve> curves =
        Overlaid.curves(
            comparison,
            r ->
                Courses.of(
                    r.trace(),
                    Courses.whileFlowing(r.trace(), column.apply(r)),
                    window,
                    everyStep,
                    scale));
    String shown =
        everyStep ? name : name + ", means over " + Quantities.duration(window.readableInterval());
    Axis axis = Axis.round(0, Math.max(0, Overlaid.most(curves)), 4, unit);
    return Panel.of(shown, HEIGHT, window.axis(), axis).with(Overlaid.lines(comparison, curves));
  }
}
