package settle.plots.chart;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.words.Comparison;
import settle.plots.words.Quantities;
import settle.plots.words.TuningWords;
import settle.sim.control.FlowCurve;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.result.RunResult;
import settle.sim.study.Holding;
import settle.sim.tuning.Flatness;
import settle.sim.tuning.OverSpreads;
import settle.sim.tuning.Plant;
import settle.sim.tuning.Reason;
import settle.sim.tuning.Spell;
import settle.sim.tuning.Tuning;
import settle.sim.tuning.Tuning.Change;

/** The charts of a tuning: found and tuned in one picture, how flat, how it fares. */
public final class TuningCharts {

  private static final int RIGHT = 30;
  private static final int PLOT_WIDTH = HouseTheme.WIDTH - Panel.LEFT - RIGHT;
  private static final int PLOT_HEIGHT = 320;
  private static final Look FOUND = HouseTheme.arrangement(0);
  private static final Look TUNED = HouseTheme.arrangement(1);
  private static final Look LEAST = Look.line(HouseTheme.INK, HouseTheme.FINE_DASH);
  private static final int CURVE_POINTS = 61;

  private final Tuning tuning;
  private final TuningWords words;

  private TuningCharts(Tuning tuning) {
    this.tuning = tuning;
    words = new TuningWords(tuning);
  }

  /**
   * All of them.
   *
   * @param tuning what was found
   */
  public static List<Chart> of(Tuning tuning) {
    TuningCharts charts = new TuningCharts(tuning);
    Tuning.Performance before = tuning.before();
    Tuning.Performance after = tuning.after();
    List<Chart> all = new ArrayList<>();
    all.add(
        charts.rooms(
            "usual-day",
            "Rooms on a usual day at "
                + Quantities.temperature(after.usual().outdoor())
                + ", found and tuned",
            before.usual(),
            after.usual()));
    all.add(
        charts.rooms(
            "mild-day",
            "Rooms on a mild day at "
                + Quantities.temperature(after.mild().outdoor())
                + ", found and tuned",
            before.mild(),
            after.mild()));
    all.add(
        charts.rooms(
            "coldest-day",
            "Rooms on the coldest day at "
                + Quantities.setting(after.coldest().outdoor())
                + ", found and tuned",
            before.coldest(),
            after.coldest()));
    all.add(charts.flow());
    all.addAll(charts.flatness());
    all.add(charts.spreads());
    return all;
  }

  /** One picture, or as many as pages are needed. */
  private List<Chart> flatness() {
    List<Chart> all = new ArrayList<>();
    List<Flatness> flat = tuning.flatness();
    for (int from = 0; from < flat.size(); from += FlatCurves.MOST_PANELS) {
      String title = "How much each setting matters" + (from == 0 ? "" : ", continued");
      String meaning =
          "Each setting by itself, the others as tuned. Where a curve is flat, the setting may be"
              + " off. "
              + words.prices();
      List<Flatness> drawn =
          flat.subList(from, Math.min(from + FlatCurves.MOST_PANELS, flat.size()));
      all.add(
          new Chart(
              "flatness" + (from == 0 ? "" : "-" + (1 + from / FlatCurves.MOST_PANELS)),
              title,
              meaning,
              new FlatCurves(tuning, drawn, tuning.after().worth().total()).draw(title)));
    }
    return all;
  }

  private Chart rooms(String name, String title, Spell before, Spell after) {
    House house = tuning.found().house();
    Comparison comparison =
        new Comparison(house, List.of(named("found", before.run()), named("tuned", after.run())));
    TimeWindow window = TimeWindow.whole(before.run());
    return new Chart(
        name, title, words.headline(), new RoomTemperatures(comparison, window, false).draw(title));
  }

  /** A run as if it were that of an arrangement of that name. */
  private static RunResult named(String name, RunResult run) {
    Arrangement as = run.arrangement();
    return new RunResult(
        new Arrangement(name, as.branches(), as.balanced()),
        run.trace(),
        run.rooms(),
        run.plant(),
        run.balance(),
        run.ledger(),
        run.profiles(),
        run.firstCall(),
        run.keepsUp(),
        run.steps(),
        run.stepsUnagreed(),
        run.notices());
  }

  private Chart flow() {
    String title = "Flow temperature asked for over outdoor temperature";
    String meaning =
        "What the controls ask for, as found and tuned, and the least that holds every room with"
            + " its head open.";
    Curve found = asked(tuning.found());
    Curve tuned = asked(tuning.tuned());
    Curve least = least();
    double low = Math.min(Math.min(found.least(), tuned.least()), least.least());
    double high = Math.max(Math.max(found.most(), tuned.most()), least.most());
    double cold = tuning.found().house().designOutdoor();
    Panel panel =
        new Panel(
            Panel.LEFT,
            Legend.HEIGHT + Panel.ABOVE,
            PLOT_WIDTH,
            PLOT_HEIGHT,
            Axis.exact(cold, Holding.MILDEST, 7, "outdoors, °C"),
            Axis.round(low - 2, high + 2, 6, "°C"));
    Sketch g = new Sketch();
    Legend legend = new Legend(g, Panel.LEFT).line("found", FOUND).line("tuned", TUNED);
    if (!least.isEmpty()) {
      legend.line("least that holds every room", LEAST);
    }
    panel.line("found", found, FOUND);
    panel.line("tuned", tuned, TUNED);
    panel.line("least", least, LEAST);
    panel.paint(g);
    panel.caption(g);
    return new Chart("flow-temperature", title, meaning, picture(g, title, panel));
  }

  private double[] outdoors() {
    double cold = tuning.found().house().designOutdoor();
    double[] x = new double[CURVE_POINTS];
    for (int i = 0; i < x.length; i++) {
      x[i] = cold + (Holding.MILDEST - cold) * i / (x.length - 1);
    }
    return x;
  }

  private Curve asked(Plant plant) {
    double[] x = outdoors();
    double own = plant.house().source().flowSetPoint();
    double[] y =
        Arrays.stream(x)
            .map(t -> plant.house().control().flowCurve().map(c -> c.setPoint(t, 0)).orElse(own))
            .toArray();
    return new Curve(x, y);
  }

  /** The line the search began with, where it began with one. */
  private Curve least() {
    for (Change change : tuning.changes()) {
      if (change.reason() instanceof Reason.LeastLine line) {
        FlowCurve curve = line.curve();
        double[] x = outdoors();
        return new Curve(x, Arrays.stream(x).map(t -> curve.setPoint(t, 0)).toArray());
      }
      if (change.reason() instanceof Reason.LeastFlow flow) {
        double cold = tuning.found().house().designOutdoor();
        return new Curve(
            new double[] {cold, Holding.MILDEST}, new double[] {flow.flow(), flow.flow()});
      }
    }
    return new Curve(new double[0], new double[0]);
  }

  private Chart spreads() {
    String title =
        "Share of houses whose coldest room settles at most so far below want, at rest, not run";
    String meaning = String.join(" ", words.spreads());
    Curve found = shares(tuning.before().spreads());
    Curve tuned = shares(tuning.after().spreads());
    double tolerance = tuning.found().house().wantTolerance();
    Panel panel =
        new Panel(
            Panel.LEFT,
            Legend.HEIGHT + Panel.ABOVE,
            PLOT_WIDTH,
            PLOT_HEIGHT,
            Axis.round(
                Math.min(found.x()[0], tuned.x()[0]),
                Math.max(last(found.x()), Math.max(last(tuned.x()), tolerance)),
                8,
                "coldest room below want, K"),
            Axis.exact(0, 100, 5, "%"));
    Sketch g = new Sketch();
    new Legend(g, Panel.LEFT).line("found", FOUND).line("tuned", TUNED);
    panel.line("found", found, FOUND);
    panel.line("tuned", tuned, TUNED);
    panel.paint(g);
    double x = panel.px(tolerance);
    g.setColor(HouseTheme.INK);
    g.setStroke(HouseTheme.FINE_DASH);
    g.draw(new Line2D.Double(x, panel.area().getY(), x, panel.area().getMaxY()));
    g.text(
        "held up to here",
        x + 8,
        panel.area().getMaxY() - 12,
        HouseTheme.LABEL.in(HouseTheme.INK).rimmed(HouseTheme.PAPER));
    panel.caption(g);
    return new Chart("over-spreads", title, meaning, picture(g, title, panel));
  }

  /** Share of houses in which the coldest room is at most so far below want, as steps [%]. */
  private static Curve shares(OverSpreads spreads) {
    double[] below =
        spreads.outcomes().stream().mapToDouble(o -> -o.coldestRoom()).sorted().toArray();
    double[] x = new double[2 * below.length];
    double[] y = new double[x.length];
    for (int i = 0; i < below.length; i++) {
      x[2 * i] = below[i];
      x[2 * i + 1] = below[i];
      y[2 * i] = 100.0 * i / below.length;
      y[2 * i + 1] = 100.0 * (i + 1) / below.length;
    }
    return new Curve(x, y);
  }

  private static double last(double[] x) {
    return x[x.length - 1];
  }

  private static Picture picture(Sketch g, String title, Panel panel) {
    return g.picture(
        title, HouseTheme.WIDTH, (int) panel.area().getMaxY() + Panel.BELOW + Panel.CAPTION + 4);
  }
}
