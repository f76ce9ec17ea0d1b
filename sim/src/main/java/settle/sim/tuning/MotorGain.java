package settle.sim.tuning;

import settle.sim.valve.Valve;

/**
 * Gain K_p of a motor head [1/K].
 *
 * @param branch which it sits on
 * @param where room of that branch
 */
public record MotorGain(int branch, String where) implements Setting {

  @Override
  public Kind kind() {
    return Kind.MOTOR_GAIN;
  }

  @Override
  public double of(Plant plant) {
    return plant.controller(branch).gain();
  }

  @Override
  public Plant with(Plant plant, double value) {
    double integralTime = plant.controller(branch).integralTime();
    return plant.withController(branch, new Valve.Controller(value, integralTime));
  }

  @Override
  public double[] marks(Plant plant) {
    return Marks.every("0.05", 0.05, 5);
  }
}
