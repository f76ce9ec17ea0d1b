package settle.plots.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.TextStyle;

/** Names at the right ends of lines, moved apart where they would cover one another. */
final class EndLabels {

  private static final double SPACING = 17;
  private static final double LEADER = 12;

  private record Label(double y, String words, TextStyle style) {}

  private final List<Label> labels = new ArrayList<>();

  void add(double y, String words) {
    add(y, words, HouseTheme.LABEL.in(HouseTheme.INK));
  }

  void add(double y, String words, TextStyle style) {
    labels.add(new Label(y, words, style));
  }

  void paint(Sketch g, Rectangle2D area) {
    labels.sort(Comparator.comparingDouble(Label::y));
    double[] y =
        spread(
            labels.stream().mapToDouble(Label::y).toArray(),
            area.getMinY() + 4,
            area.getMaxY() - 2);
    g.setStroke(HouseTheme.HAIRLINE);
    g.setColor(HouseTheme.FAINT_INK);
    for (int i = 0; i < y.length; i++) {
      double x = area.getMaxX();
      g.draw(new Line2D.Double(x + 1, labels.get(i).y(), x + LEADER, y[i]));
      g.text(labels.get(i).words(), x + LEADER + 3, y[i] + 5, labels.get(i).style());
    }
  }

  /**
   * Least shift that keeps places apart and within bounds: ascending places in, ascending places
   * out.
   */
  static double[] spread(double[] wanted, double least, double most) {
    double[] y = wanted.clone();
    for (int pass = 0; pass < 50; pass++) {
      for (int i = 1; i < y.length; i++) {
        double overlap = SPACING - (y[i] - y[i - 1]);
        if (overlap > 0) {
          y[i - 1] -= overlap / 2;
          y[i] += overlap / 2;
        }
      }
      if (y.length > 0) {
        y[0] = Math.max(y[0], least);
        y[y.length - 1] = Math.min(y[y.length - 1], most);
      }
    }
    return y;
  }
}
