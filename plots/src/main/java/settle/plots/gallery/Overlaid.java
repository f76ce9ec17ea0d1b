package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import settle.plots.chart.Curve;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Mark;
import settle.plots.words.Comparison;
import settle.sim.result.RunResult;

/** What charts of several arrangements have in common: each has its look everywhere. */
final class Overlaid {

  private Overlaid() {}

  /** A key per arrangement; more may be added. */
  static List<Key> keys(Comparison comparison) {
    return keys(comparison.results().stream().map(r -> r.arrangement().name()).toList());
  }

  /** A key per name; more may be added. */
  static List<Key> keys(List<String> names) {
    List<Key> keys = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      keys.add(Key.line(names.get(i), Look.arrangement(i)));
    }
    return keys;
  }

  /** A curve per arrangement. */
  static List<Curve> curves(Comparison comparison, Function<RunResult, Curve> curve) {
    return comparison.results().stream().map(curve).toList();
  }

  /** A line per arrangement; more may be added. */
  static List<Mark> lines(Comparison comparison, List<Curve> curves) {
    List<Mark> lines = new ArrayList<>();
    for (int i = 0; i < curves.size(); i++) {
      String name = comparison.results().get(i).arrangement().name();
      lines.add(new Mark.Line(name, curves.get(i), Look.arrangement(i)));
    }
    return lines;
  }

  static double least(List<Curve> curves) {
    return curves.stream().mapToDouble(Curve::least).min().orElse(Double.POSITIVE_INFINITY);
  }

  static double most(List<Curve> curves) {
    return curves.stream().mapToDouble(Curve::most).max().orElse(Double.NEGATIVE_INFINITY);
  }
}
