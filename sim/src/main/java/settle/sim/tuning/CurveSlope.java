package settle.sim.tuning;

/** Slope of the weather compensation [K/K]. */
public record CurveSlope() implements Setting {

  @Override
  public Kind kind() {
    return Kind.CURVE_SLOPE;
  }

  @Override
  public double of(Plant plant) {
    return plant.curve().slope();
  }

  @Override
  public Plant with(Plant plant, double value) {
    return plant.with(plant.house().withFlowCurve(plant.curve().withSlope(value)));
  }

  @Override
  public double[] marks(Plant plant) {
    return Marks.every("0.05", 0.2, 3);
  }
}
