package settle.sim.measure;

import settle.sim.control.OptimumStart;
import settle.sim.house.House;

/** Heating that begins earlier [s]. */
public record EarlierStart(double from, double to) implements Measure {
  @Override
  public Kind kind() {
    return Kind.PREHEAT;
  }

  @Override
  public House on(House house, String arrangement) {
    return house.withOptimumStart(new OptimumStart.Fixed(to));
  }
}
