package settle.sim.tuning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import settle.sim.tuning.Grid.Choice;

/**
 * Finds the settings that are worth most among those that can be set by hand: from several starts,
 * by a pattern search (Kolda, Lewis and Torczon 2003, from memory). Round a choice every setting is
 * tried a step up and a step down; a parabola through the three says how far each is best taken,
 * and what gains is tried together. Where nothing gains any more the steps are halved, down to one
 * mark.
 *
 * <p>A run with a cycling source is not smooth to the last digit; a pattern search bears that.
 */
final class Search {

  /** How a search ended. */
  enum Ending {
    /** Nothing a mark away from the answer is better by {@link #ENOUGH}. */
    CONVERGED,
    /** As many choices were tried as it may take. */
    TRIALS_USED_UP
  }

  /** A gain below this is noise, as a share of what a choice is worth [-]. */
  static final double ENOUGH = 0.001;

  /**
   * A setting that is so much dearer a step away on either side need not be looked at again before
   * the last steps, as a share of what a choice is worth [-].
   */
  private static final double CLEAR = 0.02;

  /**
   * A search from a start is given up that is further from the best than so many times what its
   * last round gained [-]: gains get smaller from round to round.
   */
  private static final double HOPED_FOR = 2;

  /** Starts that are followed. */
  private static final int STARTS = 3;

  /** How far starts must be apart, in strides. */
  private static final double APART = 2;

  /** A start that is so many times as dear as the best is no start [-]. */
  private static final double HOPELESS = 1.5;

  /** Trials a search may take: at first, and per setting. */
  private static final int FIRST_TRIALS = 60;

  private static final int TRIALS_PER_SETTING = 24;

  private final Grid grid;
  private final Tried tried;
  private final List<Integer> searched;
  private final Moves moves;
  private int followed;

  /**
   * Prepares.
   *
   * @param grid what can be set
   * @param tried what has been tried
   * @param searched the settings that may be changed, by their positions
   * @param moves settings worth moving together
   */
  Search(Grid grid, Tried tried, List<Integer> searched, Moves moves) {
    this.grid = grid;
    this.tried = tried;
    this.searched = List.copyOf(searched);
    this.moves = moves;
  }

  /** How many starts were followed. */
  int followed() {
    return followed;
  }

  /** Searches from the better of several starts, then once more from the best that was found. */
  Ending from(List<Choice> starts) {
    tried.of(starts);
    if (searched.isEmpty()) {
      return Ending.CONVERGED;
    }
    int most = FIRST_TRIALS + TRIALS_PER_SETTING * searched.size();
    // What is left for the last steps from the best.
    int forStarts = most * 2 / 3;
    for (Choice start : apart(starts)) {
      followed++;
      descend(start, true, forStarts);
    }
    return descend(tried.best(), false, most);
  }

  /** Goes on from the best there is, one mark at a time, after others have been tried. */
  Ending goOn() {
    return descend(tried.best(), false, tried.count() + TRIALS_PER_SETTING * searched.size());
  }

  /**
   * Turns what was moved back towards where it was found, what is furthest away first, as far as
   * that is no dearer than noise: of settings that are worth the same, the least change.
   */
  void turnBack() {
    Choice best = tried.best();
    double allowed = tried.least() * (1 + ENOUGH);
    Choice at = best;
    List<Integer> furthest = new ArrayList<>(searched);
    furthest.sort(Comparator.comparingDouble(i -> -Math.abs(turned(best, i))));
    for (int i : furthest) {
      int near = grid.asFound().at().get(i);
      int far = at.at().get(i);
      while (Math.abs(far - near) > 1) {
        int between = (near + far) / 2;
        if (tried.look(at.with(i, between)) <= allowed) {
          far = between;
        } else {
          near = between;
        }
      }
      at = at.with(i, far);
    }
    if (!at.equals(best)) {
      tried.prefer(at, ENOUGH);
    }
  }

  /** How far a setting is from where it was found, in strides. */
  private double turned(Choice choice, int i) {
    return (choice.at().get(i) - grid.asFound().at().get(i)) / (double) grid.stride(i);
  }

  /** The best starts that have little to do with each other. */
  private List<Choice> apart(List<Choice> starts) {
    List<Choice> cheapest = new ArrayList<>(starts);
    cheapest.sort(Comparator.comparingDouble(tried::total));
    List<Choice> chosen = new ArrayList<>();
    for (Choice start : cheapest) {
      if (chosen.size() < STARTS
          && tried.total(start) <= HOPELESS * tried.total(cheapest.get(0))
          && chosen.stream().allMatch(c -> grid.distance(c, start) >= APART)) {
        chosen.add(start);
      }
    }
    return chosen;
  }

  /**
   * Goes down from a choice.
   *
   * @param coarsely with strides only
   * @param most trials after which it stops
   */
  private Ending descend(Choice start, boolean coarsely, int most) {
    int[] step = firstSteps(coarsely);
    Choice at = start;
    Set<Integer> clear = new HashSet<>();
    List<Integer> lively = searched;
    boolean all = true;
    while (true) {
      at = coarsely ? at : cheapest(at, List.of(tried.best()));
      List<Choice> around = around(at, step, lively, all);
      if (tried.count() + around.size() > most) {
        return Ending.TRIALS_USED_UP;
      }
      // Where it is dearer than here by much, how much does not matter.
      double enough = Math.max(tried.total(at), HOPELESS * tried.least());
      tried.of(around, enough);
      List<Mover> movers = movers(at, step, lively, clear);
      List<Choice> together = together(at, movers);
      tried.of(together, enough);
      Choice next = cheapest(at, concat(around, together));
      double gain = tried.total(at) - tried.total(next);
      if (coarsely && tried.total(next) - tried.least() > HOPED_FOR * gain) {
        return Ending.CONVERGED;
      }
      if (gain > tried.total(at) * ENOUGH) {
        lively = lively(at, next, movers);
        all = false;
        at = next;
      } else if (!all) {
        lively = searched.stream().filter(i -> !clear.contains(i)).toList();
        all = true;
      } else if (coarsely) {
        return Ending.CONVERGED;
      } else if (!halve(step)) {
        if (lively.size() == searched.size()) {
          return Ending.CONVERGED;
        }
        lively = searched;
      }
    }
  }

  /** A stride for each setting, or half of it. */
  private int[] firstSteps(boolean coarsely) {
    int[] step = IntStream.range(0, grid.size()).map(grid::stride).toArray();
    if (!coarsely) {
      halve(step);
    }
    return step;
  }

  /** The cheapest of some, or one unless one of them is cheaper. */
  private Choice cheapest(Choice one, List<Choice> others) {
    Choice cheapest = one;
    for (Choice other : others) {
      cheapest = tried.total(other) < tried.total(cheapest) ? other : cheapest;
    }
    return cheapest;
  }

  /** Halves every step; false where none is left to be halved. */
  private static boolean halve(int[] step) {
    boolean halved = false;
    for (int i = 0; i < step.length; i++) {
      halved |= step[i] > 1;
      step[i] = Math.max(step[i] / 2, 1);
    }
    return halved;
  }

  /** Every setting a step up and a step down; with all of them also what belongs together. */
  private List<Choice> around(Choice at, int[] step, List<Integer> lively, boolean all) {
    List<Choice> around = new ArrayList<>();
    for (int i : lively) {
      for (int side = -1; side <= 1; side += 2) {
        int to = within(i, at.at().get(i) + side * step[i]);
        if (to != at.at().get(i)) {
          around.add(at.with(i, to));
        }
      }
    }
    if (all) {
      for (int i : searched) {
        // A setting that gains nothing stays as it was found.
        if (!at.at().get(i).equals(grid.asFound().at().get(i))) {
          around.add(at.with(i, grid.asFound().at().get(i)));
        }
      }
      around.addAll(moves.from(at, step, tried.worth(at).missed()));
    }
    return around.stream().distinct().toList();
  }

  private int within(int i, int value) {
    return Math.min(Math.max(value, 0), grid.values(i) - 1);
  }

  /** A setting that gains by itself, where it is best taken, and by how much. */
  private record Mover(int setting, int to, double gain) {}

  /**
   * What gains by itself.
   *
   * @param clear settings that are much dearer on either side are added
   */
  private List<Mover> movers(Choice at, int[] step, List<Integer> lively, Set<Integer> clear) {
    double here = tried.total(at);
    List<Mover> movers = new ArrayList<>();
    for (int i : lively) {
      int from = at.at().get(i);
      int down = within(i, from - step[i]);
      int up = within(i, from + step[i]);
      double below = tried.total(at.with(i, down));
      double above = tried.total(at.with(i, up));
      double gain = here - Math.min(below, above);
      if (gain > 0) {
        movers.add(new Mover(i, best(from, down, up, below, here, above), gain));
      } else if (gain < -CLEAR * here && down < from && from < up) {
        clear.add(i);
      }
    }
    movers.sort(Comparator.comparingDouble(m -> -m.gain()));
    return movers;
  }

  /** Lowest point of a parabola through three, no further than it was looked. */
  private static int best(int from, int down, int up, double below, double here, double above) {
    double bend = below + above - 2 * here;
    int cheaper = below < above ? down : up;
    if (from - down != up - from || !(bend > 0)) {
      return cheaper;
    }
    long lowest = from + Math.round((up - from) * (below - above) / (2 * bend));
    return (int) Math.min(Math.max(lowest, down), up);
  }

  /** What gains, together: all of it, the better half, the best few. */
  private static List<Choice> together(Choice at, List<Mover> movers) {
    List<Choice> together = new ArrayList<>();
    for (int share = 1; share <= 4; share *= 2) {
      int count = (movers.size() + share - 1) / share;
      if (count > 1) {
        Choice choice = at;
        for (Mover mover : movers.subList(0, count)) {
          choice = choice.with(mover.setting(), mover.to());
        }
        together.add(choice);
      }
    }
    return together.stream().distinct().toList();
  }

  /** What is worth trying again at once: what gained, and what has just been moved. */
  private List<Integer> lively(Choice before, Choice now, List<Mover> movers) {
    return searched.stream()
        .filter(
            i ->
                !before.at().get(i).equals(now.at().get(i))
                    || movers.stream().anyMatch(m -> m.setting() == i))
        .toList();
  }

  private static List<Choice> concat(List<Choice> a, List<Choice> b) {
    List<Choice> all = new ArrayList<>(a);
    all.addAll(b);
    return all;
  }
}
