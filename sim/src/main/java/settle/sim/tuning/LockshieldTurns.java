package settle.sim.tuning;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import settle.sim.hydraulics.LockshieldScale;

/**
 * Opening of the lockshield of a branch [turns].
 *
 * @param branch which
 * @param where what that branch is called
 */
public record LockshieldTurns(int branch, String where) implements Setting {

  /** Less than that blocks up and sets badly [turns]. */
  private static final double LEAST = 0.25;

  @Override
  public Kind kind() {
    return Kind.LOCKSHIELD_TURNS;
  }

  @Override
  public double of(Plant plant) {
    return plant.arrangement().branches().get(branch).lockshield().turns();
  }

  @Override
  public Plant with(Plant plant, double value) {
    return plant.withBranch(branch, b -> b.withLockshield(scale(plant).atTurns(value)));
  }

  private static LockshieldScale scale(Plant plant) {
    return plant.house().distribution().lockshields();
  }

  /** Eighths of a turn, beyond the first turn quarters, then halves, up to open. */
  @Override
  public double[] marks(Plant plant) {
    double open = scale(plant).open().turns();
    return DoubleStream.concat(
            Stream.of(
                    Marks.every("0.125", LEAST, 1),
                    Marks.every("0.25", 1.25, 2),
                    Marks.every("0.5", 2.5, 20))
                .flatMapToDouble(DoubleStream::of)
                .filter(turns -> turns < open),
            DoubleStream.of(open))
        .toArray();
  }
}
