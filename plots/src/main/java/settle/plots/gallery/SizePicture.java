package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Mark;
import settle.plots.chart.Panel;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Stroke;
import settle.plots.words.Quantities;
import settle.sim.sizing.SizedProfile;
import settle.sim.sizing.SizedRoom;

/**
 * Metres of skirting against flow temperature: a panel a room, a line a profile, the free wall
 * across it.
 *
 * @param profiles as sized over the same flow temperatures, at least one
 * @param asked flow temperature that is asked for in design weather [°C]
 */
public record SizePicture(List<SizedProfile> profiles, double asked) {

  /**
   * How much more than the free wall is shown [-]: beyond, all that counts is that it is too long.
   */
  private static final double SHOWN = 1.6;

  private static final int MOST_COLUMNS = 3;

  /** As many profiles as have a look of their own. */
  private static final int MOST = 4;

  /** The pictures. */
  public List<Picture> all() {
    List<SizedProfile> shown = shown();
    List<Key> keys = new ArrayList<>();
    for (int i = 0; i < shown.size(); i++) {
      keys.add(Key.line(shown.get(i).name(), Look.arrangement(i)));
    }
    keys.add(Key.line("flow temperature asked for", Stroke.FINE_DASH));
    keys.add(Key.band("free wall"));
    int rooms = profiles.get(0).rooms().size();
    return List.of(
        new Chart(
            "metres",
            "Skirting needed against flow temperature",
            "Where a line lies within the shaded band there is wall enough; the marker stands where it begins to."
                + " The hotter the water, the less skirting.",
            keys,
            Math.min(MOST_COLUMNS, rooms),
            IntStream.range(0, rooms).mapToObj(r -> panel(shown, r)).toList()));
  }

  private List<SizedProfile> shown() {
    List<SizedProfile> shown =
        new ArrayList<>(profiles.stream().filter(SizedProfile::used).toList());
    profiles.stream().filter(p -> !p.used()).forEach(shown::add);
    return shown.subList(0, Math.min(MOST, shown.size()));
  }

  private Panel panel(List<SizedProfile> shown, int r) {
    SizedRoom room = shown.get(0).rooms().get(r);
    double[] flows = room.at().stream().mapToDouble(SizedRoom.AtFlow::flow).toArray();
    double top = Math.max(1, SHOWN * room.freeWall());
    Axis x = Axis.exact(flows[0], flows[flows.length - 1], 4, "°C");
    Axis y = Axis.exact(0, top, 4, "m");
    Curve floor = Curve.straight(x.min(), 0, x.max(), 0);
    Panel panel =
        Panel.of(room.room(), 150, x, y)
            .noted(Quantities.power(room.load()))
            .with(new Mark.Band(floor, floor.raised(room.freeWall())))
            .upright("asked for", asked);
    for (int i = 0; i < shown.size(); i++) {
      SizedRoom one = shown.get(i).rooms().get(r);
      Look look = Look.arrangement(i);
      panel = panel.line(shown.get(i).name(), curve(one, flows, top), look);
      double least = one.leastFlow().orElse(Double.NaN);
      if (least >= x.min() && least <= x.max()) {
        panel = panel.with(new Mark.Point(least, one.freeWall(), look));
      }
    }
    return panel;
  }

  /** Lengths as far as they are on the picture, cut off where they leave it. */
  private static Curve curve(SizedRoom room, double[] flows, double top) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < flows.length; i++) {
      double length = room.at().get(i).length();
      if (length > top) {
        continue;
      }
      double before = i > 0 ? room.at().get(i - 1).length() : length;
      if (points.isEmpty() && before > top && Double.isFinite(before)) {
        double share = (top - length) / (before - length);
        points.add(new double[] {flows[i] - share * (flows[i] - flows[i - 1]), top});
      }
      points.add(new double[] {flows[i], length});
    }
    return new Curve(
        points.stream().mapToDouble(p -> p[0]).toArray(),
        points.stream().mapToDouble(p -> p[1]).toArray());
  }
}
