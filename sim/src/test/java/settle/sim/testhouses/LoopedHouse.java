package settle.sim.testhouses;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.hydraulics.InLoop;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Pipe;
import settle.sim.valve.Valve;

/**
 * A plausible house whose emitters are connected anew: some of those that begin at the same mains
 * stand in loops, one after the other, with a valve each, or one for all of them, or with
 * by-passes.
 */
final class LoopedHouse {

  private final SplittableRandom random;
  private final boolean passedBy;

  private LoopedHouse(long seed, boolean passedBy) {
    random = new SplittableRandom(7_919 * seed + (passedBy ? 1 : 0));
    this.passedBy = passedBy;
  }

  /**
   * The house of a seed with loops.
   *
   * @param passedBy whether emitters of loops have by-passes
   */
  static PlausibleHouse of(long seed, boolean passedBy) {
    PlausibleHouse drawn = PlausibleHouse.of(seed);
    Arrangement looped = new LoopedHouse(seed, passedBy).join(drawn.arrangement());
    return new PlausibleHouse(
        seed,
        drawn.house().withArrangements(List.of(looped)),
        drawn.outdoor(),
        drawn.source(),
        drawn.control(),
        drawn.valves(),
        (passedBy ? "one-pipe, " : "series, ") + drawn.water());
  }

  private Arrangement join(Arrangement given) {
    List<Branch> branches = new ArrayList<>(given.branches());
    boolean[] taken = new boolean[branches.size()];
    for (int b = 0; b < taken.length; b++) {
      if (taken[b]) {
        continue;
      }
      taken[b] = true;
      int last = b;
      int most = 1 + random.nextInt(4);
      branches.set(b, first(branches.get(b)));
      for (int f = b + 1; f < taken.length && most > 1; f++) {
        String from = branches.get(f).fedFrom();
        if (!taken[f] && java.util.Objects.equals(from, branches.get(b).fedFrom())) {
          branches.set(f, follower(branches.get(f), last));
          taken[f] = true;
          last = f;
          most--;
        }
      }
    }
    return given.withBranches(branches);
  }

  private Branch first(Branch branch) {
    return passedBy ? branch.in(new InLoop(-1, byPass(branch))) : branch;
  }

  private Branch follower(Branch branch, int after) {
    boolean bare = !passedBy && random.nextInt(3) > 0;
    Branch as = bare ? branch.withValve(Valve.none()).withLockshield(Lockshield.NONE) : branch;
    return as.in(new InLoop(after, passedBy ? byPass(branch) : Optional.empty()));
  }

  /** Most have one; it is from a plain length between the tees to tees that hold water back. */
  private Optional<Pipe> byPass(Branch branch) {
    double bore = branch.pipe().bore();
    Pipe pipe =
        Pipe.withoutDelay("by-pass", bore, 1.5e-6, 0.3 + random.nextDouble(), random.nextInt(200));
    return random.nextInt(4) > 0 ? Optional.of(pipe) : Optional.empty();
  }
}
