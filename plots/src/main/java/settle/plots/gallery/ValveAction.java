package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Mark;
import settle.plots.chart.Panel;
import settle.plots.drawing.Stroke;
import settle.plots.words.Comparison;
import settle.plots.words.Focus;
import settle.sim.control.Control;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;
import settle.sim.valve.Valve;

/**
 * What the thermostatic head in one room senses, and how far it opens, arrangements overlaid.
 *
 * @param room which, by position in the house
 */
record ValveAction(Comparison comparison, TimeWindow window, int room) {

  Chart chart(String name, String title, String meaning) {
    List<Key> keys = Overlaid.keys(comparison);
    Valve head = commonHead();
    if (head != null) {
      keys.add(Key.band("head throttles: fully open below, shut above"));
      keys.add(Key.line("set-point", Stroke.THIN));
    }
    List<Curve> opening = Overlaid.curves(comparison, r -> curve(r, BranchColumn.OPENING));
    return new Chart(
        name,
        title,
        meaning,
        keys,
        sensed(head),
        Panel.of(
                "valve opening (100 % is fully open)",
                150, window.axis(), Axis.round(0, 100, 4, "%"))
            .with(Overlaid.lines(comparison, opening)));
  }

  private Panel sensed(Valve head) {
    List<Curve> sensed = Overlaid.curves(comparison, r -> curve(r, BranchColumn.SENSED));
    double least = Overlaid.least(sensed);
    double most = Overlaid.most(sensed);
    List<Mark> marks = new ArrayList<>();
    if (head != null) {
      Curve setPoint = setPoint(head);
      Curve shut = setPoint.raised(head.proportionalBand());
      marks.add(new Mark.Band(shut.raised(-throttlingRange(head)), shut));
      marks.add(new Mark.Line("set-point", setPoint, Look.ink(Stroke.THIN)));
      least = Math.min(least, setPoint.least());
      most = Math.max(most, shut.most());
    }
    Axis axis = Axis.exact(least - 0.3, most + 0.3, 6, "°C");
    return Panel.of("temperature the head senses", 200, window.axis(), axis)
        .with(marks)
        .with(Overlaid.lines(comparison, sensed));
  }

  /** No curve where the room has no thermostatic head. */
  private Curve curve(RunResult result, BranchColumn column) {
    int b = branch(result);
    Trace trace = result.trace();
    if (b < 0) {
      return Curve.NONE;
    }
    return column == BranchColumn.SENSED
        ? Courses.ofState(trace, trace.column(column, b), window)
        : Courses.ofMeans(trace, trace.column(column, b), window, 100);
  }

  /**
   * Position of the branch shown in an arrangement, or -1 if the room has no thermostatic head
   * there.
   */
  private int branch(RunResult result) {
    return new Focus(comparison).thermostatic(result, room).orElse(-1);
  }

  /** The head all arrangements have in that room, if they have the same; otherwise null. */
  private Valve commonHead() {
    Valve common = null;
    for (RunResult result : comparison.results()) {
      int b = branch(result);
      if (b < 0) {
        continue;
      }
      Valve head = result.arrangement().branches().get(b).valve();
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
  private Curve setPoint(Valve head) {
    Trace trace = comparison.results().get(0).trace();
    Curve want = Courses.ofMeans(trace, trace.column(RoomColumn.WANT, room), window, 1);
    double dayWant = comparison.house().rooms().get(room).want().maximum();
    boolean moves = comparison.house().control().setback() == Control.Setback.HEADS;
    double[] y = new double[want.y().length];
    for (int i = 0; i < y.length; i++) {
      y[i] = head.setPoint() + (moves ? want.y()[i] - dayWant : 0);
    }
    return new Curve(want.x(), y);
  }

  /** Rise of sensed temperature that takes the valve from fully open to shut [K]. */
  private static double throttlingRange(Valve head) {
    return head.proportionalBand() * head.kvMaximum() / head.kvNominal();
  }
}
