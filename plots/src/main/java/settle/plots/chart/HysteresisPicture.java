package settle.plots.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.words.Quantities;
import settle.sim.bench.HysteresisLoop;
import settle.sim.bench.Sweep;
import settle.sim.house.WaterProperties;

/** Flow against the temperature at the head, once shut and open again, the path numbered. */
record HysteresisPicture(HysteresisLoop loop, WaterProperties water) {

  private static final Look WARMING = HouseTheme.arrangement(0);
  private static final Look COOLING = HouseTheme.arrangement(1);

  private static final int RIGHT = 30;
  private static final int LINE = 22;

  /** Room to either side of where anything happens [K]. */
  private static final double MARGIN = 0.5;

  Picture draw(String title) {
    Panel panel = panel();
    Sketch g = new Sketch();
    new Legend(g, Panel.LEFT).line("warming: it shuts", WARMING).line("cooling: it opens", COOLING);
    panel.line("warming", curve(loop.closing()), WARMING);
    panel.line("cooling", curve(loop.opening()), COOLING);
    panel.paint(g);
    Teaching chalk = new Teaching(g);
    if (loop.throttles()) {
      temperaturePoint(panel, chalk);
    }
    path(panel, chalk);
    panel.caption(g);
    double y = panel.area().getMaxY() + Panel.BELOW + Panel.CAPTION + 14;
    for (String step : steps()) {
      g.text(step, Panel.LEFT, y, HouseTheme.LABEL.in(HouseTheme.INK));
      y += LINE;
    }
    return g.picture(title, HouseTheme.WIDTH, (int) y);
  }

  Panel panel() {
    double cold = Math.min(loop.opening().openUpTo(), loop.closing().openUpTo()) - MARGIN;
    double warm = loop.closingTemperature() + MARGIN;
    return new Panel(
        Panel.LEFT,
        Legend.HEIGHT + Panel.ABOVE,
        HouseTheme.WIDTH - Panel.LEFT - RIGHT,
        380,
        Axis.exact(cold, warm, 10, "temperature at the head, °C"),
        Axis.exact(0, litresPerHour(loop.opening().most()) * 1.12, 6, "l/h"));
  }

  private double litresPerHour(double massFlow) {
    return water.litresPerHour(massFlow);
  }

  private Curve curve(Sweep sweep) {
    double cold = Math.min(loop.opening().openUpTo(), loop.closing().openUpTo()) - MARGIN;
    double warm = loop.closingTemperature() + MARGIN;
    int from = 0;
    while (sweep.sensed()[from] < cold) {
      from++;
    }
    int to = sweep.sensed().length;
    while (sweep.sensed()[to - 1] > warm) {
      to--;
    }
    return new Curve(
        Arrays.copyOfRange(sweep.sensed(), from, to),
        Arrays.stream(sweep.flow(), from, to).map(this::litresPerHour).toArray());
  }

  /** The corners 1 to 4 and arrows on the ways between them. */
  private void path(Panel panel, Teaching chalk) {
    double top = panel.py(litresPerHour(loop.opening().most()));
    double bottom = panel.py(0);
    double[] x = {
      panel.px(loop.opening().openUpTo()),
      panel.px(loop.closing().openUpTo()),
      panel.px(loop.closingTemperature()),
      panel.px(loop.openingTemperature())
    };
    double[] y = {top, top, bottom, bottom};
    chalk.arrow(x[1], y[1], x[2], y[2], WARMING);
    chalk.arrow(x[3], y[3], x[0], y[0], COOLING);
    boolean play = loop.hysteresis() > 0.02;
    for (int i = 0; i < x.length; i++) {
      if (play || i % 2 == 0) {
        chalk.number(i + 1, x[i], y[i]);
      }
    }
  }

  /** S, the flows read below it, and the hysteresis where EN 215 reads it. */
  private void temperaturePoint(Panel panel, Teaching chalk) {
    double s = loop.temperaturePoint();
    double nominal = panel.py(litresPerHour(loop.nominalFlow()));
    double one = panel.py(litresPerHour(loop.flowOneKelvinBelow()));
    double bottom = panel.area().getMaxY();
    chalk.dashed(panel.px(s - 2), nominal, panel.px(s - 2), bottom);
    chalk.dashed(panel.px(s - 1), one, panel.px(s - 1), bottom);
    chalk.dashed(panel.area().getX(), nominal, panel.px(s - 2), nominal);
    chalk.remark("S − 2 K", panel.px(s - 2) + 7, bottom - 9);
    chalk.remark("S − 1 K", panel.px(s - 1) + 7, bottom - 9);
    chalk.remark(
        "nominal flow " + Quantities.number(litresPerHour(loop.nominalFlow()), 0) + " l/h",
        panel.area().getX() + 8,
        nominal - 8);
    chalk.span(
        panel.px(s - 2),
        panel.px(s - 2 + loop.hysteresis()),
        nominal,
        "hysteresis C = " + Quantities.number(loop.hysteresis(), 2) + " K");
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
