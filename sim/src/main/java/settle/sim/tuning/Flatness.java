package settle.sim.tuning;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * How flat the optimum is along one setting, the others left alone.
 *
 * @param setting which
 * @param down how far below the tuned value it costs {@link #DEARER} more [the setting's unit];
 *     empty if nowhere within its limits
 * @param up the same above
 * @param points what was tried, ascending in the setting
 */
public record Flatness(
    Setting setting, OptionalDouble down, OptionalDouble up, List<Point> points) {

  /** What counts as dearer, as a share of the objective [-]. */
  public static final double DEARER = 0.05;

  /** Looks at most so often, each time twice as far: beyond the limits of every setting. */
  private static final int MOST_STEPS = 6;

  /** Distance of the first look, in strides. */
  private static final double FIRST_STEP = 0.5;

  public Flatness {
    points = List.copyOf(points);
  }

  /**
   * The objective at a value of the setting.
   *
   * @param value in the setting's unit
   * @param objective over that at the optimum [-]
   */
  public record Point(double value, double objective) {}

  /**
   * Looks on both sides.
   *
   * @param plant the plant as tuned
   * @param setting which
   * @param objective what is to be small
   * @param least that of the plant as tuned
   */
  static Flatness of(
      Plant plant, Setting setting, ToDoubleFunction<Plant> objective, double least) {
    List<Point> points = new ArrayList<>();
    points.add(new Point(setting.of(plant), 1));
    OptionalDouble down = look(plant, setting, objective, least, -1, points);
    OptionalDouble up = look(plant, setting, objective, least, 1, points);
    points.sort((a, b) -> Double.compare(a.value(), b.value()));
    return new Flatness(setting, down, up, points);
  }

  private static OptionalDouble look(
      Plant plant,
      Setting setting,
      ToDoubleFunction<Plant> objective,
      double least,
      int side,
      List<Point> points) {
    double tuned = setting.of(plant);
    Point before = new Point(tuned, 1);
    double step = FIRST_STEP * setting.stride(plant);
    for (int i = 0; i < MOST_STEPS; i++) {
      double value =
          Math.min(Math.max(tuned + side * step, setting.lowest(plant)), setting.highest(plant));
      // Nothing left on this side; what was found may lie beyond the limits by itself.
      if (side * (value - before.value()) <= 0) {
        return OptionalDouble.empty();
      }
      Point now = new Point(value, objective.applyAsDouble(setting.with(plant, value)) / least);
      points.add(now);
      if (now.objective() >= 1 + DEARER) {
        double share = (1 + DEARER - before.objective()) / (now.objective() - before.objective());
        return OptionalDouble.of(
            Math.abs(before.value() + share * (now.value() - before.value()) - tuned));
      }
      before = now;
      step *= 2;
    }
    return OptionalDouble.empty();
  }
}
