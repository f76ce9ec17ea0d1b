package settle.sim.valve;

import java.util.Optional;
import settle.sim.units.Range;

/**
 * A motor-driven head with a PI controller: lift = K_p (e + 1/T_i ∫ e dt), e = set-point - room
 * temperature, held within 0..1 and followed at the motor's speed; Kv in proportion to lift.
 *
 * @param name what it is called
 * @param setPoint room temperature it holds [°C]
 * @param gain K_p: share of the lift per kelvin [1/K]
 * @param integralTime T_i [s]; infinite for a proportional controller
 * @param travelTime from shut to open [s]
 * @param kvMaximum K_vs: fully open [m³/h at 1 bar]
 * @param sensing which room temperature it feels
 */
public record MotorHead(
    String name,
    double setPoint,
    double gain,
    double integralTime,
    double travelTime,
    double kvMaximum,
    RoomSensing sensing)
    implements Valve {

  public MotorHead {
    Range.positive("gain of '" + name + "'", gain, "1/K");
    if (!(integralTime > 0)) {
      throw new IllegalArgumentException(
          "integral time of '" + name + "' is " + integralTime + " s, must be above 0 s");
    }
    Range.positive("travel time of '" + name + "'", travelTime, "s");
    Range.positive("Kvs of '" + name + "'", kvMaximum, "m³/h");
  }

  /**
   * Lift at rest [-]. With an integral it rests at the set-point with any lift, elsewhere only open
   * or shut: {@link OnOffActuator#meanLift}.
   *
   * @param error set-point - room temperature [K]
   */
  public double liftAtRest(double error) {
    return Double.isFinite(integralTime)
        ? OnOffActuator.meanLift(error)
        : Math.min(Math.max(gain * error, 0), 1);
  }

  /** Error at which {@link #liftAtRest} is such a lift, where it is anything between [K]. */
  public double errorAtRest(double lift) {
    return Double.isFinite(integralTime) ? OnOffActuator.meanError(lift) : lift / gain;
  }

  @Override
  public boolean throttles() {
    return true;
  }

  @Override
  public boolean electric() {
    return true;
  }

  @Override
  public Optional<Controller> controller() {
    return Optional.of(new Controller(gain, integralTime));
  }

  @Override
  public MotorHead tuned(Controller other) {
    return new MotorHead(
        name, setPoint, other.gain(), other.integralTime(), travelTime, kvMaximum, sensing);
  }

  @Override
  public Optional<ValveDrive> drive(double startTemperature) {
    return Optional.of(new MotorDrive(this, startTemperature));
  }

  @Override
  public double kvAtRest(AtRest at) {
    return kvMaximum * liftAtRest(setPoint - at.felt(sensing));
  }

  @Override
  public double lacking(double kv, AtRest at) {
    return setPoint - errorAtRest(kv / kvMaximum) - at.felt(sensing);
  }

  @Override
  public MotorHead raised(double by) {
    return new MotorHead(name, setPoint + by, gain, integralTime, travelTime, kvMaximum, sensing);
  }
}
