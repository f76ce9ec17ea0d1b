package settle.sim.tuning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import settle.sim.tuning.Grid.Choice;

/**
 * How flat the best is along one setting, the others left alone.
 *
 * @param setting which
 * @param down how far below the tuned value a usual day costs {@link #DEARER} more, all that is
 *     weighed counted [the setting's unit]; empty if nowhere within its limits
 * @param up the same above
 * @param points what was tried, ascending in the setting
 */
public record Flatness(
    Setting setting, OptionalDouble down, OptionalDouble up, List<Point> points) {

  /** What counts as dearer, as a share of what the tuned settings are worth [-]. */
  public static final double DEARER = 0.05;

  public Flatness {
    points = List.copyOf(points);
  }

  /**
   * A value of the setting.
   *
   * @param value in the setting's unit
   * @param dearer how much more it costs than the tuned one, all that is weighed counted
   *     [currency/d]
   */
  public record Point(double value, double dearer) {}

  /**
   * Looks on both sides of the best choice that was tried, each time twice as far, until it is dear
   * or ends. What is tried may be better: then that is the best, and these are not its answers.
   *
   * @param grid what can be set
   * @param tried what has been tried
   * @param settings which, by their positions
   */
  static List<Flatness> of(Grid grid, Tried tried, List<Integer> settings) {
    Choice best = tried.best();
    List<Look> looks = new ArrayList<>();
    for (int i : settings) {
      looks.add(new Look(grid, tried, best, i, -1));
      looks.add(new Look(grid, tried, best, i, 1));
    }
    List<Choice> next = next(looks);
    while (!next.isEmpty()) {
      tried.thoroughly(next);
      looks.forEach(Look::seen);
      next = next(looks);
    }
    List<Flatness> all = new ArrayList<>();
    for (int k = 0; k < looks.size(); k += 2) {
      Look down = looks.get(k);
      Look up = looks.get(k + 1);
      List<Point> points = new ArrayList<>(down.points);
      points.addAll(up.points.subList(1, up.points.size()));
      points.sort(Comparator.comparingDouble(Point::value));
      all.add(new Flatness(grid.setting(down.setting), down.dear(), up.dear(), points));
    }
    return all;
  }

  private static List<Choice> next(List<Look> looks) {
    return looks.stream().map(Look::next).filter(Objects::nonNull).toList();
  }

  /** A look to one side. */
  private static final class Look {
    private final Grid grid;
    private final Tried tried;
    private final Choice best;
    private final int setting;
    private final int side;
    private final List<Point> points = new ArrayList<>();
    private int distance;
    private Choice at;

    Look(Grid grid, Tried tried, Choice best, int setting, int side) {
      this.grid = grid;
      this.tried = tried;
      this.best = best;
      this.setting = setting;
      this.side = side;
      points.add(new Point(grid.value(best, setting), 0));
      distance = Math.max(grid.stride(setting) / 2, 1);
    }

    /** Where to look next; null if there is no need. */
    Choice next() {
      at = null;
      int to = best.at().get(setting) + side * distance;
      int within = Math.min(Math.max(to, 0), grid.values(setting) - 1);
      Choice choice = best.with(setting, within);
      if (!isDear() && points.get(points.size() - 1).value() != grid.value(choice, setting)) {
        at = choice;
      }
      return at;
    }

    void seen() {
      if (at != null) {
        points.add(new Point(grid.value(at, setting), tried.total(at) - tried.total(best)));
        distance *= 2;
      }
    }

    private double limit() {
      return DEARER * tried.total(best);
    }

    private boolean isDear() {
      return points.get(points.size() - 1).dearer() >= limit();
    }

    /** How far it is to where it is dear. */
    OptionalDouble dear() {
      if (points.size() < 2 || !isDear()) {
        return OptionalDouble.empty();
      }
      Point last = points.get(points.size() - 1);
      Point before = points.get(points.size() - 2);
      double share = (limit() - before.dearer()) / (last.dearer() - before.dearer());
      double value = before.value() + share * (last.value() - before.value());
      return OptionalDouble.of(Math.abs(value - points.get(0).value()));
    }
  }
}
