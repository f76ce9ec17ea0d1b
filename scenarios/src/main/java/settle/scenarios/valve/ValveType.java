package settle.scenarios.valve;

import java.util.Optional;
import settle.scenarios.definition.Defined;
import settle.scenarios.format.OwnOrCommon;
import settle.scenarios.quantity.Dimension;
import settle.sim.valve.Valve;

/** A valve as it is described, before it is known what it is set to. */
public interface ValveType extends Defined {

  /** How far below want an actuator or motor head may be set without a word [K]. */
  double USUAL = 0.5;

  /**
   * One of it.
   *
   * @param keys what the arrangement says of it
   * @param want what its room is wanted at [°C]
   * @param nearFloor whether it is at an emitter along the foot of the walls
   */
  Valve placed(OwnOrCommon keys, double want, boolean nearFloor);

  /** What is to be said of one that keeps its room colder than it is wanted [°C], if anything. */
  default Optional<String> doubt(Valve placed, double want) {
    return placed.setPoint() < want - USUAL
        ? Optional.of(
            "holds "
                + Dimension.TEMPERATURE.show(placed.setPoint())
                + ", but the room's want is "
                + Dimension.TEMPERATURE.show(want))
        : Optional.empty();
  }
}
