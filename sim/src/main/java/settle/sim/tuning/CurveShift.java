package settle.sim.tuning;

/** Parallel shift of the weather compensation [K]. */
public record CurveShift() implements Setting {

  @Override
  public Kind kind() {
    return Kind.CURVE_SHIFT;
  }

  @Override
  public double of(Plant plant) {
    return plant.curve().shift();
  }

  @Override
  public Plant with(Plant plant, double value) {
    return plant.with(plant.house().withFlowCurve(plant.curve().withShift(value)));
  }

  @Override
  public double[] marks(Plant plant) {
    return Marks.every("1", -10, 20);
  }
}
