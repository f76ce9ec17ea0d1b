package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Mark;
import settle.plots.chart.Panel;
import settle.plots.drawing.Stroke;
import settle.plots.words.Comparison;
import settle.plots.words.Quantities;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;

/**
 * Operative temperature of every room against want, one panel per room, arrangements overlaid.
 *
 * @param comparison what to show
 * @param window when
 * @param sinceCall whether time counts from the first call for heat instead of midnight
 */
record RoomTemperatures(Comparison comparison, TimeWindow window, boolean sinceCall) {

  Chart chart(String name, String title, String meaning) {
    List<Key> keys = Overlaid.keys(comparison);
    keys.add(Key.line("want", Stroke.THIN));
    String tolerance = Quantities.tolerance(comparison.house().wantTolerance());
    keys.add(Key.band("within " + tolerance + " of want"));
    keys.add(
        season()
            ? Key.note("each day’s mean while wanted")
            : Key.markers(
                "warm, after the first call",
                IntStream.range(0, comparison.results().size())
                    .mapToObj(Look::arrangement)
                    .toList()));
    return new Chart(name, title, meaning, keys, columns(), panels());
  }

  /** Whether each day is one value: a season's nights would only draw a comb. */
  private boolean season() {
    return !sinceCall && window.isSeason();
  }

  private int columns() {
    int rooms = comparison.house().rooms().size();
    return rooms == 1 ? 1 : rooms <= 12 ? 2 : 3;
  }

  /** One panel per room, in the house's order. */
  private List<Panel> panels() {
    int rooms = comparison.house().rooms().size();
    int height =
        switch ((rooms + columns() - 1) / columns()) {
          case 1 -> columns() == 1 ? 400 : 330;
          case 2 -> 180;
          default -> 140;
        };
    double from = window.from() / 3600 - zero();
    Axis time =
        sinceCall
            ? Axis.since(
                from, window.to() / 3600 - zero(), "time since the first call for heat, h:min")
            : window.axis(comparison.house().weather().firstDay());
    Axis temperature = temperatureAxis(height);
    List<Panel> panels = new ArrayList<>();
    for (int room = 0; room < rooms; room++) {
      String name = comparison.house().rooms().get(room).name();
      panels.add(noted(room, Panel.of(name, height, time, temperature).with(marks(room))));
    }
    return panels;
  }

  private List<Mark> marks(int room) {
    Curve want = want(room);
    double tolerance = comparison.house().wantTolerance();
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Band(want.raised(-tolerance), want.raised(tolerance)));
    marks.add(new Mark.Line("want", want, Look.ink(Stroke.THIN)));
    List<Curve> curves = Overlaid.curves(comparison, r -> operative(r, room));
    marks.addAll(Overlaid.lines(comparison, curves));
    for (int i = 0; i < curves.size() && !season(); i++) {
      RunResult result = comparison.results().get(i);
      OptionalDouble warmUp = result.rooms().get(room).warmUp();
      if (warmUp.isPresent()) {
        double at = (result.firstCall() + warmUp.getAsDouble()) / 3600 - zero();
        double temperature = curves.get(i).at(at);
        if (!Double.isNaN(temperature)) {
          marks.add(new Mark.Point(at, temperature, Look.arrangement(i)));
        }
      }
    }
    return marks;
  }

  /** Notes after how long each arrangement has the room warm, each figure behind its marker. */
  private Panel noted(int room, Panel panel) {
    Panel noted = panel;
    for (int i = 0; i < comparison.results().size() && !season(); i++) {
      RoomFigures figures = comparison.results().get(i).rooms().get(room);
      if (figures.isHeated()) {
        String warmUp = Quantities.warmUp(figures.warmUp());
        noted = noted.noted(warmUp, new Key.MarkerSample(Look.arrangement(i)));
      }
    }
    return noted;
  }

  private Axis temperatureAxis(int height) {
    List<Curve> all = new ArrayList<>();
    for (int room = 0; room < comparison.house().rooms().size(); room++) {
      int shown = room;
      all.add(want(room));
      all.addAll(Overlaid.curves(comparison, r -> operative(r, shown)));
    }
    double more = comparison.house().wantTolerance() + 0.2;
    return Axis.exact(
        Overlaid.least(all) - more, Overlaid.most(all) + more, Math.min(height / 22, 9), "°C");
  }

  private Curve operative(RunResult result, int room) {
    Trace trace = result.trace();
    double[] operative = trace.column(RoomColumn.OPERATIVE, room);
    return season()
        ? Courses.ofDays(trace, operative, trace.column(RoomColumn.WANT, room), window)
        : Courses.ofState(trace, operative, window).later(-zero());
  }

  /** Want is the same for every arrangement. */
  private Curve want(int room) {
    if (season()) {
      double want = comparison.house().rooms().get(room).want().maximum();
      return Curve.straight(window.from() / 3600, want, window.to() / 3600, want);
    }
    Trace trace = comparison.results().get(0).trace();
    return Courses.ofMeans(trace, trace.column(RoomColumn.WANT, room), window, 1).later(-zero());
  }

  /** What counts as zero [h]. */
  private double zero() {
    return sinceCall ? comparison.results().get(0).firstCall() / 3600 : 0;
  }
}
