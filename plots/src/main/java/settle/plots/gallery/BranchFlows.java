package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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
import settle.sim.house.Branch;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;

/**
 * Flow of water through every emitter, one panel per emitter, arrangements overlaid; the flow it is
 * designed for as a level where the balance knows it.
 */
record BranchFlows(Comparison comparison, TimeWindow window) {

  /** Water that comes and goes more often than this on one panel is shown by its means. */
  static final int MOST_CHANGES = 24;

  /** The emitters a panel shows: the k-th of a room in every arrangement, -1 where it has none. */
  private record Place(String name, int[] branches) {}

  Chart chart(String name, String title, String meaning) {
    List<Key> keys = Overlaid.keys(comparison);
    if (comparison.results().stream().anyMatch(r -> !r.balance().branches().isEmpty())) {
      keys.add(Key.line("design flow", Stroke.FINE_DASH));
    }
    boolean everyStep = comparison.results().stream().allMatch(this::canBeTold);
    Axis time =
        everyStep
            ? window.axis()
            : window
                .axis()
                .captioned("means over " + Quantities.duration(window.readableInterval()));
    List<Place> places = places();
    int columns = places.size() <= 12 ? 2 : 3;
    int height = places.size() <= 2 * columns ? 170 : 105;
    return new Chart(
        name,
        title,
        meaning,
        keys,
        columns,
        places.stream().map(p -> panel(p, height, time, everyStep)).toList());
  }

  private boolean canBeTold(RunResult result) {
    Trace trace = result.trace();
    return IntStream.range(0, trace.branches().size())
        .allMatch(
            b ->
                Courses.canBeTold(
                    trace, trace.column(BranchColumn.MASS_FLOW, b), window, MOST_CHANGES));
  }

  private Panel panel(Place place, int height, Axis time, boolean everyStep) {
    List<Mark> marks = new ArrayList<>();
    List<String> designs = new ArrayList<>();
    double most = 0;
    for (int i = 0; i < comparison.results().size(); i++) {
      RunResult result = comparison.results().get(i);
      int b = place.branches()[i];
      if (b < 0) {
        continue;
      }
      String name = result.arrangement().name();
      double design = design(result, b);
      if (design > 0) {
        marks.add(
            new Mark.Line(
                name + ", design",
                Curve.straight(time.min(), design, time.max(), design),
                Look.arrangement(i).with(Stroke.FINE_DASH)));
        designs.add(Quantities.number(design, design < 10 ? 1 : 0));
      }
      Curve flow = flow(result, b, everyStep);
      marks.add(new Mark.Line(name, flow, Look.arrangement(i)));
      most = Math.max(most, Math.max(flow.most(), design));
    }
    Axis axis = Axis.round(0, most, height / 30, "l/h");
    Panel panel = Panel.of(place.name(), height, time, axis).with(marks);
    return designs.isEmpty() ? panel : panel.noted(design(designs));
  }

  /** What it is designed for, once if all arrangements agree. */
  private static String design(List<String> flows) {
    return "design " + flows.stream().distinct().collect(Collectors.joining(" and ")) + " l/h";
  }

  private Curve flow(RunResult result, int branch, boolean everyStep) {
    Trace trace = result.trace();
    double[] flow = Courses.whileFlowing(trace, trace.column(BranchColumn.MASS_FLOW, branch));
    return Courses.of(trace, flow, window, everyStep, comparison.house().water().litresPerHour(1));
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

  /** One per emitter, room by room in the house's order. */
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
    return IntStream.range(0, branches.size())
        .filter(b -> branches.get(b).room().equals(room))
        .boxed()
        .toList();
  }
}
