package settle.sim.tuning;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import settle.sim.control.FlowCurve;
import settle.sim.tuning.Grid.Choice;

/**
 * Settings that are worth moving together, since one undoes what another does: a slope turned about
 * a usual day, all heads, all lockshields, and where a room is short of something the lockshields
 * of its neighbours, which leave it more water.
 */
final class Moves {

  private final Grid grid;
  private final List<Integer> heads;
  private final List<Integer> lockshields;
  private final int slope;
  private final int shift;
  private final double pivot;

  /**
   * @param grid what can be set
   * @param usualOutdoor temperature of a usual day [°C]
   */
  Moves(Grid grid, double usualOutdoor) {
    this.grid = grid;
    heads = grid.positions(Setting.Kind.HEAD);
    lockshields = grid.positions(Setting.Kind.LOCKSHIELD_TURNS);
    slope = grid.position(Setting.Kind.CURVE_SLOPE);
    shift = grid.position(Setting.Kind.CURVE_SHIFT);
    pivot = FlowCurve.FOOT - usualOutdoor;
  }

  /**
   * Choices a step away.
   *
   * @param at where
   * @param step of each setting, in values
   * @param missed rooms of which an aim is missed
   */
  List<Choice> from(Choice at, int[] step, Set<String> missed) {
    List<Choice> all = new ArrayList<>();
    for (int side = -1; side <= 1; side += 2) {
      if (heads.size() > 1) {
        all.add(moved(at, heads, step, side));
      }
      if (lockshields.size() > 1) {
        all.add(moved(at, lockshields, step, side));
      }
      if (slope >= 0 && shift >= 0) {
        Choice turned = moved(at, List.of(slope), step, side);
        double by = grid.value(turned, slope) - grid.value(at, slope);
        all.add(turned.with(shift, grid.nearest(shift, grid.value(at, shift) - by * pivot)));
      }
    }
    for (int i : lockshields) {
      if (missed.contains(room(i))) {
        List<Integer> others = lockshields.stream().filter(o -> o != i).toList();
        all.add(moved(at, others, step, -1));
      }
    }
    return all.stream().filter(choice -> !choice.equals(at)).toList();
  }

  /** Room of the branch whose lockshield a setting is. */
  private String room(int i) {
    return grid.found().arrangement().branches().get(grid.setting(i).branch()).room();
  }

  private Choice moved(Choice at, List<Integer> settings, int[] step, int side) {
    Choice choice = at;
    for (int i : settings) {
      int to = Math.min(Math.max(at.at().get(i) + side * step[i], 0), grid.values(i) - 1);
      choice = choice.with(i, to);
    }
    return choice;
  }
}
