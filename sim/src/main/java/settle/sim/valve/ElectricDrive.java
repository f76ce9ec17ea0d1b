package settle.sim.valve;

import settle.sim.control.RoomSensor;

/** What drives led by a room sensor of their own have in common: want, sensor, lift. */
abstract class ElectricDrive implements ValveDrive {

  private final double setPoint;
  private final RoomSensing sensing;
  final RoomSensor sensor;
  double want;
  double lift;

  // Attempt
  double nextLift;
  double mean;

  ElectricDrive(double setPoint, RoomSensing sensing, double startTemperature) {
    this.setPoint = setPoint;
    this.sensing = sensing;
    sensor = new RoomSensor(0, startTemperature);
    want = setPoint;
  }

  /** The temperature it feels. */
  final double felt(double air, double operative) {
    return sensing == RoomSensing.AIR ? air : operative;
  }

  @Override
  public final void shiftSetPoint(double shift) {
    want = setPoint + shift;
  }

  @Override
  public final void see(double length, double air, double operative) {
    sensor.follow(length, mean, felt(air, operative));
  }

  @Override
  public final double sensed() {
    return sensor.value();
  }

  @Override
  public final double lift() {
    return lift;
  }
}
