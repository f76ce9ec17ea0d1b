package settle.plots.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.words.Comparison;
import settle.plots.words.Quantities;
import settle.sim.house.Branch;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;

/**
 * Flow of water through every emitter, one panel per emitter, arrangements overlaid; the flow it is
 * designed for as a level where the balance knows it.
 */
final class BranchFlows {

  private static final int COLUMN_GAP = 26;
  private static final int RIGHT = 30;

  /** Water that comes and goes more often than this on one panel is shown by its means. */
  static final int MOST_CHANGES = 24;

  private final Comparison comparison;
  private final TimeWindow window;
  private final boolean everyStep;

  BranchFlows(Comparison comparison, TimeWindow window) {
    this.comparison = comparison;
    this.window = window;
    this.everyStep = comparison.results().stream().allMatch(this::canBeTold);
  }

  private boolean canBeTold(RunResult result) {
    Trace trace = result.trace();
    return IntStream.range(0, trace.branches().size())
        .allMatch(
            b ->
                Curve.canBeTold(
                    trace, trace.column(BranchColumn.MASS_FLOW, b), window, MOST_CHANGES));
  }

  /** The emitters a panel shows: the k-th of a room in every arrangement, -1 where it has none. */
  private record Place(String name, int[] branches) {}

  Picture draw(String title) {
    Sketch g = new Sketch();
    Legend legend = new Legend(g, Panel.LEFT).arrangements(comparison);
    if (comparison.results().stream().anyMatch(r -> !r.balance().branches().isEmpty())) {
      legend.line("design flow", Look.line(HouseTheme.INK, HouseTheme.FINE_DASH));
    }
    List<Place> places = places();
    List<Panel> panels = panels();
    for (int i = 0; i < panels.size(); i++) {
      Panel panel = panels.get(i);
      panel.paint(g);
      panel.name(g, places.get(i).name());
      panel.remark(g, design(places.get(i)));
      if (i + columns() >= panels.size()) {
        panel.caption(g);
      }
    }
    Panel last = panels.get(panels.size() - 1);
    return g.picture(
        title, HouseTheme.WIDTH, (int) last.area().getMaxY() + Panel.BELOW + Panel.CAPTION + 4);
  }

  /** One panel per emitter, room by room in the house's order. */
  List<Panel> panels() {
    List<Place> places = places();
    int columns = columns();
    int rows = (places.size() + columns - 1) / columns;
    int width =
        (HouseTheme.WIDTH - RIGHT - columns * Panel.LEFT - (columns - 1) * COLUMN_GAP) / columns;
    int height = rows <= 2 ? 170 : 105;
    Axis clock = TimeAxis.clock(window, width);
    Axis horizontal =
        everyStep
            ? clock
            : clock.captioned(
                "means over "
                    + Quantities.duration(window.readableInterval())
                    + "; "
                    + clock.caption());
    List<Panel> panels = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      int x = Panel.LEFT + i % columns * (width + Panel.LEFT + COLUMN_GAP);
      int y = Legend.HEIGHT + Panel.ABOVE + i / columns * (height + Panel.ABOVE + Panel.BELOW + 8);
      panels.add(panel(places.get(i), x, y, width, height, horizontal));
    }
    return panels;
  }

  private int columns() {
    return places().size() <= 12 ? 2 : 3;
  }

  private Panel panel(Place place, int x, int y, int width, int height, Axis horizontal) {
    List<RunResult> results = comparison.results();
    double most = 0;
    for (int i = 0; i < results.size(); i++) {
      int b = place.branches()[i];
      if (b >= 0) {
        most = Math.max(most, Math.max(flow(results.get(i), b).most(), design(results.get(i), b)));
      }
    }
    Panel panel =
        new Panel(x, y, width, height, horizontal, Axis.round(0, most, height / 30, "l/h"));
    for (int i = 0; i < results.size(); i++) {
      int b = place.branches()[i];
      if (b < 0) {
        continue;
      }
      Look look = HouseTheme.arrangement(i);
      String name = results.get(i).arrangement().name();
      double design = design(results.get(i), b);
      if (design > 0) {
        panel.line(
            name + ", design",
            new Curve(
                new double[] {horizontal.min(), horizontal.max()}, new double[] {design, design}),
            Look.line(look.colour(), HouseTheme.FINE_DASH));
      }
      panel.line(name, flow(results.get(i), b), look);
    }
    return panel;
  }

  private Curve flow(RunResult result, int branch) {
    Trace trace = result.trace();
    double[] flow = Curve.whileFlowing(trace, trace.column(BranchColumn.MASS_FLOW, branch));
    double scale = comparison.house().water().litresPerHour(1);
    return everyStep
        ? Curve.ofMeans(trace, flow, window, 0, scale)
        : Curve.ofIntervalMeans(trace, flow, window, window.readableInterval(), 0, scale);
  }

  /** Design flow [l/h]; 0 if it is not known. */
  private double design(RunResult result, int branch) {
    return result.balance().branches().isEmpty()
        ? 0
        : comparison
            .house()
            .water()
            .litresPerHour(result.balance().branches().get(branch).designFlow());
  }

  /** What it is designed for, once if all arrangements agree. */
  private String design(Place place) {
    List<String> flows = new ArrayList<>();
    for (int i = 0; i < comparison.results().size(); i++) {
      int b = place.branches()[i];
      double design = b < 0 ? 0 : design(comparison.results().get(i), b);
      if (design > 0) {
        flows.add(Quantities.number(design, design < 10 ? 1 : 0));
      }
    }
    return flows.isEmpty()
        ? ""
        : "design " + flows.stream().distinct().collect(Collectors.joining(" and ")) + " l/h";
  }

  private List<Place> places() {
    List<Place> places = new ArrayList<>();
    List<RunResult> results = comparison.results();
    for (var room : comparison.house().rooms()) {
      List<List<Integer>> inRoom =
          results.stream().map(r -> inRoom(r.arrangement().branches(), room.name())).toList();
      int most = inRoom.stream().mapToInt(List::size).max().orElse(0);
      for (int k = 0; k < most; k++) {
        int[] branches = new int[results.size()];
        for (int i = 0; i < branches.length; i++) {
          branches[i] = k < inRoom.get(i).size() ? inRoom.get(i).get(k) : -1;
        }
        places.add(new Place(room.name() + (most == 1 ? "" : ", emitter " + (k + 1)), branches));
      }
    }
    return places;
  }

  private static List<Integer> inRoom(List<Branch> branches, String room) {
    List<Integer> found = new ArrayList<>();
    for (int b = 0; b < branches.size(); b++) {
      if (branches.get(b).room().equals(room)) {
        found.add(b);
      }
    }
    return found;
  }
}
