package settle.sim.measure;

import settle.sim.house.House;
import settle.sim.hydraulics.Bypass;

/** An automatic bypass. */
public record BypassFitted(Bypass bypass) implements Measure {
  @Override
  public Kind kind() {
    return Kind.BYPASS;
  }

  @Override
  public double from() {
    return Double.NaN;
  }

  @Override
  public double to() {
    return bypass.setPressure();
  }

  @Override
  public House on(House house, String arrangement) {
    return house.withDistribution(house.distribution().withBypass(bypass));
  }
}
