package settle.sim.house;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import settle.sim.hydraulics.Loops;

/**
 * One way of heating the house: its emitters with what feeds them.
 *
 * @param name what it is called
 * @param branches at least one; a room may have several or none
 * @param balanced whether lockshields and pump are set by a balance before the run
 */
public record Arrangement(String name, List<Branch> branches, boolean balanced) {

  /** Between room and emitter in the name of a branch. */
  private static final String SEPARATOR = ": ";

  public Arrangement {
    branches = List.copyOf(branches);
    if (branches.isEmpty()) {
      throw new IllegalArgumentException("arrangement '" + name + "' has no emitter");
    }
    loops(branches);
  }

  private static Loops loops(List<Branch> branches) {
    try {
      return new Loops(branches);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("loops: " + e.getMessage(), e);
    }
  }

  /** Which emitters the same water passes one after the other. */
  public Loops loops() {
    return loops(branches);
  }

  /**
   * Through which emitters no water ever flows, by their positions: they were shut by hand, or
   * their loop was, in which all of the water passes one that is.
   */
  public boolean[] shut() {
    boolean[] shut = new boolean[branches.size()];
    Loops loops = loops();
    for (int b = 0; b < shut.length; b++) {
      shut[b] |= branches.get(b).isShut();
      boolean stops = branches.get(b).isShut() && branches.get(b).loop().byPass().isEmpty();
      for (int member : stops ? loops.members(b) : new int[0]) {
        shut[member] = true;
      }
    }
    return shut;
  }

  /**
   * The branch whose lockshield throttles a branch and all that is in one loop with it: the first
   * that has one, all of the water passing it; -1 where a loop has none.
   *
   * @param branch position of the branch
   */
  public int throttledAt(int branch) {
    Loops loops = loops();
    if (!loops.has(branch)) {
      return branch;
    }
    return IntStream.of(loops.members(branch))
        .filter(
            b ->
                branches.get(b).lockshield().isFitted()
                    && branches.get(b).loop().byPass().isEmpty())
        .findFirst()
        .orElse(-1);
  }

  /** The kind of its emitters; "mixed" if they are of several. */
  public String emitterKind() {
    List<String> kinds = branches.stream().map(b -> b.emitter().kind()).distinct().toList();
    return kinds.size() == 1 ? kinds.get(0) : "mixed";
  }

  /** This arrangement with other branches. */
  public Arrangement withBranches(List<Branch> others) {
    return new Arrangement(name, others, balanced);
  }

  /**
   * This arrangement with one branch changed.
   *
   * @param position which
   * @param change what is done to it
   */
  public Arrangement withBranch(int position, UnaryOperator<Branch> change) {
    List<Branch> others = new ArrayList<>(branches);
    others.set(position, change.apply(others.get(position)));
    return withBranches(others);
  }

  /**
   * This arrangement with every branch of a room changed.
   *
   * @param room which
   * @param change what is done to each
   */
  public Arrangement withRoom(String room, UnaryOperator<Branch> change) {
    return withBranches(
        branches.stream().map(b -> b.room().equals(room) ? change.apply(b) : b).toList());
  }

  /** This arrangement with lockshields and pump set so that it is balanced. */
  public Arrangement asBalanced() {
    return new Arrangement(name, branches, true);
  }

  /** This arrangement with lockshields and pump as given. */
  public Arrangement asSet() {
    return new Arrangement(name, branches, false);
  }

  /**
   * Names of the branches, "room: emitter", in order and each once: where emitters of a room share
   * one, they are numbered.
   */
  public List<String> branchNames() {
    List<String> plain = new ArrayList<>();
    for (Branch branch : branches) {
      plain.add(branch.room() + SEPARATOR + ownName(branch));
    }
    List<String> names = new ArrayList<>();
    for (String name : plain) {
      String free = name;
      if (Collections.frequency(plain, name) > 1) {
        int n = 1;
        while (plain.contains(numbered(name, n)) || names.contains(numbered(name, n))) {
          n++;
        }
        free = numbered(name, n);
      }
      names.add(free);
    }
    return names;
  }

  private static String ownName(Branch branch) {
    return branch.name() == null ? branch.emitter().name() : branch.name();
  }

  private static String numbered(String name, int n) {
    return name + " no. " + n;
  }

  /**
   * What a branch is called in a sentence: its room, and which emitter where the room has several.
   *
   * @param branch position of the branch
   */
  public String place(int branch) {
    String room = branches.get(branch).room();
    boolean alone = branches.stream().filter(b -> b.room().equals(room)).count() == 1;
    return alone ? room : room + ", " + label(branch);
  }

  /**
   * What a branch is called within its room: its emitter, numbered where the room has several of
   * one name.
   *
   * @param branch position of the branch
   */
  public String label(int branch) {
    int beyondRoom = branches.get(branch).room().length() + SEPARATOR.length();
    return branchNames().get(branch).substring(beyondRoom);
  }

  /** Rated output (75/65/20) of all emitters in a room [W]. */
  public double ratedOutput(String room) {
    return branches.stream()
        .filter(b -> b.room().equals(room))
        .mapToDouble(b -> b.emitter().ratedOutput())
        .sum();
  }
}
