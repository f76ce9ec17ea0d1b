package settle.sim.source;

import java.util.OptionalDouble;

/**
 * A source that holds its flow temperature, if its power suffices, without delay.
 *
 * @param name what it is called
 * @param flowSetPoint flow temperature [°C]
 * @param maximumPower largest heat output [W], > 0; may be infinite
 */
public record IdealSource(String name, double flowSetPoint, double maximumPower) implements Source {

  public IdealSource {
    if (!(maximumPower > 0)) {
      throw new IllegalArgumentException(
          "source '" + name + "': largest output " + maximumPower + " W must be > 0");
    }
  }

  @Override
  public IdealSource setTo(double flowTemperature) {
    return new IdealSource(name, flowTemperature, maximumPower);
  }

  @Override
  public IdealSource scaled(double factor) {
    return new IdealSource(name, flowSetPoint, maximumPower * factor);
  }

  @Override
  public double highestFlow() {
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public double maximumPower(double outdoor, double flow) {
    return maximumPower;
  }

  @Override
  public Carrier carrier() {
    return Carrier.NONE;
  }

  @Override
  public SourceStepper stepper(double specificHeat, double startTemperature) {
    return new IdealSourceStepper(this);
  }

  @Override
  public Delivery deliver(double outdoor, double load, double flow, double entering) {
    return new Delivery(
        maximumPower, 0, 0, Math.max(load - maximumPower, 0), OptionalDouble.empty());
  }

  @Override
  public double overRunTime() {
    return 0;
  }
}
