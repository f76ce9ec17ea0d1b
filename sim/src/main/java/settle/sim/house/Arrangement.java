package settle.sim.house;

import java.util.List;
import settle.sim.emitter.PerimeterEmitter;

/**
 * One way of heating the house: its emitters with what feeds them.
 *
 * @param name what it is called
 * @param branches at least one; a room may have several or none
 * @param balanced whether lockshields and pump are set by a balance before the run
 */
public record Arrangement(String name, List<Branch> branches, boolean balanced) {

  public Arrangement {
    branches = List.copyOf(branches);
    if (branches.isEmpty()) {
      throw new IllegalArgumentException("arrangement '" + name + "' has no emitter");
    }
  }

  /** Whether its emitters run along the walls, stand as radiators, or both. */
  public EmitterKind emitterKind() {
    boolean perimeter = branches.stream().anyMatch(b -> b.emitter() instanceof PerimeterEmitter);
    boolean radiator = branches.stream().anyMatch(b -> !(b.emitter() instanceof PerimeterEmitter));
    if (perimeter && radiator) {
      return EmitterKind.MIXED;
    }
    return perimeter ? EmitterKind.PERIMETER : EmitterKind.RADIATOR;
  }

  /** The same arrangement with other branches. */
  public Arrangement withBranches(List<Branch> others) {
    return new Arrangement(name, others, balanced);
  }

  /** The same arrangement, lockshields and pump left as they are. */
  public Arrangement asSet() {
    return new Arrangement(name, branches, false);
  }

  /** Rated output (75/65/20) of all emitters in a room [W]. */
  public double ratedOutput(String room) {
    return branches.stream()
        .filter(b -> b.room().equals(room))
        .mapToDouble(b -> b.emitter().ratedOutput())
        .sum();
  }
}
