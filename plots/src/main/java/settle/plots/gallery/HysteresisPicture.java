package settle.plots.gallery;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Mark;
import settle.plots.chart.Mark.Side;
import settle.plots.chart.Panel;
import settle.plots.words.Quantities;
import settle.sim.bench.HysteresisLoop;
import settle.sim.bench.Sweep;
import settle.sim.house.WaterProperties;

/** Flow against the temperature at the head, once shut and open again, the path numbered. */
record HysteresisPicture(HysteresisLoop loop, WaterProperties water) {

  private static final Look WARMING = Look.arrangement(0);
  private static final Look COOLING = Look.arrangement(1);

  /** Room to either side of where anything happens [K]. */
  private static final double MARGIN = 0.5;

  Chart chart(String name, String title, String meaning) {
    double cold = Math.min(loop.opening().openUpTo(), loop.closing().openUpTo()) - MARGIN;
    double warm = loop.closingTemperature() + MARGIN;
    Axis x = Axis.exact(cold, warm, 10, "temperature at the head, °C");
    Axis y = Axis.exact(0, water.litresPerHour(loop.opening().most()) * 1.12, 6, "l/h");
    Panel panel =
        Panel.of("", 380, x, y)
            .line("warming", curve(loop.closing(), x), WARMING)
            .line("cooling", curve(loop.opening(), x), COOLING);
    Panel read = loop.throttles() ? temperaturePoint(panel) : panel;
    return new Chart(
        name,
        title,
        meaning,
        List.of(Key.line("warming: it shuts", WARMING), Key.line("cooling: it opens", COOLING)),
        1,
        List.of(read.with(path())),
        steps());
  }

  private Curve curve(Sweep sweep, Axis x) {
    int from = 0;
    while (sweep.sensed()[from] < x.min()) {
      from++;
    }
    int to = sweep.sensed().length;
    while (sweep.sensed()[to - 1] > x.max()) {
      to--;
    }
    return new Curve(
        Arrays.copyOfRange(sweep.sensed(), from, to),
        Arrays.stream(sweep.flow(), from, to).map(water::litresPerHour).toArray());
  }

  /** The corners 1 to 4 and arrows on the ways between them. */
  private List<Mark> path() {
    List<Mark> marks = new ArrayList<>();
    double top = water.litresPerHour(loop.opening().most());
    double[] x = {
      loop.opening().openUpTo(),
      loop.closing().openUpTo(),
      loop.closingTemperature(),
      loop.openingTemperature()
    };
    double[] y = {top, top, 0, 0};
    marks.add(new Mark.Arrow(x[1], y[1], x[2], y[2], WARMING.colour()));
    marks.add(new Mark.Arrow(x[3], y[3], x[0], y[0], COOLING.colour()));
    boolean play = loop.hysteresis() > 0.02;
    for (int i = 0; i < x.length; i++) {
      if (play || i % 2 == 0) {
        marks.add(new Mark.Numbered(i + 1, x[i], y[i]));
      }
    }
    return marks;
  }

  /** S, the flows read below it, and the hysteresis where EN 215 reads it. */
  private Panel temperaturePoint(Panel panel) {
    double s = loop.temperaturePoint();
    double cold = panel.x().min();
    double nominal = water.litresPerHour(loop.nominalFlow());
    double one = water.litresPerHour(loop.flowOneKelvinBelow());
    String flow = "nominal flow " + Quantities.number(nominal, 0) + " l/h";
    String hysteresis = "hysteresis C = " + Quantities.number(loop.hysteresis(), 2) + " K";
    return panel
        .fine("S − 2 K", s - 2, nominal, s - 2, 0)
        .fine("S − 1 K", s - 1, one, s - 1, 0)
        .fine(flow, cold, nominal, s - 2, nominal)
        .remark("S − 2 K", s - 2, 0, Side.ABOVE_RIGHT)
        .remark("S − 1 K", s - 1, 0, Side.ABOVE_RIGHT)
        .remark(flow, cold, nominal, Side.ABOVE_RIGHT)
        .with(new Mark.Span(s - 2, s - 2 + loop.hysteresis(), nominal, hysteresis));
  }

  private List<String> steps() {
    boolean play = loop.hysteresis() > 0.02;
    List<String> steps = new ArrayList<>();
    steps.add(
        "1  cold: fully open"
            + (play && loop.throttles() ? "; warming begins, the play is taken up" : ""));
    if (play) {
      steps.add(
          loop.throttles()
              ? "2  the stem follows: it begins to close"
              : "2  warm enough: it shuts");
    }
    steps.add(
        "3  shut, at "
            + Quantities.number(loop.closingTemperature(), 2)
            + " °C"
            + (play && loop.throttles() ? "; cooling begins, the play is taken up" : ""));
    if (play) {
      steps.add(
          "4  off its seat again only at "
              + Quantities.number(loop.openingTemperature(), 2)
              + " °C"
              + (loop.throttles() ? ", the temperature point S" : "")
              + "; from there back to 1");
    }
    return steps;
  }
}
