package settle.plots.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.words.Comparison;
import settle.plots.words.Focus;
import settle.sim.control.Control;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;
import settle.sim.valve.WaxValve;

/** What the thermostatic head in one room senses, and how far it opens, arrangements overlaid. */
final class ValveAction {

  private static final Look SET_POINT = Look.line(HouseTheme.INK, HouseTheme.THIN);

  private final Comparison comparison;
  private final TimeWindow window;
  private final int room;

  /**
   * @param room which, by position in the house
   */
  ValveAction(Comparison comparison, TimeWindow window, int room) {
    this.comparison = comparison;
    this.window = window;
    this.room = room;
  }

  /**
   * Position of the branch shown in an arrangement, or -1 if the room has no thermostatic head
   * there.
   */
  private int branch(RunResult result) {
    return new Focus(comparison).thermostatic(result, room).orElse(-1);
  }

  Picture draw(String title) {
    StackedPanels stack = stack();
    Sketch g = new Sketch();
    Legend legend = new Legend(g, Panel.LEFT).arrangements(comparison);
    WaxValve head = commonHead();
    if (head != null) {
      legend.band("head throttles: fully open below, shut above").line("set-point", SET_POINT);
    }
    stack.paint(g);
    return g.picture(title, HouseTheme.WIDTH, stack.height());
  }

  StackedPanels stack() {
    StackedPanels stack = new StackedPanels(TimeAxis.clock(window, StackedPanels.PLOT_WIDTH));
    List<RunResult> results = comparison.results();
    List<Curve> sensed = new ArrayList<>();
    List<Curve> opening = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (RunResult result : results) {
      Trace trace = result.trace();
      int b = branch(result);
      Curve s =
          b < 0
              ? NOTHING
              : Curve.ofState(trace, trace.column(BranchColumn.SENSED, b), window, 0, 1);
      sensed.add(s);
      opening.add(
          b < 0
              ? NOTHING
              : Curve.ofMeans(trace, trace.column(BranchColumn.OPENING, b), window, 0, 100));
      least = Math.min(least, s.least());
      most = Math.max(most, s.most());
    }
    WaxValve head = commonHead();
    Curve setPoint = head == null ? NOTHING : setPoint(head);
    Curve shut = head == null ? NOTHING : shifted(setPoint, head.proportionalBand());
    least = Math.min(least, setPoint.least());
    most = Math.max(most, shut.most());
    Panel upper =
        stack.add("temperature the head senses", 200, Axis.exact(least - 0.3, most + 0.3, 6, "°C"));
    if (head != null) {
      upper.band(
          upper.thinned(shifted(setPoint, head.proportionalBand() - throttlingRange(head))),
          upper.thinned(shut));
      upper.line("set-point", setPoint, SET_POINT);
    }
    Panel lower = stack.add("valve opening (100 % is fully open)", 150, Axis.round(0, 100, 4, "%"));
    for (int i = 0; i < results.size(); i++) {
      String name = results.get(i).arrangement().name();
      upper.line(name, sensed.get(i), HouseTheme.arrangement(i));
      lower.line(name, opening.get(i), HouseTheme.arrangement(i));
    }
    return stack;
  }

  private static final Curve NOTHING = new Curve(new double[] {0}, new double[] {Double.NaN});

  /** The head all arrangements have in that room, if they have the same; otherwise null. */
  private WaxValve commonHead() {
    WaxValve common = null;
    for (RunResult result : comparison.results()) {
      int b = branch(result);
      if (b < 0) {
        continue;
      }
      WaxValve head = (WaxValve) result.arrangement().branches().get(b).valve();
      if (common != null
          && (common.setPoint() != head.setPoint()
              || common.proportionalBand() != head.proportionalBand())) {
        return null;
      }
      common = head;
    }
    return common;
  }

  /** The set-point over time: a programmable head's moves as much as want does. */
  private Curve setPoint(WaxValve head) {
    Trace trace = comparison.results().get(0).trace();
    Curve want = Curve.ofMeans(trace, trace.column(RoomColumn.WANT, room), window, 0, 1);
    double dayWant = comparison.house().rooms().get(room).want().maximum();
    boolean moves = comparison.house().control().setback() == Control.Setback.HEADS;
    double[] y = new double[want.y().length];
    for (int i = 0; i < y.length; i++) {
      y[i] = head.setPoint() + (moves ? want.y()[i] - dayWant : 0);
    }
    return new Curve(want.x(), y);
  }

  /** Rise of sensed temperature that takes the valve from fully open to shut [K]. */
  private static double throttlingRange(WaxValve head) {
    return head.proportionalBand() * head.kvMaximum() / head.kvNominal();
  }

  private static Curve shifted(Curve curve, double by) {
    return new Curve(curve.x(), Arrays.stream(curve.y()).map(v -> v + by).toArray());
  }
}
