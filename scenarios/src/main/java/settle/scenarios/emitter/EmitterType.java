package settle.scenarios.emitter;

import java.util.List;
import java.util.Optional;
import settle.scenarios.definition.Defined;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.Fixing;

/** An emitter as it is described, before it is known how long it is and where it is fixed. */
public interface EmitterType extends Defined {

  /** Whether its length is chosen when it is placed. */
  boolean soldByLength();

  /** Whether it runs along the foot of the walls, round corners too. */
  default boolean runsAlongWalls() {
    return false;
  }

  /**
   * One of it, placed.
   *
   * @param length its length [m]; ignored where it is of one size
   * @param backFraction share of output into an outside wall where one is behind [1]
   * @param fixedTo walls it is fixed to, in the order of its run
   */
  Emitter placed(double length, double backFraction, List<Fixing> fixedTo);

  /** Whether one of it may go both ways from its connection, in two runs behind one valve. */
  default boolean goesBothWays() {
    return false;
  }

  /** What is to be known of one that was placed, if anything. */
  default Optional<String> remark(Emitter placed) {
    return Optional.empty();
  }

  /**
   * One of it in two runs.
   *
   * @param length of both together [m]
   * @param shorter length of the shorter [m]
   * @param fittings sum of the loss coefficients of what joins each
   * @param backFraction share of output into an outside wall where one is behind [1]
   * @param fixedTo walls they are fixed to, in order
   */
  default Emitter placedBothWays(
      double length, double shorter, double fittings, double backFraction, List<Fixing> fixedTo) {
    throw new IllegalStateException(described().name() + " goes one way");
  }
}
