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
  double meanLift;
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

  /** Its course is taken as the parabola with the step's start, mean and end. */
  @Override
  public final double passesAfter(double there, double length) {
    if ((lift > there) == (nextLift > there)) {
      return Double.POSITIVE_INFINITY;
    }
    if (lift == there) {
      return 0;
    }
    // way = start s + bend s², s from 0 to 1
    double bend = 3 * (nextLift + lift - 2 * meanLift);
    double start = nextLift - lift - bend;
    double way = there - lift;
    double root = Math.sqrt(Math.max(start * start + 4 * bend * way, 0));
    return length * Math.min(2 * way / (start + Math.copySign(root, way)), 1);
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
