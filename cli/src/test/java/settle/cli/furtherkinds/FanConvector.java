package settle.cli.furtherkinds;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.emitter.EmissionLaw;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.EmitterStepper;
import settle.sim.emitter.Fixing;
import settle.sim.emitter.MixedChain;

/**
 * An emitter that nothing outside the tests knows: a coil with a fan that always turns, output in
 * proportion to the excess, all of it to the air.
 *
 * @param name what it is called
 * @param ratedOutput at 75/65/20 [W]
 */
public record FanConvector(String name, double ratedOutput) implements Emitter {

  @Override
  public String noun() {
    return "fan convector";
  }

  @Override
  public double exponent() {
    return 1;
  }

  @Override
  public double radiantFraction() {
    return 0;
  }

  @Override
  public double backFraction() {
    return 0;
  }

  @Override
  public List<Fixing> fixedTo() {
    return List.of();
  }

  @Override
  public double waterVolume() {
    return 0.4e-3;
  }

  @Override
  public double metalCapacity() {
    return 900;
  }

  @Override
  public Optional<Run> run() {
    return Optional.empty();
  }

  @Override
  public OptionalDouble length() {
    return OptionalDouble.empty();
  }

  @Override
  public Emitter ofLength(double other) {
    throw new IllegalStateException("not sold by length");
  }

  @Override
  public EmitterStepper stepper(double heatCapacity, double startTemperature, double parcels) {
    return new MixedChain(
        1, heatCapacity, EmissionLaw.chainCoefficient(ratedOutput, 1, 1), 1, startTemperature);
  }

  @Override
  public int states() {
    return 1;
  }

  @Override
  public Emitter scaled(double factor) {
    return new FanConvector(name, ratedOutput * factor);
  }

  @Override
  public Emitter withOutputTimes(double factor) {
    return scaled(factor);
  }
}
