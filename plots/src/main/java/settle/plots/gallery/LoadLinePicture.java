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
import settle.plots.drawing.Stroke;
import settle.plots.words.Quantities;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.HysteresisLoop;
import settle.sim.bench.LoadLine;

/** The room's load line across the valve's band, weather by weather; the crossings marked. */
record LoadLinePicture(BenchFindings findings) {

  /** Water temperatures closer than this make one valve line for all weathers [K]. */
  private static final double SAME_WATER = 0.5;

  private static final Stroke VALVE = new Stroke(4);

  Chart chart(String name, String title, String meaning) {
    List<LoadLine> lines = findings.lines();
    LoadLine first = lines.get(0);
    List<Key> keys = new ArrayList<>();
    double warm = lines.stream().mapToDouble(l -> last(l.room())).max().orElseThrow();
    double cold = lines.stream().mapToDouble(l -> l.room()[0]).min().orElseThrow();
    Axis x = Axis.exact(cold, warm, 8, "room temperature, °C");
    Axis y = Axis.round(0, most() / unit(), 6, unit() > 1 ? "kW" : "W");
    Panel panel = Panel.of("", 420, x, y);
    boolean one = oneValveLine();
    double half = findings.rig().loop().map(HysteresisLoop::hysteresis).orElse(0.0) / 2;
    Curve offered = curve(first.room(), first.offered());
    if (half > 0 && findings.thermostatic()) {
      panel = panel.with(new Mark.Band(shifted(offered, -half), shifted(offered, half)));
      keys.add(
          Key.band(
              "within its play"
                  + (one ? "" : ", " + Quantities.setting(first.outdoor()) + " outdoors")));
    }
    if (one) {
      panel = panel.line("valve", offered, Look.ink(VALVE));
      keys.add(Key.line("valve and emitter", VALVE));
    }
    String want = "want " + Quantities.setting(findings.want());
    for (int i = 0; i < lines.size(); i++) {
      LoadLine line = lines.get(i);
      Look look = Look.arrangement(i);
      panel = panel.line("load " + i, curve(line.room(), line.load()), look);
      if (!one) {
        panel = panel.line("valve " + i, curve(line.room(), line.offered()), look);
      }
      String weather = Quantities.setting(line.outdoor());
      keys.add(Key.line(weather + " outdoors", look));
      panel = panel.ended(last(line.load()) / unit(), "room at " + weather);
    }
    panel = panel.upright(want, findings.want());
    panel = panel.remark(want, findings.want(), y.max(), Side.BELOW_RIGHT);
    for (int i = 0; i < lines.size(); i++) {
      LoadLine line = lines.get(i);
      double heat = line.heat() / unit();
      String words =
          Quantities.number(line.crossing(), 2) + " °C, " + Quantities.power(line.heat());
      panel = panel.with(new Mark.Point(line.crossing(), heat, Look.arrangement(i)));
      panel = panel.remark(words, line.crossing(), heat, Side.BELOW_RIGHT);
    }
    return new Chart(name, title, meaning, keys, panel);
  }

  private static double last(double[] values) {
    return values[values.length - 1];
  }

  /** Largest heat on either line [W]. */
  private double most() {
    double most = 0;
    for (LoadLine line : findings.lines()) {
      most = Math.max(most, last(line.load()));
      most = Math.max(most, Arrays.stream(line.offered()).max().orElse(0));
    }
    return most;
  }

  /** Unit of heat on the axes [W]: kilowatts unless all values are small. */
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

  /** This line to the left or right by so much [K], at its own places. */
  private static Curve shifted(Curve line, double by) {
    double first = line.x()[0];
    double last = last(line.x());
    return new Curve(
        line.x(),
        Arrays.stream(line.x())
            .map(x -> line.at(Math.min(Math.max(x - by, first), last)))
            .toArray());
  }
}
