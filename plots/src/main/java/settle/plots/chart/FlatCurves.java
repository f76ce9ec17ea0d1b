package settle.plots.chart;

import java.util.ArrayList;
import java.util.List;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.words.TuningWords;
import settle.sim.tuning.Flatness;
import settle.sim.tuning.Setting;
import settle.sim.tuning.Tuning;

/** What a day costs more along each setting, one panel each, side by side on one scale. */
final class FlatCurves {

  private static final int COLUMNS = 3;
  private static final int GAP = 34;
  private static final int RIGHT = 24;
  private static final int HEIGHT = 130;

  /** Highest share shown [-]: beyond, all that counts is that it is steep. */
  private static final double HIGHEST = 0.2;

  /** How far below nothing the scale begins, as a share [-]. */
  private static final double BELOW = 0.02;

  private static final Look LINE =
      new Look(
          HouseTheme.arrangement(1).colour(), HouseTheme.SOLID, HouseTheme.arrangement(1).marker());

  /** As many as a printed page bears with their heading. */
  static final int MOST_PANELS = 12;

  private final Tuning tuning;
  private final List<Flatness> flatness;
  private final double day;
  private final double highest;

  /**
   * @param tuning what was found
   * @param flatness the settings that are drawn, at least one
   * @param day what a usual day costs as tuned, all that is weighed counted [currency/d]
   */
  FlatCurves(Tuning tuning, List<Flatness> flatness, double day) {
    this.tuning = tuning;
    this.flatness = flatness;
    this.day = day;
    highest = HIGHEST * day;
  }

  Picture draw(String title) {
    int columns = Math.min(COLUMNS, flatness.size());
    int width =
        (HouseTheme.WIDTH - Panel.LEFT - RIGHT - (columns - 1) * (Panel.LEFT + GAP)) / columns;
    Axis vertical = Axis.exact(-BELOW * day, highest, 5, "");
    Sketch g = new Sketch();
    new Legend(g, Panel.LEFT)
        .line("a usual day dearer by, comfort and aims priced in" + currency(), LINE)
        .band("less than 5 % dearer");
    List<Panel> panels = new ArrayList<>();
    for (int i = 0; i < flatness.size(); i++) {
      Flatness flat = flatness.get(i);
      int x = Panel.LEFT + i % columns * (width + Panel.LEFT + GAP);
      int y =
          Legend.HEIGHT
              + Panel.ABOVE
              + i / columns * (HEIGHT + Panel.ABOVE + Panel.BELOW + Panel.CAPTION + 8);
      panels.add(panel(g, flat, new Panel(x, y, width, HEIGHT, horizontal(flat), vertical)));
    }
    Panel last = panels.get(panels.size() - 1);
    return g.picture(
        title, HouseTheme.WIDTH, (int) last.area().getMaxY() + Panel.BELOW + Panel.CAPTION + 4);
  }

  private String currency() {
    String currency = tuning.found().house().aims().tariffs().currency();
    return currency.isEmpty() ? "" : ", " + currency;
  }

  private Axis horizontal(Flatness flat) {
    Curve shown = shown(flat);
    double low = shown.x()[0];
    double high = shown.x()[shown.x().length - 1];
    double pad = high > low ? 0 : 1;
    return Axis.exact(low - pad, high + pad, 4, caption(flat.setting()));
  }

  private Panel panel(Sketch g, Flatness flat, Panel panel) {
    double[] ends = {panel.horizontal().min(), panel.horizontal().max()};
    double dearer = Flatness.DEARER * day;
    panel.band(
        new Curve(ends, new double[] {0, 0}), new Curve(ends, new double[] {dearer, dearer}));
    panel.line("dearer", shown(flat), LINE);
    panel.point("tuned", scaled(flat.setting(), flat.setting().of(tuning.tuned())), 0, LINE);
    panel.paint(g);
    panel.name(g, TuningWords.name(flat.setting()));
    panel.caption(g);
    return panel;
  }

  /** The curve as far as it is not above the scale, cut off in between. */
  private Curve shown(Flatness flat) {
    List<Flatness.Point> points = flat.points();
    List<double[]> shown = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Flatness.Point point = points.get(i);
      if (point.dearer() <= highest) {
        if (i > 0 && points.get(i - 1).dearer() > highest) {
          shown.add(cut(points.get(i - 1), point));
        }
        shown.add(new double[] {point.value(), point.dearer()});
      } else if (i > 0 && points.get(i - 1).dearer() <= highest) {
        shown.add(cut(point, points.get(i - 1)));
      }
    }
    return new Curve(
        shown.stream().mapToDouble(p -> scaled(flat.setting(), p[0])).toArray(),
        shown.stream().mapToDouble(p -> p[1]).toArray());
  }

  private double[] cut(Flatness.Point above, Flatness.Point below) {
    double share = (highest - below.dearer()) / (above.dearer() - below.dearer());
    return new double[] {below.value() + share * (above.value() - below.value()), highest};
  }

  private static boolean isTime(Setting setting) {
    return setting instanceof Setting.StartLead || setting instanceof Setting.MotorIntegralTime;
  }

  private static double scaled(Setting setting, double value) {
    if (setting instanceof Setting.PumpHead) {
      return value / 1000;
    }
    return isTime(setting) ? value / 60 : value;
  }

  private static String caption(Setting setting) {
    if (isTime(setting)) {
      return "min";
    }
    if (setting instanceof Setting.Head || setting instanceof Setting.FlowTemperature) {
      return "°C";
    }
    if (setting instanceof Setting.CurveSlope) {
      return "K/K";
    }
    if (setting instanceof Setting.LockshieldTurns) {
      return "turns";
    }
    if (setting instanceof Setting.PumpHead) {
      return "kPa";
    }
    return setting instanceof Setting.MotorGain ? "/K" : "K";
  }
}
