package settle.sim.measure;

import java.util.Optional;
import settle.sim.emitter.Emitter;
import settle.sim.house.House;

/**
 * A larger emitter of the same kind in place of one that is there.
 *
 * @param room which
 * @param branch position of the emitter
 * @param noun what the trade calls such an emitter
 * @param from its rated output [W]
 * @param to that of the larger one [W]
 * @param lengthTo length of the larger one [m]; not a number for one that is not sold by length
 */
public record LargerEmitter(
    String room, int branch, String noun, double from, double to, double lengthTo)
    implements Measure {
  @Override
  public Kind kind() {
    return Kind.RADIATOR;
  }

  @Override
  public House on(House house, String arrangement) {
    return house.with(
        house.arrangement(arrangement).withBranch(branch, b -> b.withEmitter(of(b.emitter()))));
  }

  private Emitter of(Emitter as) {
    return Double.isNaN(lengthTo) ? as.scaled(to / from) : as.ofLength(lengthTo);
  }

  @Override
  public Optional<String> emitterNoun() {
    return Optional.of(noun);
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.emitter(this);
  }
}
