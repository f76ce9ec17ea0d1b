package settle.sim.hydraulics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import settle.sim.hydraulics.NetworkFlow.Leaf;

/**
 * Which branches are passed one after the other by the same water. A branch that has its own flow
 * and return is the first and the last of its own.
 */
public final class Loops {

  private final int[] after;
  private final int[] next;
  private final int[] first;
  private final int[] order;
  private final boolean[] inLoop;
  private final boolean any;

  /**
   * @param leaves the branches
   * @throws IllegalArgumentException where one is fed by none there is, by two at once, or by
   *     itself round a ring; or begins elsewhere than the one it comes after
   */
  public Loops(List<? extends Leaf> leaves) {
    int n = leaves.size();
    after = leaves.stream().mapToInt(leaf -> leaf.loop().after()).toArray();
    next = new int[n];
    first = new int[n];
    inLoop = new boolean[n];
    Arrays.fill(next, -1);
    for (int b = 0; b < n; b++) {
      if (after[b] >= 0) {
        follow(leaves, b);
      }
      inLoop[b] |= after[b] >= 0 || leaves.get(b).loop().byPass().isPresent();
    }
    order = new int[n];
    int placed = 0;
    for (int b = 0; b < n; b++) {
      if (after[b] < 0) {
        for (int at = b; at >= 0; at = next[at]) {
          first[at] = b;
          order[placed++] = at;
        }
      }
    }
    if (placed < n) {
      throw new IllegalArgumentException("a loop comes after itself");
    }
    any = IntStream.range(0, n).anyMatch(b -> inLoop[b]);
  }

  private void follow(List<? extends Leaf> leaves, int b) {
    int before = after[b];
    if (before >= leaves.size()) {
      throw new IllegalArgumentException("no branch is at " + before);
    }
    if (next[before] >= 0) {
      throw new IllegalArgumentException("two branches come after the one at " + before);
    }
    String from = leaves.get(b).fedFrom();
    if (from == null
        ? leaves.get(before).fedFrom() != null
        : !from.equals(leaves.get(before).fedFrom())) {
      throw new IllegalArgumentException("a loop is fed from two mains");
    }
    next[before] = b;
    inLoop[before] = true;
  }

  /** Whether there are any. */
  public boolean any() {
    return any;
  }

  /** Whether a branch is one of several in a loop, or has a by-pass. */
  public boolean has(int branch) {
    return inLoop[branch];
  }

  /** The branch whose return feeds this one; -1 for one that is fed from mains or source. */
  public int after(int branch) {
    return after[branch];
  }

  /** The branch that is fed by this one's return; -1 for the last. */
  public int next(int branch) {
    return next[branch];
  }

  /** The first of a branch's loop; itself where it is in none. */
  public int first(int branch) {
    return first[branch];
  }

  /** The first of every branch's loop. */
  int[] firsts() {
    return first.clone();
  }

  /** Every branch once, each after the one that feeds it. */
  public int inOrder(int position) {
    return order[position];
  }

  /** All of a branch's loop, in the water's order; itself where it is in none. */
  public int[] members(int branch) {
    return IntStream.iterate(first[branch], b -> b >= 0, b -> next[b]).toArray();
  }
}
