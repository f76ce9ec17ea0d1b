package settle.sim.tuning;

import settle.sim.valve.Valve;

/**
 * Integral time T_i of a motor head [s].
 *
 * @param branch which it sits on
 * @param where room of that branch
 */
public record MotorIntegralTime(int branch, String where) implements Setting {

  @Override
  public Kind kind() {
    return Kind.MOTOR_INTEGRAL_TIME;
  }

  @Override
  public double of(Plant plant) {
    return plant.controller(branch).integralTime();
  }

  @Override
  public Plant with(Plant plant, double value) {
    double gain = plant.controller(branch).gain();
    return plant.withController(branch, new Valve.Controller(gain, value));
  }

  @Override
  public double[] marks(Plant plant) {
    return Marks.every("300", 600, 6 * 3600.0);
  }
}
