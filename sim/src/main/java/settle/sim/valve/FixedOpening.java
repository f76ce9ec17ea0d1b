package settle.sim.valve;

import java.util.Optional;

/**
 * A valve that stays where it is set.
 *
 * @param name what it is called
 * @param kvMaximum its flow coefficient [m³/h at 1 bar]; 0 is shut
 */
public record FixedOpening(String name, double kvMaximum) implements Valve {

  /** Where none is fitted: it takes next to nothing of any pressure. */
  static final FixedOpening NONE = new FixedOpening("no valve", 1000);

  public FixedOpening {
    if (!(kvMaximum >= 0)) {
      throw new IllegalArgumentException("valve '" + name + "': Kv " + kvMaximum + " must be >= 0");
    }
  }

  @Override
  public boolean isFitted() {
    return !equals(NONE);
  }

  @Override
  public double setPoint() {
    return Double.NaN;
  }

  @Override
  public Optional<ValveDrive> drive(double startTemperature) {
    return Optional.empty();
  }

  @Override
  public double kvAtRest(AtRest at) {
    return kvMaximum;
  }

  @Override
  public double lacking(double kv, AtRest at) {
    throw new IllegalStateException("valve '" + name + "' has nothing that moves it");
  }

  @Override
  public FixedOpening raised(double by) {
    return this;
  }
}
