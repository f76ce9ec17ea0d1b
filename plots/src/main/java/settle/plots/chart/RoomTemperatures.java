package settle.plots.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.TextStyle;
import settle.plots.words.Comparison;
import settle.plots.words.Quantities;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;

/** Operative temperature of every room against want, one panel per room, arrangements overlaid. */
final class RoomTemperatures {

  private static final int COLUMN_GAP = 26;
  private static final int RIGHT = 30;

  private final Comparison comparison;
  private final TimeWindow window;
  private final boolean sinceCall;

  /** Whether each day is one value: a season's nights would only draw a comb. */
  private final boolean season;

  /**
   * @param comparison what to show
   * @param window when
   * @param sinceCall whether time counts from the first call for heat instead of midnight
   */
  RoomTemperatures(Comparison comparison, TimeWindow window, boolean sinceCall) {
    this.comparison = comparison;
    this.window = window;
    this.sinceCall = sinceCall;
    season = !sinceCall && window.isSeason();
  }

  Picture draw(String title) {
    List<Panel> panels = panels();
    Sketch g = new Sketch();
    double tolerance = comparison.house().wantTolerance();
    Legend legend = new Legend(g, Panel.LEFT);
    legend
        .arrangements(comparison)
        .line("want", Look.line(HouseTheme.INK, HouseTheme.THIN))
        .band("within " + Quantities.tolerance(tolerance) + " of want");
    if (season) {
      legend.note("each day’s mean while wanted");
    } else {
      legend.markers(comparison.results().size(), "warm, after the first call");
    }
    int columns = columns();
    for (int room = 0; room < panels.size(); room++) {
      Panel panel = panels.get(room);
      panel.paint(g);
      panel.name(g, comparison.house().rooms().get(room).name());
      if (!season) {
        remark(g, panel, room);
      }
      if (room + columns >= panels.size()) {
        panel.caption(g);
      }
    }
    Panel last = panels.get(panels.size() - 1);
    int height = (int) last.area().getMaxY() + Panel.BELOW + Panel.CAPTION + 4;
    return g.picture(title, HouseTheme.WIDTH, height);
  }

  /** One panel per room, in the house's order. */
  List<Panel> panels() {
    int rooms = comparison.house().rooms().size();
    int columns = columns();
    int rows = (rooms + columns - 1) / columns;
    int width =
        (HouseTheme.WIDTH - RIGHT - columns * Panel.LEFT - (columns - 1) * COLUMN_GAP) / columns;
    int height =
        switch (rows) {
          case 1 -> columns == 1 ? 400 : 330;
          case 2 -> 180;
          default -> 140;
        };
    double zero = zero();
    Axis horizontal =
        sinceCall
            ? TimeAxis.since(window, zero, width, "the first call for heat")
            : TimeAxis.season(window, width, comparison.house().weather().firstDay());
    Axis vertical = temperatureAxis(height);
    List<Panel> panels = new ArrayList<>();
    for (int room = 0; room < rooms; room++) {
      int x = Panel.LEFT + room % columns * (width + Panel.LEFT + COLUMN_GAP);
      int y =
          Legend.HEIGHT + Panel.ABOVE + room / columns * (height + Panel.ABOVE + Panel.BELOW + 8);
      Panel panel = new Panel(x, y, width, height, horizontal, vertical);
      fill(panel, room, zero);
      panels.add(panel);
    }
    return panels;
  }

  private int columns() {
    int rooms = comparison.house().rooms().size();
    return rooms == 1 ? 1 : rooms <= 12 ? 2 : 3;
  }

  private void fill(Panel panel, int room, double zero) {
    Curve want = panel.thinned(want(room, zero));
    double tolerance = comparison.house().wantTolerance();
    panel.band(shifted(want, -tolerance), shifted(want, tolerance));
    panel.line("want", want, Look.line(HouseTheme.INK, HouseTheme.THIN));
    List<RunResult> results = comparison.results();
    for (int i = 0; i < results.size(); i++) {
      RunResult result = results.get(i);
      Curve curve = operative(result, room, zero);
      Look look = HouseTheme.arrangement(i);
      panel.line(result.arrangement().name(), curve, look);
      OptionalDouble warmUp = result.rooms().get(room).warmUp();
      if (warmUp.isPresent() && !season) {
        double at = (result.firstCall() + warmUp.getAsDouble() - zero) / 3600;
        double temperature = curve.at(at);
        if (!Double.isNaN(temperature)) {
          panel.point(result.arrangement().name() + ", warm", at, temperature, look);
        }
      }
    }
  }

  /** Says after how long each arrangement has the room warm, each figure behind its marker. */
  private void remark(Sketch g, Panel panel, int room) {
    TextStyle style = HouseTheme.LABEL.in(HouseTheme.INK);
    double x = panel.area().getMaxX();
    double base = panel.area().getY() - 10;
    for (int i = comparison.results().size() - 1; i >= 0; i--) {
      RunResult result = comparison.results().get(i);
      if (result.rooms().get(room).ratedOutput() == 0) {
        continue;
      }
      String words = Quantities.warmUp(result.rooms().get(room).warmUp());
      x -= Lettering.width(words, style);
      g.text(words, x, base, style);
      Look look = HouseTheme.arrangement(i);
      g.setColor(look.colour());
      look.marker().paint(g, x - 10, base - 5, 9);
      x -= 30;
    }
  }

  private Axis temperatureAxis(int height) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int room = 0; room < comparison.house().rooms().size(); room++) {
      Curve want = want(room, 0);
      least = Math.min(least, want.least());
      most = Math.max(most, want.most());
      for (RunResult result : comparison.results()) {
        Curve curve = operative(result, room, 0);
        least = Math.min(least, curve.least());
        most = Math.max(most, curve.most());
      }
    }
    double tolerance = comparison.house().wantTolerance();
    return Axis.exact(
        least - tolerance - 0.2, most + tolerance + 0.2, Math.min(height / 22, 9), "°C");
  }

  private Curve operative(RunResult result, int room, double zero) {
    Trace trace = result.trace();
    double[] operative = trace.column(RoomColumn.OPERATIVE, room);
    return season
        ? Curve.ofDays(trace, operative, trace.column(RoomColumn.WANT, room), window)
        : Curve.ofState(trace, operative, window, zero, 1);
  }

  /** Want is the same for every arrangement. */
  private Curve want(int room, double zero) {
    Trace trace = comparison.results().get(0).trace();
    if (season) {
      double want = comparison.house().rooms().get(room).want().maximum();
      return new Curve(
          new double[] {window.from() / 3600, window.to() / 3600}, new double[] {want, want});
    }
    return Curve.ofMeans(trace, trace.column(RoomColumn.WANT, room), window, zero, 1);
  }

  private double zero() {
    return sinceCall ? comparison.results().get(0).firstCall() : 0;
  }

  private static Curve shifted(Curve curve, double by) {
    double[] y = new double[curve.y().length];
    for (int i = 0; i < y.length; i++) {
      y[i] = curve.y()[i] + by;
    }
    return new Curve(curve.x(), y);
  }
}
