package settle.plots.chart;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.words.BenchWords;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.Course;

/** The room after each change, all on the same scales, side by side. */
record RoomTestsPicture(BenchFindings findings) {

  private static final int COLUMNS = 2;
  private static final int GAP = 34;
  private static final int RIGHT = 24;
  private static final int WIDTH =
      (HouseTheme.WIDTH - Panel.LEFT - RIGHT - (COLUMNS - 1) * (Panel.LEFT + GAP)) / COLUMNS;
  private static final int HEIGHT = 150;
  private static final double HOUR = 3600;

  /** Hours shown before and after the change. */
  private static final double FROM = -2;

  private static final double TO = 24;

  private static final Look ROOM = HouseTheme.arrangement(0);
  private static final Look REST =
      Look.line(HouseTheme.arrangement(1).colour(), HouseTheme.stroke(2, 2.5f, 3));

  Picture draw(String title) {
    Sketch g = new Sketch();
    new Legend(g, Panel.LEFT)
        .line("room", ROOM)
        .line("solved at rest, after the change", REST)
        .line("want", Look.line(HouseTheme.INK, HouseTheme.FINE_DASH));
    List<Panel> panels = panels();
    for (int i = 0; i < panels.size(); i++) {
      Course course = findings.courses().get(i);
      Panel panel = panels.get(i);
      panel.paint(g);
      panel.name(g, BenchWords.change(course));
      panel.remark(g, BenchWords.settled(course));
      level(g, panel, course.want(), Look.line(HouseTheme.INK, HouseTheme.FINE_DASH), FROM);
      level(g, panel, course.atRest(), REST, 0);
      panel.caption(g);
    }
    Panel last = panels.get(panels.size() - 1);
    return g.picture(
        title, HouseTheme.WIDTH, (int) last.area().getMaxY() + Panel.BELOW + Panel.CAPTION + 4);
  }

  private static void level(Sketch g, Panel panel, double y, Look look, double from) {
    g.setColor(look.colour());
    g.setStroke(look.stroke());
    g.draw(new Line2D.Double(panel.px(from), panel.py(y), panel.area().getMaxX(), panel.py(y)));
  }

  List<Panel> panels() {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    List<Curve> curves = new ArrayList<>();
    for (Course course : findings.courses()) {
      Curve curve = curve(course);
      curves.add(curve);
      least = Math.min(least, Math.min(curve.least(), course.want()));
      most = Math.max(most, Math.max(curve.most(), course.want()));
    }
    Axis vertical = Axis.exact(least - 0.2, most + 0.2, 4, "°C");
    Axis horizontal = Axis.exact(FROM, TO, 6, "hours");
    List<Panel> panels = new ArrayList<>();
    for (int i = 0; i < curves.size(); i++) {
      int x = Panel.LEFT + i % COLUMNS * (WIDTH + Panel.LEFT + GAP);
      int y =
          Legend.HEIGHT
              + Panel.ABOVE
              + i / COLUMNS * (Panel.ABOVE + HEIGHT + Panel.BELOW + Panel.CAPTION + 8);
      Panel panel = new Panel(x, y, WIDTH, HEIGHT, horizontal, vertical);
      panel.line("room", curves.get(i), ROOM);
      panels.add(panel);
    }
    return panels;
  }

  private static Curve curve(Course course) {
    int n = course.time().length;
    int from = 0;
    while (course.time()[from] < FROM * HOUR) {
      from++;
    }
    int to = n;
    while (course.time()[to - 1] > TO * HOUR) {
      to--;
    }
    double[] x = new double[to - from];
    double[] y = new double[to - from];
    for (int i = from; i < to; i++) {
      x[i - from] = course.time()[i] / HOUR;
      y[i - from] = course.operative()[i];
    }
    return new Curve(x, y);
  }
}
