package settle.plots.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CurveTest {

  private static final double NONE = Double.NaN;

  @Test
  void readsBetweenPoints() {
    Curve curve = new Curve(new double[] {0, 2}, new double[] {10, 20});
    assertThat(curve.at(0.5)).isCloseTo(12.5, within(1e-12));
    assertThat(curve.at(3)).isNaN();
  }

  @Test
  void thinningStaysWithinAQuarterPixelAndKeepsGaps() {
    int n = 2000;
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = i * 0.01;
      y[i] = i == 1000 ? NONE : 20 + Math.exp(-x[i] / 4) * Math.sin(3 * x[i]);
    }
    Curve curve = new Curve(x, y);
    Curve thin = Thinning.of(curve, 40, 30);
    assertThat(thin.x().length).isLessThan(n / 4);
    assertThat(thin.y()).contains(NONE);
    for (int i = 0; i < n; i++) {
      if (i < 999 || i > 1001) {
        assertThat(Math.abs(thin.at(x[i]) - y[i]) * 30).isLessThan(1.0);
      }
    }
  }

  @Test
  void labelsAreMovedApartAndKeptInside() {
    double[] y = ChartDrawing.spread(new double[] {100, 101, 102}, 20, 110);
    assertThat(y[1] - y[0]).isGreaterThan(15);
    assertThat(y[2] - y[1]).isGreaterThan(15);
    assertThat(y[2]).isLessThanOrEqualTo(110);
  }
}
