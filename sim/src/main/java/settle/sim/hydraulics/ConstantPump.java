package settle.sim.hydraulics;

import java.util.OptionalDouble;
import settle.sim.units.Range;

/**
 * A circulator that holds a constant differential pressure.
 *
 * @param head that pressure [Pa]
 * @param efficiency hydraulic over electrical power [-]
 */
public record ConstantPump(double head, double efficiency) implements Pump {

  public ConstantPump {
    Range.positive("pump head", head, "Pa");
    Range.within("pump efficiency", efficiency, 1e-3, 1, "1");
  }

  @Override
  public OptionalDouble setHead() {
    return OptionalDouble.of(head);
  }

  @Override
  public Pump setTo(double other) {
    return new ConstantPump(other, efficiency);
  }

  @Override
  public double head(double massFlow, double density) {
    return head;
  }

  @Override
  public double slope(double massFlow, double density) {
    return 0;
  }
}
