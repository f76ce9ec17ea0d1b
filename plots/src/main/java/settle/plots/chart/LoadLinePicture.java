package settle.plots.chart;

import java.awt.geom.Line2D;
import java.util.Arrays;
import java.util.List;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.words.Quantities;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.HysteresisLoop;
import settle.sim.bench.LoadLine;

/** The room's load line across the valve's band, weather by weather; the crossings marked. */
record LoadLinePicture(BenchFindings findings) {

  private static final int RIGHT = 150;

  /** Water temperatures closer than this make one valve line for all weathers [K]. */
  private static final double SAME_WATER = 0.5;

  private static final Look VALVE = Look.line(HouseTheme.INK, HouseTheme.SOLID);

  Picture draw(String title) {
    List<LoadLine> lines = findings.lines();
    Panel panel = panel();
    Sketch g = new Sketch();
    Legend legend = new Legend(g, Panel.LEFT);
    boolean one = oneValveLine();
    double half = findings.rig().loop().map(HysteresisLoop::hysteresis).orElse(0.0) / 2;
    if (half > 0 && findings.thermostatic()) {
      Curve offered = curve(lines.get(0).room(), lines.get(0).offered());
      panel.band(shifted(offered, -half), shifted(offered, half));
      legend.band(
          "within its play"
              + (one ? "" : ", " + Quantities.setting(lines.get(0).outdoor()) + " outdoors"));
    }
    if (one) {
      panel.line("valve", curve(lines.get(0).room(), lines.get(0).offered()), VALVE);
      legend.line("valve and emitter", VALVE);
    }
    for (int i = 0; i < lines.size(); i++) {
      LoadLine line = lines.get(i);
      Look look = HouseTheme.arrangement(i);
      panel.line("load " + i, curve(line.room(), line.load()), look);
      if (!one) {
        panel.line("valve " + i, curve(line.room(), line.offered()), look);
      }
      legend.line(Quantities.setting(line.outdoor()) + " outdoors", look);
    }
    panel.paint(g);
    Teaching chalk = new Teaching(g);
    want(panel, g, chalk);
    EndLabels labels = new EndLabels();
    for (int i = 0; i < lines.size(); i++) {
      LoadLine line = lines.get(i);
      double x = panel.px(line.crossing());
      double y = panel.py(line.heat() / unit());
      g.setColor(HouseTheme.arrangement(i).colour());
      HouseTheme.arrangement(i).marker().paint(g, x, y, 13);
      double end = line.load()[line.load().length - 1] / unit();
      labels.add(panel.py(end), "room at " + Quantities.setting(line.outdoor()));
      chalk.remark(
          Quantities.number(line.crossing(), 2) + " °C, " + Quantities.power(line.heat()),
          x + 14,
          y + 23);
    }
    labels.paint(g, panel.area());
    panel.caption(g);
    return g.picture(
        title, HouseTheme.WIDTH, (int) panel.area().getMaxY() + Panel.BELOW + Panel.CAPTION + 4);
  }

  Panel panel() {
    double cold = Double.POSITIVE_INFINITY;
    double warm = Double.NEGATIVE_INFINITY;
    for (LoadLine line : findings.lines()) {
      cold = Math.min(cold, line.room()[0]);
      warm = Math.max(warm, line.room()[line.room().length - 1]);
    }
    return new Panel(
        Panel.LEFT,
        Legend.HEIGHT + Panel.ABOVE,
        HouseTheme.WIDTH - Panel.LEFT - RIGHT,
        420,
        Axis.exact(cold, warm, 8, "room temperature, °C"),
        Axis.round(0, most() / unit(), 6, unit() > 1 ? "kW" : "W"));
  }

  /** Largest heat on either line [W]. */
  private double most() {
    double most = 0;
    for (LoadLine line : findings.lines()) {
      most = Math.max(most, line.load()[line.load().length - 1]);
      most = Math.max(most, Arrays.stream(line.offered()).max().orElse(0));
    }
    return most;
  }

  /** What heats are told in [W]: kilowatts unless all are small. */
  private double unit() {
    return most() < 1000 ? 1 : 1000;
  }

  private boolean oneValveLine() {
    double first = findings.lines().get(0).flowTemperature();
    return findings.lines().stream()
        .allMatch(line -> Math.abs(line.flowTemperature() - first) < SAME_WATER);
  }

  private Curve curve(double[] room, double[] watts) {
    double unit = unit();
    return new Curve(room, Arrays.stream(watts).map(w -> w / unit).toArray());
  }

  /** The same line to the left or right by so much [K], at the same places. */
  private static Curve shifted(Curve line, double by) {
    double[] y = new double[line.x().length];
    for (int i = 0; i < y.length; i++) {
      double from =
          Math.min(Math.max(line.x()[i] - by, line.x()[0]), line.x()[line.x().length - 1]);
      y[i] = line.at(from);
    }
    return new Curve(line.x(), y);
  }

  private void want(Panel panel, Sketch g, Teaching chalk) {
    double x = panel.px(findings.want());
    g.setColor(HouseTheme.INK);
    g.setStroke(HouseTheme.FINE_DASH);
    g.draw(new Line2D.Double(x, panel.area().getY(), x, panel.area().getMaxY()));
    chalk.remark("want " + Quantities.setting(findings.want()), x + 7, panel.area().getY() + 18);
  }
}
