package settle.plots.words;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import settle.sim.emitter.Emitter;
import settle.sim.house.Branch;
import settle.sim.result.RunResult;

/**
 * What is singled out where not all can be shown: one room, one emitter.
 *
 * @param comparison the runs
 */
public record Focus(Comparison comparison) {

  /**
   * The room that gets warm last, in whichever arrangement it takes longest; by position in the
   * house.
   */
  public int governingRoom() {
    return comparison
        .house()
        .roomIndex(
            comparison.verdicts().stream()
                .flatMap(v -> v.slowest().stream())
                .max(Comparator.comparingDouble(r -> r.warmUp().orElse(Double.POSITIVE_INFINITY)))
                .orElseThrow()
                .name());
  }

  /**
   * The room with the longest skirting, or the governing room if no arrangement has any; by
   * position in the house.
   */
  public int skirtingRoom() {
    return comparison.results().stream()
        .flatMap(r -> r.arrangement().branches().stream())
        .filter(b -> b.emitter().run().isPresent())
        .max(Comparator.comparingDouble(Focus::skirtingLength))
        .map(b -> comparison.house().roomIndex(b.room()))
        .orElseGet(this::governingRoom);
  }

  /**
   * The longest skirting in a room, or its first radiator; by position in the arrangement, empty if
   * the room has no emitter.
   */
  public OptionalInt emitter(RunResult result, int room) {
    return longest(result, room, b -> true);
  }

  /** The longest skirting, or first radiator, with a thermostatic head. */
  public OptionalInt thermostatic(RunResult result, int room) {
    return longest(result, room, b -> b.valve().thermostatic());
  }

  /** Heated length of skirting [m]; 0 for a radiator. */
  private static double skirtingLength(Branch branch) {
    return branch.emitter().run().map(Emitter.Run::length).orElse(0.0);
  }

  private OptionalInt longest(RunResult result, int room, Predicate<Branch> wanted) {
    String name = comparison.house().rooms().get(room).name();
    List<Branch> branches = result.arrangement().branches();
    int best = -1;
    for (int b : IntStream.range(0, branches.size()).toArray()) {
      Branch branch = branches.get(b);
      if (branch.room().equals(name)
          && wanted.test(branch)
          && (best < 0 || skirtingLength(branch) > skirtingLength(branches.get(best)))) {
        best = b;
      }
    }
    return best < 0 ? OptionalInt.empty() : OptionalInt.of(best);
  }
}
