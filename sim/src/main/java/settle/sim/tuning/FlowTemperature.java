package settle.sim.tuning;

/** Flow temperature asked of the source, where no weather compensation sets it [°C]. */
public record FlowTemperature() implements Setting {

  @Override
  public Kind kind() {
    return Kind.FLOW_TEMPERATURE;
  }

  @Override
  public double of(Plant plant) {
    return plant.house().source().flowSetPoint();
  }

  @Override
  public Plant with(Plant plant, double value) {
    return plant.with(plant.house().withSource(plant.house().source().setTo(value)));
  }

  @Override
  public double[] marks(Plant plant) {
    return Marks.every("1", 25, Math.min(80, plant.house().source().highestFlow()));
  }
}
