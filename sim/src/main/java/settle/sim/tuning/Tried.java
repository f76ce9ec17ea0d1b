package settle.sim.tuning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import settle.sim.study.Workers;
import settle.sim.tuning.Grid.Choice;

/**
 * Every choice of settings that has been tried, each once. The best of them is the answer: none
 * that was tried is better by more than noise.
 *
 * <p>A choice is judged quickly at first, never dearer than it is; it is confirmed where that makes
 * it the best. Choices of a batch are tried at the same time and compared in their order, so that
 * threads change nothing.
 */
final class Tried {

  /** Judges plants. */
  interface Judge {

    /** At least this dear. */
    Worth quick(Plant plant, int changed);

    /**
     * At least this dear, and no longer looked at than it takes to find it dearer than enough.
     *
     * @param enough [currency/d]
     */
    default Worth quick(Plant plant, int changed, double enough) {
      return quick(plant, changed);
    }

    /** As dear as it is. */
    Worth confirmed(Plant plant, Worth quick);
  }

  /** Of a batch, how many are confirmed at most. */
  private static final int MOST_CONFIRMED = 3;

  private final Grid grid;
  private final Judge judge;
  private final Workers workers;
  private final Map<Choice, Worth> quick = new HashMap<>();
  private final Map<Choice, Worth> confirmed = new HashMap<>();

  /** Choices that may have been looked at no longer than it took to find them too dear. */
  private final Set<Choice> tooDear = new HashSet<>();

  private Choice best;

  /** What another choice must be worth less than to be the answer. */
  private double bar;

  /**
   * Tries the plant as found.
   *
   * @param grid what can be set
   * @param judge what it is worth
   * @param workers who tries the choices of a batch
   */
  Tried(Grid grid, Judge judge, Workers workers) {
    this.grid = grid;
    this.judge = judge;
    this.workers = workers;
    best = grid.asFound();
    look(List.of(best), Double.POSITIVE_INFINITY);
    confirm(best);
    bar = least();
  }

  /** How many choices were tried. */
  int count() {
    return quick.size();
  }

  Choice best() {
    return best;
  }

  /** What the best one is worth. */
  Worth worth() {
    return confirmed.get(best);
  }

  /** How many of them were confirmed. */
  int confirmed() {
    return confirmed.size();
  }

  double least() {
    return worth().total();
  }

  /** What a choice that was tried is worth, as far as it is known. */
  Worth worth(Choice choice) {
    Worth sure = confirmed.get(choice);
    return sure != null ? sure : quick.get(choice);
  }

  double total(Choice choice) {
    return worth(choice).total();
  }

  /** What a choice comes to that is tried by itself, as far as it is known; it is no answer yet. */
  double look(Choice choice) {
    look(List.of(choice), Double.POSITIVE_INFINITY);
    return total(choice);
  }

  /**
   * Takes a choice for the answer that is worth as much but for noise, if it is when confirmed;
   * from now on another must be better by more than that.
   *
   * @param noise as a share of what the best is worth [-]
   */
  void prefer(Choice choice, double noise) {
    confirm(choice);
    if (total(choice) <= least() * (1 + noise)) {
      best = choice;
      bar = least() * (1 - noise);
    }
  }

  /** Tries choices, and keeps the best there is; only the cheapest few are confirmed. */
  void of(List<Choice> choices) {
    of(choices, Double.POSITIVE_INFINITY);
  }

  /**
   * The same where it does not matter by how much a choice is dearer than enough.
   *
   * @param enough no less than the best is worth [currency/d]
   */
  void of(List<Choice> choices, double enough) {
    of(choices, enough, MOST_CONFIRMED);
  }

  /** Tries choices, and keeps the best there is, however many seem better at first. */
  void thoroughly(List<Choice> choices) {
    of(choices, Double.POSITIVE_INFINITY, Integer.MAX_VALUE);
  }

  private void of(List<Choice> choices, double enough, int most) {
    look(choices, enough);
    List<Choice> cheapest = new ArrayList<>(choices);
    cheapest.sort(Comparator.comparingDouble(this::total));
    int before = confirmed.size();
    for (Choice choice : cheapest) {
      if (total(choice) < bar && confirmed.size() - before < most) {
        confirm(choice);
        if (total(choice) < bar) {
          best = choice;
          bar = least();
        }
      }
    }
  }

  private void look(List<Choice> choices, double enough) {
    List<Choice> fresh = choices.stream().filter(c -> isOpen(c, enough)).distinct().toList();
    List<Worth> worths =
        workers.all(fresh, c -> judge.quick(grid.plant(c), grid.changed(c), enough));
    for (int i = 0; i < fresh.size(); i++) {
      quick.put(fresh.get(i), worths.get(i));
      if (worths.get(i).total() > enough) {
        tooDear.add(fresh.get(i));
      } else {
        tooDear.remove(fresh.get(i));
      }
    }
  }

  /** Whether less is known of a choice than whether it is dearer than enough. */
  private boolean isOpen(Choice choice, double enough) {
    Worth known = quick.get(choice);
    return known == null || (tooDear.contains(choice) && known.total() <= enough);
  }

  private void confirm(Choice choice) {
    if (!confirmed.containsKey(choice)) {
      confirmed.put(choice, judge.confirmed(grid.plant(choice), quick.get(choice)));
    }
  }
}
