package settle.sim.hydraulics;

import java.util.List;
import java.util.OptionalDouble;
import settle.sim.units.Range;

/**
 * A circulator in proportional-pressure mode: head falls in a straight line from its setting at the
 * flow it is set for to half of it without flow; beyond that flow it holds the setting.
 *
 * @param head differential pressure at the flow it is set for [Pa]
 * @param flow that flow [m³/s]
 * @param efficiency hydraulic over electrical power [-]
 */
public record ProportionalPump(double head, double flow, double efficiency) implements Pump {

  public ProportionalPump {
    Range.positive("pump head", head, "Pa");
    Range.positive("flow the pump is set for", flow, "m³/s");
    Range.within("pump efficiency", efficiency, 1e-3, 1, "1");
  }

  @Override
  public OptionalDouble setHead() {
    return OptionalDouble.of(head);
  }

  @Override
  public Pump setTo(double other) {
    return new ProportionalPump(other, flow, efficiency);
  }

  @Override
  public Pump setFor(double other) {
    return new ProportionalPump(head, other, efficiency);
  }

  @Override
  public List<double[]> points() {
    return List.of(new double[] {flow, head});
  }

  @Override
  public double head(double massFlow, double density) {
    return head / 2 * (1 + Math.min(massFlow / (density * flow), 1));
  }

  @Override
  public double slope(double massFlow, double density) {
    return massFlow < density * flow ? head / 2 / (density * flow) : 0;
  }
}
