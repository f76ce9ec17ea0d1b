package settle.plots.gallery;

import java.util.List;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Panel;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.Stroke.Dash;
import settle.plots.words.BenchWords;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.Course;
import settle.sim.units.Times;

/** The room after each change, all on the same scales, side by side. */
record RoomTestsPicture(BenchFindings findings) {

  /** Hours shown before and after the change. */
  private static final double FROM = -2;

  private static final double TO = 24;

  private static final Look ROOM = Look.arrangement(0);
  private static final Look REST = Look.arrangement(1).with(new Stroke(2, Dash.DOTTED));
  private static final Axis TIME = Axis.exact(FROM, TO, 6, "hours");

  Chart chart(String name, String title, String meaning) {
    List<Curve> curves = findings.courses().stream().map(RoomTestsPicture::curve).toList();
    double least = Overlaid.least(curves);
    double most = Overlaid.most(curves);
    for (Course course : findings.courses()) {
      least = Math.min(least, course.want());
      most = Math.max(most, course.want());
    }
    Axis temperature = Axis.exact(least - 0.2, most + 0.2, 4, "°C");
    return new Chart(
        name,
        title,
        meaning,
        List.of(
            Key.line("room", ROOM),
            Key.line("solved at rest, after the change", REST),
            Key.line("want", Stroke.FINE_DASH)),
        2,
        findings.courses().stream().map(c -> panel(c, temperature)).toList());
  }

  private static Panel panel(Course course, Axis temperature) {
    double rest = course.atRest();
    return Panel.of(BenchWords.change(course), 150, TIME, temperature)
        .noted(BenchWords.settled(course))
        .line("room", curve(course), ROOM)
        .level("want", course.want())
        .line("at rest", Curve.straight(0, rest, TO, rest), REST);
  }

  private static Curve curve(Course course) {
    int from = 0;
    while (course.time()[from] < FROM * Times.HOUR) {
      from++;
    }
    int to = course.time().length;
    while (course.time()[to - 1] > TO * Times.HOUR) {
      to--;
    }
    double[] x = new double[to - from];
    double[] y = new double[to - from];
    for (int i = from; i < to; i++) {
      x[i - from] = course.time()[i] / Times.HOUR;
      y[i - from] = course.operative()[i];
    }
    return new Curve(x, y);
  }
}
