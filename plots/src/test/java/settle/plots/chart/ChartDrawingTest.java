package settle.plots.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import settle.plots.drawing.Box;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.TextStyle;
import settle.plots.drawing.Theme;

/** Where things of a chart come to stand on paper. */
class ChartDrawingTest {

  private static final Axis HOURS = Axis.exact(0, 10, 5, "time, h");
  private static final Axis WARMTH = Axis.exact(15, 25, 5, "°C");

  @Test
  void aCurveRunsFromCornerToCornerAsOnePath() {
    double[] x = new double[101];
    double[] y = new double[101];
    for (int i = 0; i < x.length; i++) {
      x[i] = i / 10.0;
      y[i] = 15 + x[i] * x[i] / 10;
    }
    Panel panel = panel("", HOURS, new Mark.Line("room", new Curve(x, y), Look.arrangement(1)));
    String path = svg(panel).select("path[stroke=#cf5a1b]").attr("d");
    assertThat(path).startsWith("M50 212L").endsWith("L930 12");
    assertThat(path.chars().filter(c -> c == 'M').count()).isEqualTo(1);
  }

  @Test
  void aGapStaysAGap() {
    Curve curve =
        new Curve(new double[] {0, 4, 5, 6, 10}, new double[] {16, 17, Double.NaN, 18, 16});
    Panel panel = panel("", HOURS, new Mark.Line("return", curve, Look.arrangement(0)));
    String path = svg(panel).select("path[stroke=#17375e]").attr("d");
    assertThat(path.chars().filter(c -> c == 'M').count()).isEqualTo(2);
  }

  @Test
  void valuesLieWhereTheAxesSay() {
    Plot plot = new Plot(new Sketch(), new Box(50, 40, 400, 200), HOURS, WARMTH);
    assertThat(plot.px(5)).isCloseTo(250, within(1e-9));
    assertThat(plot.py(20)).isCloseTo(140, within(1e-9));
  }

  /** Two points a step would make a file of megabytes. */
  @Test
  void aBandTakesNoMorePointsThanCanBeSeen() {
    double[] x = new double[5000];
    double[] y = new double[5000];
    for (int i = 0; i < x.length; i++) {
      x[i] = i / 500.0;
      y[i] = i < 2500 ? 16 : 21;
    }
    Curve want = new Curve(x, y);
    Panel panel = panel("", HOURS, new Mark.Band(want.raised(-0.5), want.raised(0.5)));
    String path = svg(panel).select("path[fill=#efe6cf]").attr("d");
    assertThat(path.chars().filter(c -> c == 'L').count()).isLessThan(10);
  }

  /** Runs know an entry beyond what is shown. */
  @Test
  void aBandEndsWhereThePlotDoes() {
    Curve want = new Curve(new double[] {-1, 12}, new double[] {21, 21});
    Panel panel = panel("", HOURS, new Mark.Band(want.raised(-9), want.raised(9)));
    assertThat(svg(panel).select("path[fill=#efe6cf]").attr("d"))
        .isEqualTo("M50 212L930 212L930 12L50 12Z");
  }

  @Test
  void aLongTitleIsSetSmallerSoThatItFits() {
    String title =
        "Share of houses whose coldest room settles no further below want than this, at rest, not run";
    Mark.Line line = new Mark.Line("a", Curve.straight(0, 16, 10, 20), Look.arrangement(0));
    Chart chart = new Chart("c", title, "m", List.of(), panel("", HOURS, line));
    TextStyle style = chart.heading().style();
    assertThat(style.size()).isLessThan(21);
    assertThat(Lettering.width(title, style)).isLessThanOrEqualTo(Theme.WIDTH + 1e-9);
  }

  @Test
  void timeIsCaptionedOnceBelowTheLastPanelThatSharesIt() {
    Axis time = Axis.time(0, 24, Optional.empty());
    List<String> words =
        new Chart("c", "t", "m", List.of(), panel("a", time), panel("b", time)).drawing().words();
    assertThat(words).containsOnlyOnce("time of day, h:min");
    assertThat(
            new Chart("c", "t", "m", List.of(), panel("a", HOURS), panel("b", HOURS))
                .drawing()
                .words())
        .filteredOn("time, h"::equals)
        .hasSize(2);
  }

  @Test
  void aLegendThatIsFullGoesOnBelow() {
    List<Key> keys =
        List.of(
            Key.line("an arrangement with a long name that tells all there is to it", Stroke.THIN),
            Key.line("another arrangement with a name that is hardly shorter", Stroke.THIN),
            Key.note("words"));
    Panel panel = panel("", HOURS);
    Chart narrow = new Chart("c", "t", "m", keys.subList(0, 1), panel);
    Chart full = new Chart("c", "t", "m", keys, panel);
    assertThat(full.drawing().height()).isGreaterThan(narrow.drawing().height());
    for (Element text :
        Jsoup.parse(full.svg(), Parser.xmlParser()).select("text:not([text-anchor])")) {
      double end = Double.parseDouble(text.attr("x")) + Lettering.width(text.text(), Theme.LABEL);
      assertThat(end).isLessThanOrEqualTo(Theme.WIDTH);
    }
  }

  @Test
  void wordsThatDoNotFitOnOneSideStandOnTheOther() {
    Mark late = new Mark.Words("where it ends", 10, 20, Mark.Side.RIGHT);
    Mark early = new Mark.Words("where it begins", 0, 20, Mark.Side.LEFT);
    Document svg = svg(panel("", HOURS, late, early));
    assertThat(svg.select("text:contains(ends)").attr("text-anchor")).isEqualTo("end");
    assertThat(svg.select("text:contains(begins)").attr("text-anchor")).isEmpty();
  }

  private static Panel panel(String name, Axis x, Mark... marks) {
    Axis y = name.isEmpty() ? WARMTH.captioned("") : WARMTH;
    return Panel.of(name, 200, x, y).with(marks);
  }

  private static Document svg(Panel panel) {
    Chart chart = new Chart("panel", "Panel", "Means.", List.of(), panel);
    return Jsoup.parse(chart.svg(), Parser.xmlParser());
  }
}
