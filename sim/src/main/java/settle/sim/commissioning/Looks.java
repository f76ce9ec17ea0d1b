package settle.sim.commissioning;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What was seen by looking: at which emitters, or at the house, and what was found there. */
public final class Looks {

  /** Nobody has looked anywhere yet. */
  public static final Looks NONE = new Looks(Map.of(), Map.of());

  private final Map<Integer, Optional<FaultKind>> atBranches;
  private final Map<FaultKind, Boolean> atHouse;

  private Looks(Map<Integer, Optional<FaultKind>> atBranches, Map<FaultKind, Boolean> atHouse) {
    this.atBranches = atBranches;
    this.atHouse = atHouse;
  }

  /** Looked at an emitter too, and all there is as it should be. */
  public Looks right(int branch) {
    return with(branch, Optional.empty());
  }

  /** Looked at what may be wrong with the house as a whole too, and it is not. */
  public Looks right(FaultKind ofHouse) {
    return with(ofHouse, false);
  }

  /** Looked and found this, and nothing else there. */
  public Looks found(Fault fault) {
    return fault.branch() >= 0
        ? with(fault.branch(), Optional.of(fault.kind()))
        : with(fault.kind(), true);
  }

  private Looks with(int branch, Optional<FaultKind> seen) {
    Map<Integer, Optional<FaultKind>> more = new HashMap<>(atBranches);
    more.put(branch, seen);
    return new Looks(more, atHouse);
  }

  private Looks with(FaultKind kind, boolean is) {
    Map<FaultKind, Boolean> more = new HashMap<>(atHouse);
    more.put(kind, is);
    return new Looks(atBranches, more);
  }

  /** Whether nobody looked anywhere. */
  public boolean isEmpty() {
    return atBranches.isEmpty() && atHouse.isEmpty();
  }

  /** Whether somebody saw that this is so. */
  public boolean seen(Fault fault) {
    return fault.branch() >= 0
        ? atBranches
            .getOrDefault(fault.branch(), Optional.empty())
            .filter(k -> k == fault.kind())
            .isPresent()
        : atHouse.getOrDefault(fault.kind(), false);
  }

  /** Whether somebody saw that this is not so. */
  public boolean excluded(Fault fault) {
    return isLookedAt(fault) && !seen(fault);
  }

  /** Whether somebody looked where this would be seen. */
  public boolean isLookedAt(Fault fault) {
    return fault.branch() >= 0
        ? atBranches.containsKey(fault.branch())
        : atHouse.containsKey(fault.kind());
  }
}
