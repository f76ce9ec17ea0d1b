package settle.sim.tuning;

import settle.sim.control.OptimumStart;

/** How long before each period heating begins [s]; a plant that has no such lead begins with it. */
public record StartLead() implements Setting {

  @Override
  public Kind kind() {
    return Kind.START_LEAD;
  }

  @Override
  public double of(Plant plant) {
    return start(plant).lead();
  }

  @Override
  public Plant with(Plant plant, double value) {
    return plant.with(plant.house().withOptimumStart(start(plant).withLead(value)));
  }

  private static OptimumStart start(Plant plant) {
    return plant.house().control().optimumStart();
  }

  @Override
  public double[] marks(Plant plant) {
    return Marks.every("300", 0, 4 * 3600.0);
  }
}
