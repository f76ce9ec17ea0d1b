package settle.scenarios.emitter;

import java.util.List;
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
}
