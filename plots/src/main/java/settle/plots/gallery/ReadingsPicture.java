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
import settle.plots.drawing.Picture;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.Theme;
import settle.plots.words.AcceptWords;
import settle.plots.words.Quantities;
import settle.sim.commissioning.Diagnosis.Reading;

/**
 * What was read beside what was expected, the reading that is furthest out of its band on top.
 *
 * @param words what readings are called
 * @param readings the most telling first, at least one
 */
public record ReadingsPicture(AcceptWords words, List<Reading> readings) {

  public ReadingsPicture {
    readings = List.copyOf(readings);
  }

  /** Least that the picture shows to either side [K]. */
  private static final double LEAST = 4;

  /** The pictures. */
  public List<Picture> all() {
    double most = LEAST;
    List<String> names = new ArrayList<>();
    for (Reading r : readings) {
      most = Math.max(most, Math.abs(r.value() - r.expected()) * 1.1);
      most = Math.max(most, AcceptWords.BAND * r.spread() * 1.1);
      names.add(words.what(r.point()));
    }
    Rows rows = new Rows(readings.size(), 1, 15, 7);
    Axis x = Axis.exact(-most, most, 8, "K warmer than expected");
    Panel panel = Panel.of("", rows.height(), x, Axis.names(names));
    Look look = Look.arrangement(0);
    Look out = Look.arrangement(1);
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      Reading r = readings.get(i);
      double band = AcceptWords.BAND * r.spread();
      double y = rows.y(i, 0);
      marks.add(new Mark.Bar(-band, band, y, rows.width(), Theme.BAND, Pattern.FULL, ""));
      boolean within = Math.abs(r.off()) <= AcceptWords.BAND;
      double off = r.value() - r.expected();
      marks.add(new Mark.Point(off, y, within ? look : out));
      if (!within) {
        marks.add(
            new Mark.Words(
                Quantities.temperature(r.value()),
                off,
                y,
                off > 0 ? Mark.Side.RIGHT : Mark.Side.LEFT));
      }
    }
    List<Key> keys =
        List.of(
            Key.band("where it lies if nothing is wrong"),
            new Key("read, within", List.of(new Key.MarkerSample(look))),
            new Key("read, out of it", List.of(new Key.MarkerSample(out))),
            Key.line("expected", Stroke.FINE_DASH));
    return List.of(
        new Chart(
            "readings",
            "Readings against what was expected",
            "The worst on top. The band is two standard deviations of what instruments and an unknown house make of it.",
            keys,
            panel.with(marks).upright("expected", 0)));
  }
}
