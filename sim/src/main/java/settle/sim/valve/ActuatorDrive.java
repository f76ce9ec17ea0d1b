package settle.sim.valve;

import settle.sim.control.Relay;

/**
 * Steps an {@link OnOffActuator}: its thermostat switches at a step's beginning, its stroke is
 * straight in time and exact over the step.
 */
final class ActuatorDrive extends ElectricDrive {

  private final OnOffActuator valve;
  private final Relay thermostat;

  ActuatorDrive(OnOffActuator valve, double startTemperature) {
    super(valve.setPoint(), valve.sensing(), startTemperature);
    this.valve = valve;
    thermostat = new Relay(valve.differential());
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
    meanLift = Stroke.mean(lift, goal(), goal(), reach);
    return valve.kvMaximum() * meanLift;
  }

  @Override
  public double feel(
      double length,
      double air,
      double operative,
      double massFlow,
      double inlet,
      double pressureDrop) {
    mean = felt(air, operative);
    return lookAhead(length, pressureDrop);
  }

  @Override
  public double endsAbove() {
    return meanLift > 0 ? (nextLift - lift) / (2 * meanLift) : 0;
  }

  @Override
  public double switchesAfter(double length) {
    return thermostat.switchesAfter(want, sensor, length, mean);
  }

  @Override
  public void accept(double length) {
    lift = nextLift;
  }

  @Override
  public double steadyFor(double share) {
    double moving = lift == goal() ? Double.POSITIVE_INFINITY : share * valve.travelTime();
    return Math.min(moving, thermostat.timeToSwitch(want, sensor));
  }
}
