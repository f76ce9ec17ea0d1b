package settle.sim.measure;

import settle.sim.control.FlowCurve;
import settle.sim.house.House;

/**
 * Another weather compensation.
 *
 * @param before as it is
 * @param after as it is to be
 * @param designOutdoor outdoor temperature for which both are compared [°C]
 */
public record CurveChanged(FlowCurve before, FlowCurve after, double designOutdoor)
    implements Measure {
  @Override
  public Kind kind() {
    return Kind.CURVE;
  }

  @Override
  public double from() {
    return before.setPoint(designOutdoor, 0);
  }

  @Override
  public double to() {
    return after.setPoint(designOutdoor, 0);
  }

  @Override
  public House on(House house, String arrangement) {
    return house.withFlowCurve(after);
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.curve(this);
  }
}
