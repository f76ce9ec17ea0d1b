package settle.plots.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import settle.plots.drawing.Sketch;

/** The library's plot fills the panel exactly, so that its curves and our axes agree. */
class PanelTest {

  private static final Axis HOURS = Axis.exact(0, 10, 5, "time, h");
  private static final Axis WARMTH = Axis.exact(15, 25, 5, "°C");

  @Test
  void aCurveRunsFromCornerToCornerAsOnePath() {
    Panel panel = new Panel(50, 40, 400, 200, HOURS, WARMTH);
    double[] x = new double[101];
    double[] y = new double[101];
    for (int i = 0; i < x.length; i++) {
      x[i] = i / 10.0;
      y[i] = 15 + x[i] * x[i] / 10;
    }
    panel.line("room", new Curve(x, y), HouseTheme.arrangement(1));
    String path = curvePath(panel);
    assertThat(path).startsWith("M50 240L").endsWith("L450 40");
    assertThat(path.chars().filter(c -> c == 'M').count()).isEqualTo(1);
  }

  @Test
  void aGapStaysAGap() {
    Panel panel = new Panel(0, 0, 400, 200, HOURS, WARMTH);
    Curve curve =
        new Curve(new double[] {0, 4, 5, 6, 10}, new double[] {16, 17, Double.NaN, 18, 16});
    panel.line("return", curve, HouseTheme.arrangement(0));
    assertThat(curves(panel)).isEqualTo(2);
  }

  @Test
  void valuesLieWhereTheAxesSay() {
    Panel panel = new Panel(50, 40, 400, 200, HOURS, WARMTH);
    assertThat(panel.px(5)).isCloseTo(250, within(1e-9));
    assertThat(panel.py(20)).isCloseTo(140, within(1e-9));
  }

  private static String curvePath(Panel panel) {
    String colour = "#cf5a1b";
    return svg(panel).select("path[stroke=" + colour + "]").attr("d");
  }

  private static int curves(Panel panel) {
    return svg(panel).select("path[stroke=#17375e]").size();
  }

  private static Document svg(Panel panel) {
    Sketch g = new Sketch();
    panel.paint(g);
    return Jsoup.parse(g.picture("panel", 960, 300).svg("p"), Parser.xmlParser());
  }
}
