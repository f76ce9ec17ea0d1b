package settle.sim.valve;

/**
 * Steps a {@link MotorHead}: lift asked = K_p (e + 1/T_i ∫ e dt), held within 0..1; the motor
 * follows at its speed.
 *
 * <p>While what is asked lies beyond an end of the stroke and the error would drive it further, the
 * integral rests, so that it is ready when the error turns (conditional integration: Åström and
 * Hägglund, PID Controllers, 2nd edition 1995, section 3.5, from memory). The error runs straight
 * over the step; controller and motor are followed in {@link #PARTS} parts of it.
 */
final class MotorDrive extends ElectricDrive {

  /**
   * Parts of a step [-]: what is asked is taken as straight within each; only where it meets an end
   * of the stroke is it not.
   */
  private static final int PARTS = 16;

  /** Lift below which an opening's change is not measured against the opening itself [-]. */
  private static final double NEAR_SHUT = 0.1;

  private final MotorHead valve;
  private double integral;

  // Attempt
  private double nextIntegral;

  MotorDrive(MotorHead valve, double startTemperature) {
    super(valve.setPoint(), valve.sensing(), startTemperature);
    this.valve = valve;
  }

  @Override
  public void decide() {
    // Nothing jumps: the controller works all the time.
  }

  @Override
  public double lookAhead(double length, double pressureDrop) {
    return follow(length, sensor.slope());
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
    return follow(length, 2 * (mean - sensor.value()) / length);
  }

  private double follow(double length, double roomSlope) {
    double part = length / PARTS;
    double reach = part / valve.travelTime();
    double start = want - sensor.value();
    nextIntegral = integral;
    nextLift = lift;
    double sum = 0;
    double goal = held(asked(start, integral));
    for (int k = 0; k < PARTS; k++) {
      double middle = start - roomSlope * (k + 0.5) * part;
      double asked = asked(middle, nextIntegral);
      boolean windingUp = (asked > 1 && middle > 0) || (asked < 0 && middle < 0);
      if (!windingUp) {
        nextIntegral += middle * part;
      }
      double end = start - roomSlope * (k + 1) * part;
      double goalBefore = goal;
      goal = held(asked(end, nextIntegral));
      sum += Stroke.mean(nextLift, goalBefore, goal, reach);
      nextLift = Stroke.end(nextLift, goalBefore, goal, reach);
    }
    meanLift = sum / PARTS;
    return valve.kvMaximum() * meanLift;
  }

  private double asked(double error, double errorIntegral) {
    return valve.gain() * (error + errorIntegral / valve.integralTime());
  }

  private static double held(double asked) {
    return Math.min(Math.max(asked, 0), 1);
  }

  @Override
  public void accept(double length) {
    integral = nextIntegral;
    lift = nextLift;
  }

  @Override
  public double steadyFor(double share) {
    double error = want - sensor.value();
    double asked = asked(error, integral);
    double goal = held(asked);
    double travel = share * (lift + NEAR_SHUT);
    double behind = Math.abs(goal - lift);
    double catchingUp = behind > travel ? travel * valve.travelTime() : Double.POSITIVE_INFINITY;
    // Beyond the end of the stroke what is asked may go half way back to it.
    double free = travel + Math.abs(asked - goal) / 2;
    double speed = Math.abs(asked(-sensor.slope(), error));
    return Math.min(catchingUp, free / Math.max(speed, 1e-12));
  }
}
