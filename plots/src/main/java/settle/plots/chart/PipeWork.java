package settle.plots.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import settle.plots.drawing.Sketch;

/**
 * Flow and return pipes of a drawing, gathered first and drawn together, so that every flow pipe
 * bridges the return pipes it crosses. The more water, the wider the line: as its square root, as
 * pipes are.
 */
final class PipeWork {

  /** Flow, dark enough to be told from the return on a photocopy. */
  static final Color FLOW = new Color(0x8f2f1e);

  static final Color RETURN = new Color(0x6d9dbb);

  private static final double WIDEST = 8;
  private static final double NARROWEST = 1.8;
  private static final double BRIDGE = 2.5;

  /** How far an arrow head stands out beside its line [px]. */
  private static final double ARROW = 3.5;

  private record Run(double x1, double y1, double x2, double y2, double flow, boolean isFlow) {}

  private record Arrow(double x, double y, double flow, boolean isFlow) {}

  private final double most;
  private final List<Run> runs = new ArrayList<>();
  private final List<Arrow> arrows = new ArrayList<>();

  /**
   * @param most largest flow there is, drawn widest [kg/s]
   */
  PipeWork(double most) {
    this.most = most;
  }

  /** Adds a straight run of flow pipe. */
  void flow(double x1, double y1, double x2, double y2, double massFlow) {
    runs.add(new Run(x1, y1, x2, y2, massFlow, true));
  }

  /** Adds a straight run of return pipe. */
  void back(double x1, double y1, double x2, double y2, double massFlow) {
    runs.add(new Run(x1, y1, x2, y2, massFlow, false));
  }

  /** Adds arrow heads: away from the source on the flow, back on the return. */
  void arrows(double x, double flowY, double returnY, double massFlow) {
    arrows.add(new Arrow(x, flowY, massFlow, true));
    arrows.add(new Arrow(x, returnY, massFlow, false));
  }

  void paint(Sketch g) {
    runs.stream().filter(r -> !r.isFlow()).forEach(r -> line(g, r));
    g.setColor(HouseTheme.PAPER);
    for (Run run : runs) {
      if (run.isFlow()) {
        g.setStroke(HouseTheme.stroke((float) (width(run.flow()) + 2 * BRIDGE)));
        g.draw(new Line2D.Double(run.x1(), run.y1(), run.x2(), run.y2()));
      }
    }
    runs.stream().filter(Run::isFlow).forEach(r -> line(g, r));
    arrows.forEach(a -> arrow(g, a));
  }

  private void line(Sketch g, Run run) {
    boolean still = run.flow() <= 0;
    g.setColor(still ? HouseTheme.PALE_INK : run.isFlow() ? FLOW : RETURN);
    g.setStroke(
        still
            ? HouseTheme.stroke(1.2f, 3, 3)
            : new BasicStroke(
                (float) width(run.flow()), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.draw(new Line2D.Double(run.x1(), run.y1(), run.x2(), run.y2()));
  }

  private double width(double flow) {
    return flow <= 0 ? 1.2 : Math.max(NARROWEST, WIDEST * Math.sqrt(flow / most));
  }

  private void arrow(Sketch g, Arrow arrow) {
    double half = width(arrow.flow()) / 2 + ARROW;
    double tip = arrow.isFlow() ? 2 * half : -2 * half;
    Path2D head = new Path2D.Double();
    head.moveTo(arrow.x() + tip / 2, arrow.y());
    head.lineTo(arrow.x() - tip / 2, arrow.y() - half);
    head.lineTo(arrow.x() - tip / 2, arrow.y() + half);
    head.closePath();
    g.setColor(arrow.isFlow() ? FLOW : RETURN);
    g.fill(head);
  }
}
