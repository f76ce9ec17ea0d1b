package settle.sim.emitter;

import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipeResistance;
import settle.sim.water.Water;

/**
 * How water divides between two runs side by side behind one valve: each gets what it lets pass
 * under the pressure that both take.
 */
public final class FlowSplit {

  private static final double LEAST_FLOW = 1e-5;
  private static final double APART = Math.log(1.1);
  private static final int POINTS = 122;
  private static final int HALVINGS = 30;

  /** Share of the first at flows that are so far apart, from the least on [-]. */
  private final double[] share = new double[POINTS];

  /**
   * @param one what the water passes in the first
   * @param other and in the second
   */
  public FlowSplit(Pipe one, Pipe other) {
    double viscosity = Water.dynamicViscosity(50);
    PipeResistance first = new PipeResistance(one, Water.DENSITY, viscosity);
    PipeResistance second = new PipeResistance(other, Water.DENSITY, viscosity);
    for (int k = 0; k < POINTS; k++) {
      double flow = LEAST_FLOW * Math.exp(k * APART);
      double low = 0;
      double high = 1;
      for (int i = 0; i < HALVINGS; i++) {
        double middle = (low + high) / 2;
        first.at(middle * flow);
        second.at((1 - middle) * flow);
        if (first.drop() > second.drop()) {
          high = middle;
        } else {
          low = middle;
        }
      }
      share[k] = (low + high) / 2;
    }
  }

  /**
   * Share of the water that the first run gets [-].
   *
   * @param massFlow through both [kg/s]
   */
  public double first(double massFlow) {
    double x = massFlow > LEAST_FLOW ? Math.log(massFlow / LEAST_FLOW) / APART : 0;
    int k = (int) Math.min(x, POINTS - 2);
    return share[k] + (share[k + 1] - share[k]) * Math.min(x - k, 1);
  }
}
