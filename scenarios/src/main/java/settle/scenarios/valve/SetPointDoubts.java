package settle.scenarios.valve;

import java.util.Optional;
import settle.scenarios.quantity.Dimension;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;

/** Heads that keep their room colder than it is wanted. */
public final class SetPointDoubts {

  /** How far below want an actuator or motor head may be set without a word [K]. */
  private static final double USUAL = 0.5;

  private SetPointDoubts() {}

  /** What is to be said of a valve in a room of such a want [°C], if anything. */
  public static Optional<String> below(Valve valve, double want) {
    if (valve instanceof WaxValve wax) {
      // Hot water near the head only makes it shut earlier.
      double shut = wax.setPoint() + wax.proportionalBand() - wax.bias();
      return shut <= want
          ? Optional.of(
              "is shut where the room is at "
                  + Dimension.TEMPERATURE.show(shut)
                  + ", so it never lets the room come to its want of "
                  + Dimension.TEMPERATURE.show(want))
          : Optional.empty();
    }
    double set =
        valve instanceof OnOffActuator actuator
            ? actuator.setPoint()
            : valve instanceof MotorHead motor ? motor.setPoint() : Double.POSITIVE_INFINITY;
    return set < want - USUAL
        ? Optional.of(
            "holds "
                + Dimension.TEMPERATURE.show(set)
                + ", but the room's want is "
                + Dimension.TEMPERATURE.show(want))
        : Optional.empty();
  }
}
