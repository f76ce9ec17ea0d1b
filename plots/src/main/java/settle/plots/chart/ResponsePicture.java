package settle.plots.chart;

import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.Optional;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.words.Quantities;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.StepResponse;

/** Flow after a jump of the temperature at the head, the time constant read off. */
record ResponsePicture(BenchFindings findings) {

  private static final Look ONWARD = HouseTheme.arrangement(0);
  private static final Look BACK = HouseTheme.arrangement(1);
  private static final int RIGHT = 30;

  Picture draw(String title) {
    StepResponse onward = findings.rig().onward().orElseThrow();
    Optional<StepResponse> back = findings.rig().turnedBack();
    Panel panel = panel();
    Sketch g = new Sketch();
    Legend legend = new Legend(g, Panel.LEFT);
    if (back.isPresent()) {
      legend
          .line("1 K cooler, cooling before", ONWARD)
          .line("1 K warmer, after having cooled", BACK);
    } else {
      legend.line("2 K cooler, from shut", ONWARD);
    }
    panel.line("onward", curve(onward), ONWARD);
    back.ifPresent(r -> panel.line("back", curve(r), BACK));
    panel.paint(g);
    Teaching chalk = new Teaching(g);
    read(panel, chalk, onward);
    back.filter(r -> r.standsStill() > 60).ifPresent(r -> still(panel, chalk, r));
    panel.caption(g);
    return g.picture(
        title, HouseTheme.WIDTH, (int) panel.area().getMaxY() + Panel.BELOW + Panel.CAPTION + 4);
  }

  Panel panel() {
    StepResponse onward = findings.rig().onward().orElseThrow();
    double most = Math.max(onward.settled(), onward.before());
    double slowest =
        findings
            .rig()
            .turnedBack()
            .map(r -> Math.max(onward.timeTo(0.97), r.timeTo(0.97)))
            .orElse(onward.timeTo(0.99));
    double end = onward.time()[onward.time().length - 1];
    return new Panel(
        Panel.LEFT,
        Legend.HEIGHT + Panel.ABOVE,
        HouseTheme.WIDTH - Panel.LEFT - RIGHT,
        340,
        Axis.exact(0, Math.min(slowest * 1.1, end) / 60, 8, "minutes after the jump"),
        Axis.round(0, litresPerHour(most) * 1.08, 6, "l/h"));
  }

  private double litresPerHour(double massFlow) {
    return findings.house().water().litresPerHour(massFlow);
  }

  private Curve curve(StepResponse response) {
    double end = panel().horizontal().max() * 60;
    int n = (int) Arrays.stream(response.time()).filter(t -> t <= end).count();
    return new Curve(
        Arrays.stream(response.time(), 0, n).map(t -> t / 60).toArray(),
        Arrays.stream(response.flow(), 0, n).map(this::litresPerHour).toArray());
  }

  private void read(Panel panel, Teaching chalk, StepResponse response) {
    double t = response.timeTo(StepResponse.READ_AT);
    double there =
        response.before() + StepResponse.READ_AT * (response.settled() - response.before());
    double x = panel.px(t / 60);
    double y = panel.py(litresPerHour(there));
    Rectangle2D area = panel.area();
    chalk.dashed(area.getX(), y, x, y);
    chalk.dashed(x, y, x, area.getMaxY());
    chalk.dashed(
        area.getX(),
        panel.py(litresPerHour(response.settled())),
        area.getMaxX(),
        panel.py(litresPerHour(response.settled())));
    chalk.remark("63 % of the change", area.getX() + 8, y - 8);
    chalk.remark(
        (findings.thermostatic() ? "time constant " : "") + Quantities.number(t / 60, 1) + " min",
        x + 9,
        area.getMaxY() - 10);
    chalk.remarkBefore(
        "where it ends up", area.getMaxX() - 6, panel.py(litresPerHour(response.settled())) - 8);
  }

  private void still(Panel panel, Teaching chalk, StepResponse response) {
    double y = panel.py(litresPerHour(response.before())) - 14;
    chalk.span(
        panel.px(0),
        panel.px(response.standsStill() / 60),
        y,
        "play taken up: nothing for " + Quantities.number(response.standsStill() / 60, 1) + " min");
  }
}
