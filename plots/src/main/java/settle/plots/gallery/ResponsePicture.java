package settle.plots.gallery;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Mark;
import settle.plots.chart.Mark.Side;
import settle.plots.chart.Panel;
import settle.plots.words.Quantities;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.StepResponse;

/** Flow after a jump of the temperature at the head, the time constant read off. */
record ResponsePicture(BenchFindings findings) {

  private static final Look ONWARD = Look.arrangement(0);
  private static final Look BACK = Look.arrangement(1);

  Chart chart(String name, String title, String meaning) {
    StepResponse onward = findings.rig().onward().orElseThrow();
    Optional<StepResponse> back = findings.rig().turnedBack();
    double most = Math.max(onward.settled(), onward.before());
    Axis x = Axis.exact(0, shown(onward, back) / 60, 8, "minutes after the step");
    Axis y = Axis.round(0, litresPerHour(most) * 1.08, 6, "l/h");
    List<Key> keys = new ArrayList<>();
    keys.add(
        Key.line(back.isPresent() ? "1 K cooler, after cooling" : "2 K cooler, from shut", ONWARD));
    Panel panel = Panel.of("", 340, x, y).line("onward", curve(onward, x), ONWARD);
    if (back.isPresent()) {
      keys.add(Key.line("1 K warmer, after cooling", BACK));
      panel = panel.line("back", curve(back.get(), x), BACK);
    }
    panel = read(panel, onward);
    if (back.isPresent() && back.get().standsStill() > 60) {
      double still = back.get().standsStill() / 60;
      double above = litresPerHour(back.get().before()) + 0.04 * (y.max() - y.min());
      String words = "play taken up: nothing moves for " + Quantities.number(still, 1) + " min";
      panel = panel.with(new Mark.Span(0, still, above, words));
    }
    return new Chart(name, title, meaning, keys, panel);
  }

  /** How long there is something to see [s]. */
  private static double shown(StepResponse onward, Optional<StepResponse> back) {
    double slowest =
        back.map(r -> Math.max(onward.timeTo(0.97), r.timeTo(0.97))).orElse(onward.timeTo(0.99));
    return Math.min(slowest * 1.1, onward.time()[onward.time().length - 1]);
  }

  private double litresPerHour(double massFlow) {
    return findings.house().water().litresPerHour(massFlow);
  }

  private Curve curve(StepResponse response, Axis minutes) {
    int n = (int) Arrays.stream(response.time()).filter(t -> t <= minutes.max() * 60).count();
    return new Curve(
        Arrays.stream(response.time(), 0, n).map(t -> t / 60).toArray(),
        Arrays.stream(response.flow(), 0, n).map(this::litresPerHour).toArray());
  }

  private Panel read(Panel panel, StepResponse response) {
    double t = response.timeTo(StepResponse.READ_AT) / 60;
    double settled = litresPerHour(response.settled());
    double before = litresPerHour(response.before());
    double there = before + StepResponse.READ_AT * (settled - before);
    String constant =
        (findings.thermostatic() ? "time constant " : "") + Quantities.number(t, 1) + " min";
    return panel
        .fine("63 %", 0, there, t, there)
        .fine(constant, t, there, t, 0)
        .level("settled", settled)
        .remark("63 % of the change", 0, there, Side.ABOVE_RIGHT)
        .remark(constant, t, 0, Side.ABOVE_RIGHT)
        .remark("where it ends up", panel.x().max(), settled, Side.ABOVE_LEFT);
  }
}
