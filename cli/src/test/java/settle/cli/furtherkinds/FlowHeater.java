package settle.cli.furtherkinds;

import java.util.OptionalDouble;
import settle.sim.source.Carrier;
import settle.sim.source.Delivery;
import settle.sim.source.IdealSource;
import settle.sim.source.IdealSourceStepper;
import settle.sim.source.Source;
import settle.sim.source.SourceStepper;

/**
 * A source that nothing outside the tests knows: electric elements in the flow, which give what is
 * asked for as far as they can.
 *
 * @param name what it is called
 * @param power of its elements [W]
 * @param flowSetPoint flow temperature asked for [°C]
 */
public record FlowHeater(String name, double power, double flowSetPoint) implements Source {

  @Override
  public Source setTo(double flowTemperature) {
    return new FlowHeater(name, power, flowTemperature);
  }

  @Override
  public Source scaled(double factor) {
    return new FlowHeater(name, power * factor, flowSetPoint);
  }

  @Override
  public double maximumPower(double outdoor, double flow) {
    return power;
  }

  @Override
  public double highestFlow() {
    return 75;
  }

  @Override
  public double overRunTime() {
    return 0;
  }

  @Override
  public Carrier carrier() {
    return Carrier.ELECTRICITY;
  }

  @Override
  public SourceStepper stepper(double specificHeat, double startTemperature) {
    return new IdealSourceStepper(new IdealSource(name, flowSetPoint, power));
  }

  @Override
  public Delivery deliver(double outdoor, double load, double flow, double returning) {
    double unmet = Math.max(load - power, 0);
    return new Delivery(power, 0, 0, unmet, OptionalDouble.of(load - unmet));
  }
}
