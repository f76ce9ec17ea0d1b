package settle.sim.source;

import java.util.OptionalDouble;

/**
 * A source of any power in the place of another: it holds what it is asked for, as far as that
 * one's water lets it.
 *
 * @param of the other
 */
public record UnlimitedSource(Source of) implements Source {

  @Override
  public String name() {
    return of.name();
  }

  @Override
  public double flowSetPoint() {
    return of.flowSetPoint();
  }

  @Override
  public UnlimitedSource setTo(double flowTemperature) {
    return new UnlimitedSource(of.setTo(flowTemperature));
  }

  @Override
  public UnlimitedSource scaled(double factor) {
    return new UnlimitedSource(of.scaled(factor));
  }

  @Override
  public double maximumPower(double outdoor, double flow) {
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public Exchanger exchanger() {
    return of.exchanger();
  }

  @Override
  public double highestFlow() {
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public double overRunTime() {
    return 0;
  }

  @Override
  public Carrier carrier() {
    return Carrier.NONE;
  }

  @Override
  public SourceStepper stepper(double specificHeat, double startTemperature) {
    return new IdealSourceStepper(
        new IdealSource(name(), flowSetPoint(), Double.POSITIVE_INFINITY));
  }

  @Override
  public Delivery deliver(double outdoor, double load, double flow, double entering) {
    return new Delivery(Double.POSITIVE_INFINITY, 0, 0, 0, OptionalDouble.empty());
  }
}
