package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Mark;
import settle.plots.chart.Mark.Pattern;
import settle.plots.chart.Panel;
import settle.plots.words.Comparison;
import settle.plots.words.Quantities;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.units.Times;

/**
 * Heat given to each room, one bar per arrangement, figures at the bars; what pipes in the room
 * give stands apart behind what its emitters do.
 */
record HeatByRoom(Comparison comparison) {

  private static final double BAR = 19;
  private static final double GAP = 15;

  Chart chart(String name, String title, String meaning) {
    List<RunResult> results = comparison.results();
    List<Key> keys = new ArrayList<>();
    List<Mark> bars = new ArrayList<>();
    Rows rows = new Rows(comparison.house().rooms().size(), results.size(), BAR, GAP);
    double most = 0;
    boolean pipes = false;
    for (int i = 0; i < results.size(); i++) {
      int colour = Look.arrangement(i).colour();
      keys.add(Key.bar(results.get(i).arrangement().name(), colour, Pattern.arrangement(i)));
      for (int room = 0; room < rows.groups(); room++) {
        RoomFigures figures = results.get(i).rooms().get(room);
        double emitters = figures.heat().emitted() / Times.KILOWATT_HOUR;
        double all = figures.heat().whole() / Times.KILOWATT_HOUR;
        double y = rows.y(room, i);
        boolean both = figures.heat().piped() > 0;
        bars.add(
            new Mark.Bar(
                0,
                emitters,
                y,
                rows.width(),
                colour,
                Pattern.arrangement(i),
                both ? "" : words(figures)));
        if (both) {
          bars.add(
              new Mark.Bar(emitters, all, y, rows.width(), colour, Pattern.DOTTED, words(figures)));
        }
        pipes |= both;
        most = Math.max(most, all);
      }
    }
    if (pipes) {
      keys.add(
          Key.bar("dotted: from pipes in the room", Look.arrangement(0).colour(), Pattern.DOTTED));
    }
    Axis heat = Axis.round(0, most, 6, "heat given to the room, kWh");
    Axis rooms = Axis.names(comparison.house().rooms().stream().map(r -> r.name()).toList());
    return new Chart(
        name, title, meaning, keys, Panel.of("", rows.height(), heat, rooms).with(bars));
  }

  private static String words(RoomFigures figures) {
    String pipes =
        figures.heat().piped() > 0 ? " + " + Quantities.kilowattHours(figures.heat().piped()) : "";
    return Quantities.kilowattHours(figures.heat().emitted()) + pipes + " kWh";
  }
}
