package settle.sim.hydraulics;

import java.util.List;
import java.util.OptionalDouble;
import settle.sim.units.Range;

/**
 * A circulator with something in series through which all its water goes, such as the source: what
 * is left of its head, H(m) - dp(m), with dp by a flow coefficient.
 *
 * @param pump the circulator
 * @param kv flow coefficient of what is in series [m³/h at 1 bar]
 */
public record ThrottledPump(Pump pump, double kv) implements Pump {

  public ThrottledPump {
    Range.positive("flow coefficient in series with the pump", kv, "m³/h");
  }

  @Override
  public double head(double massFlow, double density) {
    return pump.head(massFlow, density) - FlowCoefficient.pressureDrop(massFlow, kv, density);
  }

  @Override
  public double slope(double massFlow, double density) {
    double perSquare = FlowCoefficient.pressureDrop(1, kv, density);
    return pump.slope(massFlow, density) - 2 * perSquare * massFlow;
  }

  @Override
  public OptionalDouble setHead() {
    return pump.setHead();
  }

  @Override
  public Pump setTo(double head) {
    return new ThrottledPump(pump.setTo(head), kv);
  }

  @Override
  public Pump times(double factor) {
    return new ThrottledPump(pump.times(factor), kv);
  }

  @Override
  public Pump setFor(double flow) {
    return new ThrottledPump(pump.setFor(flow), kv);
  }

  @Override
  public double mostHead() {
    return pump.mostHead();
  }

  @Override
  public List<double[]> points() {
    return pump.points();
  }

  @Override
  public double efficiency() {
    return pump.efficiency();
  }
}
