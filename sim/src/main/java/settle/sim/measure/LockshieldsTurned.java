package settle.sim.measure;

import java.util.List;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.hydraulics.LockshieldScale;

/**
 * Lockshields turned.
 *
 * @param kind whether those of a cold room are opened or those of warm ones throttled
 * @param turns each that is turned
 */
public record LockshieldsTurned(Kind kind, List<Turn> turns) implements Measure {

  public LockshieldsTurned {
    turns = List.copyOf(turns);
  }

  /**
   * One of them.
   *
   * @param branch position in the arrangement
   * @param room that branch's room
   * @param from turns open as it is
   * @param to turns open as it is to be
   */
  public record Turn(int branch, String room, double from, double to) {}

  /** Of the first that is turned [turns]. */
  @Override
  public double from() {
    return turns.get(0).from();
  }

  /** Of the first that is turned [turns]. */
  @Override
  public double to() {
    return turns.get(0).to();
  }

  @Override
  public House on(House house, String arrangement) {
    Arrangement as = house.arrangement(arrangement);
    LockshieldScale scale = house.distribution().lockshields();
    for (Turn turn : turns) {
      as = as.withBranch(turn.branch(), b -> b.withLockshield(scale.atTurns(turn.to())));
    }
    return house.with(as);
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.lockshields(this);
  }
}
