package settle.sim.hydraulics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import settle.sim.units.Range;

/**
 * A circulator at fixed speed, by its curve: straight between points, held below the first, falling
 * on to nothing beyond the last as between the last two.
 *
 * @param flows ascending from 0 [m³/s]; not modified
 * @param heads strictly falling [Pa], same length, at least two; not modified
 * @param efficiency hydraulic over electrical power [-]
 */
public record CurvePump(double[] flows, double[] heads, double efficiency) implements Pump {

  public CurvePump {
    flows = flows.clone();
    heads = heads.clone();
    if (flows.length < 2 || flows.length != heads.length) {
      throw new IllegalArgumentException(
          "a pump curve needs two points or more, as many flows as heads");
    }
    for (int i = 0; i < flows.length; i++) {
      Range.notNegative("flow of the pump curve", flows[i], "m³/s");
      Range.notNegative("head of the pump curve", heads[i], "Pa");
      if (i > 0 && !(flows[i] > flows[i - 1] && heads[i] < heads[i - 1])) {
        throw new IllegalArgumentException("along a pump curve flow must rise and head must fall");
      }
    }
    Range.within("pump efficiency", efficiency, 1e-3, 1, "1");
  }

  @Override
  public OptionalDouble setHead() {
    return OptionalDouble.empty();
  }

  @Override
  public Pump setTo(double head) {
    throw new IllegalStateException("a pump of fixed speed has no head to set");
  }

  @Override
  public Pump times(double factor) {
    return new CurvePump(
        flows, Arrays.stream(heads).map(head -> factor * head).toArray(), efficiency);
  }

  @Override
  public double mostHead() {
    return heads[0];
  }

  @Override
  public List<double[]> points() {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < flows.length; i++) {
      points.add(new double[] {flows[i], heads[i]});
    }
    return points;
  }

  @Override
  public double head(double massFlow, double density) {
    double q = massFlow / density;
    int i = piece(q);
    double along =
        heads[i] + (heads[i + 1] - heads[i]) / (flows[i + 1] - flows[i]) * (q - flows[i]);
    return Math.max(Math.min(along, heads[0]), 0);
  }

  @Override
  public double slope(double massFlow, double density) {
    double q = massFlow / density;
    if (q < flows[0] || head(massFlow, density) == 0) {
      return 0;
    }
    int i = piece(q);
    return (heads[i + 1] - heads[i]) / (flows[i + 1] - flows[i]) / density;
  }

  private int piece(double q) {
    int i = 0;
    while (i + 2 < flows.length && q > flows[i + 1]) {
      i++;
    }
    return i;
  }
}
