package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Mark;
import settle.plots.chart.Panel;
import settle.plots.drawing.Stroke;
import settle.plots.words.TuningWords;
import settle.sim.tuning.Flatness;
import settle.sim.tuning.Setting;
import settle.sim.tuning.Tuning;

/**
 * What a day costs more along each setting, one panel each, side by side on one scale.
 *
 * @param tuning what was found
 * @param flatness the settings that are drawn, at least one
 * @param day what a usual day costs as tuned, all that is weighed counted [currency/d]
 */
record FlatCurves(Tuning tuning, List<Flatness> flatness, double day) {

  private static final int COLUMNS = 3;

  /** Highest share shown [-]: beyond, all that counts is that it is steep. */
  private static final double HIGHEST = 0.2;

  /** How far below nothing the scale begins, as a share [-]. */
  private static final double BELOW = 0.02;

  private static final Look LINE = Look.arrangement(1).with(Stroke.HEAVY);

  /** As many as a printed page bears with their heading. */
  static final int MOST_PANELS = 12;

  Chart chart(String name, String title, String meaning) {
    return new Chart(
        name,
        title,
        meaning,
        List.of(
            Key.line(
                "added cost of a usual day, with comfort and aims priced in" + currency(), LINE),
            Key.band("less than 5 % dearer")),
        Math.min(COLUMNS, flatness.size()),
        flatness.stream().map(this::panel).toList());
  }

  private String currency() {
    String currency = tuning.found().house().aims().tariffs().currency();
    return currency.isEmpty() ? "" : ", " + currency;
  }

  private Panel panel(Flatness flat) {
    Curve shown = shown(flat);
    double low = shown.x()[0];
    double high = shown.x()[shown.x().length - 1];
    double pad = high > low ? 0 : 1;
    double tuned = scaled(flat.setting(), flat.setting().of(tuning.tuned()));
    Axis x = Axis.exact(low - pad, high + pad, 4, caption(flat.setting()));
    Axis y = Axis.exact(-BELOW * day, highest(), 5, "");
    Curve nothing = Curve.straight(x.min(), 0, x.max(), 0);
    return Panel.of(TuningWords.name(flat.setting()), 130, x, y)
        .with(new Mark.Band(nothing, nothing.raised(Flatness.DEARER * day)))
        .line("dearer", shown, LINE)
        .with(new Mark.Point(tuned, 0, LINE));
  }

  /** Where the scale ends [currency/d]. */
  private double highest() {
    return HIGHEST * day;
  }

  /** The curve as far as it is not above the scale, cut off in between. */
  private Curve shown(Flatness flat) {
    double highest = highest();
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
    double highest = highest();
    double share = (highest - below.dearer()) / (above.dearer() - below.dearer());
    return new double[] {below.value() + share * (above.value() - below.value()), highest};
  }

  private static double scaled(Setting setting, double value) {
    return switch (setting.kind()) {
      case PUMP_HEAD -> value / 1000;
      case START_LEAD, MOTOR_INTEGRAL_TIME -> value / 60;
      default -> value;
    };
  }

  private static String caption(Setting setting) {
    return switch (setting.kind()) {
      case PUMP_HEAD -> "kPa";
      case START_LEAD, MOTOR_INTEGRAL_TIME -> "min";
      default -> setting.kind().unit();
    };
  }
}
