package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Mark;
import settle.plots.chart.Mark.Pattern;
import settle.plots.chart.Panel;
import settle.plots.chart.Tick;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Stroke;
import settle.plots.words.OddsWords;
import settle.plots.words.Quantities;
import settle.sim.house.Uncertainty;
import settle.sim.study.Odds;

/** The charts of odds: what matters most, and how the share comes to rest as houses are added. */
final class OddsCharts {

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
  static List<Picture> of(List<String> names, List<OddsWords> odds) {
    OddsCharts charts = new OddsCharts(names, odds);
    List<Picture> all = new ArrayList<>();
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
            + " Bars that end left of the dashed line may be chance.";
    List<Key> keys = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      keys.add(Key.bar(names.get(i), Look.arrangement(i).colour(), Pattern.arrangement(i)));
    }
    keys.add(Key.line("no more than chance", Stroke.FINE_DASH));
    return new Chart("odds-what-matters", title, meaning, keys, influencesPanel());
  }

  private Chart convergence() {
    String title = "Houses in a hundred that keep up, against the number tried";
    String meaning =
        "Each marker is the share after that many houses, its bar the standard error; enough were tried once the markers stay within it."
            + " Single markers at the end: once valve heads set too low are turned up.";
    return new Chart("odds-convergence", title, meaning, Overlaid.keys(names), convergencePanel());
  }

  private Panel influencesPanel() {
    List<Uncertainty> ranked = ranked();
    Rows rows = new Rows(ranked.size(), odds.size(), 15, 16);
    List<Mark> marks = new ArrayList<>();
    for (int k = 0; k < ranked.size(); k++) {
      for (int i = 0; i < odds.size(); i++) {
        double correlation = Math.abs(correlation(i, ranked.get(k)));
        marks.add(
            new Mark.Bar(
                0,
                correlation,
                rows.y(k, i),
                rows.width(),
                Look.arrangement(i).colour(),
                Pattern.arrangement(i),
                Quantities.number(correlation, 2)));
      }
    }
    double chance = odds.stream().mapToDouble(OddsWords::least).max().orElse(0);
    Axis x = Axis.exact(0, 1, 5, "rank correlation with the shortfall of the coldest room");
    Axis y = Axis.names(ranked.stream().map(this::label).toList());
    return Panel.of("", rows.height(), x, y).upright("no more than chance", chance).with(marks);
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

  private Panel convergencePanel() {
    List<Tick> ticks = new ArrayList<>();
    for (Odds.Estimate estimate : odds.get(0).odds().convergence()) {
      ticks.add(new Tick(log(estimate.samples()), Integer.toString(estimate.samples())));
    }
    double first = ticks.get(0).value() - 0.5;
    double end = ticks.get(ticks.size() - 1).value() + 0.5;
    Axis houses = new Axis(first, end, ticks, "houses tried");
    Panel panel = Panel.of("", 280, houses, Axis.exact(0, 100, 5, "of 100"));
    for (int i = 0; i < odds.size(); i++) {
      Look look = Look.arrangement(i);
      double aside = 0.12 * (i - (odds.size() - 1) / 2.0);
      List<Odds.Estimate> seen = odds.get(i).odds().convergence();
      double[] x = new double[seen.size()];
      double[] y = new double[seen.size()];
      for (int k = 0; k < x.length; k++) {
        x[k] = log(seen.get(k).samples()) + aside;
        y[k] = 100 * seen.get(k).keepUp();
        double error = 100 * seen.get(k).error();
        Curve bounds =
            Curve.straight(x[k], Math.max(0, y[k] - error), x[k], Math.min(100, y[k] + error));
        panel =
            panel
                .line(names.get(i) + " error " + k, bounds, look.with(Stroke.THIN))
                .with(new Mark.Point(x[k], y[k], look));
      }
      double last = y[y.length - 1];
      panel = panel.line(names.get(i), new Curve(x, y), look);
      panel = panel.ended(last, Quantities.number(last, 0));
      double turned = 100 * odds.get(i).odds().headsTurnedUp().keepUp();
      if (turned > last) {
        panel =
            panel
                .with(new Mark.Point(x[x.length - 1], turned, look))
                .ended(turned, Quantities.number(turned, 0) + ", low heads turned up");
      }
    }
    return panel;
  }

  private static double log(int samples) {
    return Math.log(samples) / Math.log(2);
  }
}
