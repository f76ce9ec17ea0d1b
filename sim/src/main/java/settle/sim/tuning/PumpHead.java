package settle.sim.tuning;

import settle.sim.hydraulics.Pump;

/** Head that a pump of constant or proportional pressure is set to [Pa]. */
public record PumpHead() implements Setting {

  /** Least that a circulator can be set to: a metre of water [Pa]. */
  private static final double LEAST = 10_000;

  @Override
  public Kind kind() {
    return Kind.PUMP_HEAD;
  }

  private static Pump pump(Plant plant) {
    return plant.house().distribution().pump();
  }

  @Override
  public double of(Plant plant) {
    return pump(plant).setHead().orElseThrow();
  }

  @Override
  public Plant with(Plant plant, double value) {
    return plant.with(plant.house().withPump(pump(plant).setTo(value)));
  }

  /** By half metres; what more than it is set to the pump could make, a scenario does not say. */
  @Override
  public double[] marks(Plant plant) {
    return Marks.every("5000", LEAST, Math.max(of(plant), LEAST));
  }
}
