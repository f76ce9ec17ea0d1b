package settle.plots.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.TextStyle.Anchor;
import settle.plots.words.OddsWords;
import settle.plots.words.Quantities;
import settle.sim.house.Uncertainty;
import settle.sim.study.Odds;

/** The charts of odds: what matters most, and how the share comes to rest as houses are added. */
public final class OddsCharts {

  /** Room right of the plot for what its lines end at [px]. */
  private static final int LABELS = 210;

  private static final int BAR = 15;
  private static final int GAP = 16;
  private static final Look CHANCE = Look.line(HouseTheme.INK, HouseTheme.FINE_DASH);

  private final List<String> names;
  private final List<OddsWords> odds;

  private OddsCharts(List<String> names, List<OddsWords> odds) {
    this.names = names;
    this.odds = odds;
  }

  /**
   * Both of them.
   *
   * @param names of the arrangements
   * @param odds one per arrangement, at least one
   */
  public static List<Chart> of(List<String> names, List<OddsWords> odds) {
    OddsCharts charts = new OddsCharts(names, odds);
    List<Chart> all = new ArrayList<>();
    if (odds.stream().anyMatch(o -> !o.odds().influences().isEmpty())) {
      all.add(charts.influences());
    }
    all.add(charts.convergence());
    return all;
  }

  private Chart influences() {
    String title = "What decides whether the house keeps up";
    String meaning =
        "Rank correlation of what is uncertain with how cold the coldest room gets: 1 where nothing else matters."
            + " What ends left of the dashed line may be chance.";
    return new Chart("odds-what-matters", title, meaning, drawInfluences(title));
  }

  private Chart convergence() {
    String title = "Houses of a hundred that keep up, over the number tried";
    String meaning =
        "Each marker is the answer from so many houses, its stroke the standard error; houses enough were tried when the markers stay within it."
            + " Single markers at the end: the same once valve heads that are set too low are turned up.";
    return new Chart("odds-convergence", title, meaning, drawConvergence(title));
  }

  private Picture drawInfluences(String title) {
    List<Uncertainty> ranked = ranked();
    int group = odds.size() * BAR + GAP;
    double widest =
        ranked.stream()
            .mapToDouble(w -> Lettering.width(label(w), HouseTheme.LABEL))
            .max()
            .orElse(0);
    int left = (int) Math.ceil(widest + 16);
    Panel panel =
        new Panel(
            left,
            Legend.HEIGHT + 8,
            HouseTheme.WIDTH - left - 70,
            ranked.size() * group,
            Axis.exact(0, 1, 5, "rank correlation with the shortfall of the coldest room"),
            new Axis(0, ranked.size(), List.of(), ""));
    Sketch g = new Sketch();
    Legend legend = new Legend(g, left);
    for (int i = 0; i < names.size(); i++) {
      legend.line(names.get(i), HouseTheme.arrangement(i));
    }
    legend.line("no more than chance", CHANCE);
    panel.paint(g);
    double x = panel.px(odds.stream().mapToDouble(OddsWords::least).max().orElse(0));
    g.setColor(HouseTheme.INK);
    g.setStroke(HouseTheme.FINE_DASH);
    g.draw(new Line2D.Double(x, panel.area().getY(), x, panel.area().getMaxY()));
    for (int k = 0; k < ranked.size(); k++) {
      double top = panel.area().getY() + k * group + GAP / 2.0;
      g.text(
          label(ranked.get(k)),
          left - 10,
          top + odds.size() * BAR / 2.0 + 5,
          HouseTheme.LABEL.in(HouseTheme.INK).at(Anchor.END));
      for (int i = 0; i < odds.size(); i++) {
        bar(g, panel, i, correlation(i, ranked.get(k)), top + i * BAR);
      }
    }
    panel.caption(g);
    return picture(g, title, panel);
  }

  private static void bar(Sketch g, Panel panel, int arrangement, double correlation, double y) {
    Look look = HouseTheme.arrangement(arrangement);
    double left = panel.area().getX();
    double end = panel.px(Math.abs(correlation));
    g.setColor(look.colour());
    g.fill(new Rectangle2D.Double(left, y + 1.5, end - left, BAR - 3));
    g.text(
        Quantities.number(Math.abs(correlation), 2),
        end + 8,
        y + BAR - 2.5,
        HouseTheme.LABEL.in(HouseTheme.INK).rimmed(HouseTheme.PAPER));
  }

  /** What the first arrangement ranks, then what only others do. */
  private List<Uncertainty> ranked() {
    return odds.stream()
        .flatMap(o -> o.odds().influences().stream().map(Odds.Influence::what))
        .distinct()
        .toList();
  }

  private String label(Uncertainty what) {
    return OddsWords.name(what) + ", " + odds.get(0).spread(what);
  }

  private double correlation(int arrangement, Uncertainty what) {
    return odds.get(arrangement).odds().influences().stream()
        .filter(i -> i.what() == what)
        .mapToDouble(Odds.Influence::correlation)
        .findFirst()
        .orElse(0);
  }

  private Picture drawConvergence(String title) {
    List<Tick> ticks = new ArrayList<>();
    for (Odds.Estimate estimate : odds.get(0).odds().convergence()) {
      ticks.add(new Tick(log(estimate.samples()), Integer.toString(estimate.samples())));
    }
    Panel panel =
        new Panel(
            Panel.LEFT,
            Legend.HEIGHT + Panel.ABOVE,
            HouseTheme.WIDTH - Panel.LEFT - LABELS,
            280,
            new Axis(
                ticks.get(0).value() - 0.5,
                ticks.get(ticks.size() - 1).value() + 0.5,
                ticks,
                "houses tried"),
            Axis.exact(0, 100, 5, "of 100"));
    Sketch g = new Sketch();
    Legend legend = new Legend(g, Panel.LEFT);
    EndLabels ends = new EndLabels();
    for (int i = 0; i < odds.size(); i++) {
      Look look = HouseTheme.arrangement(i);
      String name = names.get(i);
      Odds.Estimate turned = odds.get(i).odds().headsTurnedUp();
      legend.line(name, look);
      double aside = 0.12 * (i - (odds.size() - 1) / 2.0);
      List<Odds.Estimate> seen = odds.get(i).odds().convergence();
      double[] x = new double[seen.size()];
      double[] y = new double[seen.size()];
      for (int k = 0; k < x.length; k++) {
        x[k] = log(seen.get(k).samples()) + aside;
        y[k] = 100 * seen.get(k).keepUp();
        double error = 100 * seen.get(k).error();
        double[] bounds = {Math.max(0, y[k] - error), Math.min(100, y[k] + error)};
        panel.line(
            name + " error " + k,
            new Curve(new double[] {x[k], x[k]}, bounds),
            Look.line(look.colour(), HouseTheme.THIN));
        panel.point(name + " " + k, x[k], y[k], look);
      }
      panel.line(name, new Curve(x, y), look);
      ends.add(panel.py(y[y.length - 1]), Quantities.number(y[y.length - 1], 0));
      if (turned.keepUp() > seen.get(seen.size() - 1).keepUp()) {
        double share = 100 * turned.keepUp();
        panel.point(name + " turned up", x[x.length - 1], share, look);
        ends.add(panel.py(share), Quantities.number(share, 0) + ", low heads turned up");
      }
    }
    panel.paint(g);
    ends.paint(g, panel.area());
    panel.caption(g);
    return picture(g, title, panel);
  }

  private static double log(int samples) {
    return Math.log(samples) / Math.log(2);
  }

  private static Picture picture(Sketch g, String title, Panel panel) {
    return g.picture(
        title, HouseTheme.WIDTH, (int) panel.area().getMaxY() + Panel.BELOW + Panel.CAPTION + 4);
  }
}
