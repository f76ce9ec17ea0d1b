package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Mark.Side;
import settle.plots.chart.Panel;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Stroke;
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
import settle.sim.tuning.Spell;
import settle.sim.tuning.Tuning;
import settle.sim.tuning.Tuning.Change;

/** The charts of a tuning: found and tuned in one picture, how flat, how it fares. */
public final class TuningCharts {

  private static final int HEIGHT = 320;
  private static final Look FOUND = Look.arrangement(0);
  private static final Look TUNED = Look.arrangement(1);

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
  public static List<Picture> of(Tuning tuning) {
    TuningCharts charts = new TuningCharts(tuning);
    Tuning.Performance before = tuning.before();
    Tuning.Performance after = tuning.after();
    List<Picture> all = new ArrayList<>();
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
  private List<Picture> flatness() {
    List<Picture> all = new ArrayList<>();
    List<Flatness> flat = tuning.flatness();
    for (int from = 0; from < flat.size(); from += FlatCurves.MOST_PANELS) {
      String title = "How much each setting matters" + (from == 0 ? "" : ", continued");
      String meaning =
          "Each setting on its own, the others as tuned. Where a curve is flat, the setting need not"
              + " be exact. "
              + words.prices();
      List<Flatness> drawn =
          flat.subList(from, Math.min(from + FlatCurves.MOST_PANELS, flat.size()));
      all.add(
          new FlatCurves(tuning, drawn, tuning.after().worth().total())
              .chart(
                  "flatness" + (from == 0 ? "" : "-" + (1 + from / FlatCurves.MOST_PANELS)),
                  title,
                  meaning));
    }
    return all;
  }

  private Chart rooms(String name, String title, Spell before, Spell after) {
    House house = tuning.found().house();
    Comparison comparison =
        new Comparison(house, List.of(named("found", before.run()), named("tuned", after.run())));
    TimeWindow window = TimeWindow.whole(before.run());
    return new RoomTemperatures(comparison, window, false).chart(name, title, words.headline());
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
    String title = "Flow temperature asked for against outdoor temperature";
    String meaning =
        "What the controls ask for, as found and as tuned, and the lowest that holds every room with"
            + " its head open.";
    double cold = tuning.found().house().designOutdoor();
    Curve found = asked(tuning.found(), cold);
    Curve tuned = asked(tuning.tuned(), cold);
    Curve least = least(cold);
    List<Curve> all = List.of(found, tuned, least);
    List<Key> keys = Overlaid.keys(List.of("found", "tuned"));
    if (!least.isEmpty()) {
      keys.add(Key.line("lowest that holds every room", Stroke.FINE_DASH));
    }
    Axis outdoors = Axis.exact(cold, Holding.MILDEST, 7, "outdoors, °C");
    Axis flow = Axis.round(Overlaid.least(all) - 2, Overlaid.most(all) + 2, 6, "°C");
    return new Chart(
        "flow-temperature",
        title,
        meaning,
        keys,
        Panel.of("", HEIGHT, outdoors, flow)
            .line("found", found, FOUND)
            .line("tuned", tuned, TUNED)
            .line("least", least, Look.ink(Stroke.FINE_DASH)));
  }

  private static Curve asked(Plant plant, double cold) {
    double own = plant.house().source().flowSetPoint();
    return plant
        .house()
        .control()
        .flowCurve()
        .map(c -> AnswerCharts.flowCurve(c, cold))
        .orElse(Curve.straight(cold, own, Holding.MILDEST, own));
  }

  /** The line the search began with, where it began with one. */
  private Curve least(double cold) {
    for (Change change : tuning.changes()) {
      Optional<FlowCurve> line = change.reason().leastLine();
      if (line.isPresent()) {
        return AnswerCharts.flowCurve(line.get(), cold);
      }
      OptionalDouble flow = change.reason().leastFlow();
      if (flow.isPresent()) {
        double least = flow.getAsDouble();
        return Curve.straight(cold, least, Holding.MILDEST, least);
      }
    }
    return Curve.NONE;
  }

  private Chart spreads() {
    String title =
        "Share of houses whose coldest room settles no further below want than this, at rest, not run";
    String meaning = String.join(" ", words.spreads());
    Curve found = shares(tuning.before().spreads());
    Curve tuned = shares(tuning.after().spreads());
    double tolerance = tuning.found().house().wantTolerance();
    Axis x =
        Axis.round(
            Math.min(found.x()[0], tuned.x()[0]),
            Math.max(last(found.x()), Math.max(last(tuned.x()), tolerance)),
            8,
            "coldest room below want, K");
    return new Chart(
        "over-spreads",
        title,
        meaning,
        Overlaid.keys(List.of("found", "tuned")),
        Panel.of("", HEIGHT, x, Axis.exact(0, 100, 5, "%"))
            .line("found", found, FOUND)
            .line("tuned", tuned, TUNED)
            .upright("held up to here", tolerance)
            .remark("held up to here", tolerance, 0, Side.ABOVE_RIGHT));
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
}
