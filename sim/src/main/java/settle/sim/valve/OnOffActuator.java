package settle.sim.valve;

import java.util.Optional;
import settle.sim.units.Range;

/**
 * An electrothermal actuator switched by a thermostat of its room: opens below set-point -
 * differential/2, shuts above set-point + differential/2, its stroke straight in time.
 *
 * @param name what it is called
 * @param setPoint room temperature it holds [°C]
 * @param differential full switching differential [K]
 * @param travelTime from shut to open, and back [s]
 * @param kvMaximum K_vs: fully open [m³/h at 1 bar]
 * @param sensing which room temperature its thermostat feels
 */
public record OnOffActuator(
    String name,
    double setPoint,
    double differential,
    double travelTime,
    double kvMaximum,
    RoomSensing sensing)
    implements Valve {

  public OnOffActuator {
    Range.positive("differential of '" + name + "'", differential, "K");
    Range.positive("travel time of '" + name + "'", travelTime, "s");
    Range.positive("Kvs of '" + name + "'", kvMaximum, "m³/h");
  }

  /** Width of the step at the set-point, so that a mean lift can be found on it [K]. */
  private static final double STEP_WIDTH = 0.01;

  /**
   * Mean lift at rest of what holds its set-point [-]: open for good where the room cannot be held,
   * shut where it is warm without, anything between at the set-point.
   *
   * @param error set-point - room temperature [K]
   */
  public static double meanLift(double error) {
    return Math.min(Math.max(0.5 + error / STEP_WIDTH, 0), 1);
  }

  /** Error at which {@link #meanLift} is such a lift, where it is anything between [K]. */
  public static double meanError(double lift) {
    return (lift - 0.5) * STEP_WIDTH;
  }

  @Override
  public boolean electric() {
    return true;
  }

  @Override
  public Optional<ValveDrive> drive(double startTemperature) {
    return Optional.of(new ActuatorDrive(this, startTemperature));
  }

  @Override
  public double kvAtRest(AtRest at) {
    return kvMaximum * meanLift(setPoint + at.switchesAt() - at.felt(sensing));
  }

  @Override
  public double lacking(double kv, AtRest at) {
    return setPoint + at.switchesAt() - meanError(kv / kvMaximum) - at.felt(sensing);
  }

  @Override
  public OnOffActuator raised(double by) {
    return new OnOffActuator(name, setPoint + by, differential, travelTime, kvMaximum, sensing);
  }
}
