package settle.sim.valve;

import settle.sim.control.Relay;
import settle.sim.control.RoomSensor;

/**
 * Steps an {@link OnOffActuator}: its thermostat switches at a step's beginning, its stroke is
 * straight in time and exact over the step.
 */
final class ActuatorDrive implements ValveDrive {

  private final OnOffActuator valve;
  private final Relay thermostat;
  private final RoomSensor sensor;
  private double want;
  private double lift;

  // Attempt
  private double nextLift;
  private double mean;

  ActuatorDrive(OnOffActuator valve, double startTemperature) {
    this.valve = valve;
    thermostat = new Relay(valve.differential());
    sensor = new RoomSensor(0, startTemperature);
    want = valve.setPoint();
  }

  @Override
  public void shiftSetPoint(double shift) {
    want = valve.setPoint() + shift;
  }

  @Override
  public void decide() {
    thermostat.update(want, sensor.value());
  }

  private double goal() {
    return thermostat.isOn() ? 1 : 0;
  }

  @Override
  public double lookAhead(double length, double pressureDrop) {
    double reach = length / valve.travelTime();
    nextLift = Stroke.end(lift, goal(), goal(), reach);
    return valve.kvMaximum() * Stroke.mean(lift, goal(), goal(), reach);
  }

  @Override
  public double feel(
      double length,
      double air,
      double operative,
      double massFlow,
      double inlet,
      double pressureDrop) {
    mean = valve.sensing() == RoomSensing.AIR ? air : operative;
    return lookAhead(length, pressureDrop);
  }

  @Override
  public void accept(double length) {
    lift = nextLift;
  }

  @Override
  public void see(double length, double air, double operative) {
    sensor.follow(length, mean, valve.sensing() == RoomSensing.AIR ? air : operative);
  }

  @Override
  public double sensed() {
    return sensor.value();
  }

  @Override
  public double lift() {
    return lift;
  }

  @Override
  public double steadyFor(double share) {
    double moving = lift == goal() ? Double.POSITIVE_INFINITY : share * valve.travelTime();
    return Math.min(moving, thermostat.timeToSwitch(want, sensor));
  }
}
