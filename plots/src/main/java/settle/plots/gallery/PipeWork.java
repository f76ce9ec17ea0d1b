package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import settle.plots.drawing.Path;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.Stroke.Dash;
import settle.plots.drawing.Theme;

/**
 * Flow and return pipes of a drawing, gathered first and drawn together, so that every flow pipe
 * bridges the return pipes it crosses. The more water, the wider the line: as its square root, as
 * pipes are.
 */
final class PipeWork {

  /** Flow, dark enough to be told from the return on a photocopy. */
  static final int FLOW = 0x8f2f1e;

  static final int RETURN = 0x6d9dbb;

  /** A pipe in which nothing flows. */
  static final Stroke STILL = new Stroke(1.2, Dash.FINE);

  private static final double WIDEST = 8;
  private static final double NARROWEST = 1.8;
  private static final double BRIDGE = 2.5;

  /** How far an arrow head stands out beside its line [px]. */
  private static final double ARROW = 3.5;

  private record Run(Path path, double flow, boolean isFlow) {}

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
    runs.add(new Run(Path.line(x1, y1, x2, y2), massFlow, true));
  }

  /** Adds a straight run of return pipe. */
  void back(double x1, double y1, double x2, double y2, double massFlow) {
    runs.add(new Run(Path.line(x1, y1, x2, y2), massFlow, false));
  }

  /** Adds arrow heads: away from the source on the flow, back on the return. */
  void arrows(double x, double flowY, double returnY, double massFlow) {
    arrowOut(x, flowY, massFlow);
    arrowBack(x, returnY, massFlow);
  }

  /** Adds an arrow head on the flow alone, away from the source. */
  void arrowOut(double x, double y, double massFlow) {
    arrows.add(new Arrow(x, y, massFlow, true));
  }

  /** Adds one on the return alone. */
  void arrowBack(double x, double y, double massFlow) {
    arrows.add(new Arrow(x, y, massFlow, false));
  }

  void paint(Sketch g) {
    runs.stream().filter(r -> !r.isFlow()).forEach(r -> line(g, r));
    for (Run run : runs) {
      if (run.isFlow()) {
        g.line(run.path(), Theme.PAPER, new Stroke(width(run.flow()) + 2 * BRIDGE));
      }
    }
    runs.stream().filter(Run::isFlow).forEach(r -> line(g, r));
    arrows.forEach(a -> arrow(g, a));
  }

  private void line(Sketch g, Run run) {
    if (run.flow() > 0) {
      Stroke stroke = new Stroke(width(run.flow())).rounded();
      g.line(run.path(), run.isFlow() ? FLOW : RETURN, stroke);
    } else {
      g.line(run.path(), Theme.PALE_INK, STILL);
    }
  }

  private double width(double flow) {
    return flow <= 0 ? STILL.width() : Math.max(NARROWEST, WIDEST * Math.sqrt(flow / most));
  }

  private void arrow(Sketch g, Arrow arrow) {
    double half = width(arrow.flow()) / 2 + ARROW;
    double tip = arrow.isFlow() ? half : -half;
    g.fill(
        Path.from(arrow.x() + tip, arrow.y())
            .to(arrow.x() - tip, arrow.y() - half)
            .to(arrow.x() - tip, arrow.y() + half)
            .close(),
        arrow.isFlow() ? FLOW : RETURN);
  }
}
