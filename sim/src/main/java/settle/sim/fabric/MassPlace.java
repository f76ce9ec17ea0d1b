package settle.sim.fabric;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the mass of an element sits, and its five nodes then, after ISO 52016-1:2017 6.5.7 (from
 * memory): the outer two on the faces, with 6/R, 3/R, 3/R, 6/R between them. The node inside is the
 * surface that the room sees and holds its share of the heat.
 */
public enum MassPlace {
  /** Class I. */
  INSIDE(1, 0, 0, 0, 0),
  /** Class E. */
  OUTSIDE(0, 0, 0, 0, 1),
  /** Class IE. */
  BOTH(0.5, 0, 0, 0, 0.5),
  /** Class D. */
  EVEN(0.125, 0.25, 0.25, 0.25, 0.125),
  /** Class M. */
  MIDDLE(0, 0, 1, 0, 0);

  /** Share of the resistance between one node and the next. */
  private static final double[] BETWEEN = {1 / 6.0, 1 / 3.0, 1 / 3.0, 1 / 6.0};

  /** Share of the mass of each node, from the room outwards. */
  private final double[] share;

  MassPlace(double... share) {
    this.share = share;
  }

  /**
   * The element.
   *
   * @param name what it is called
   * @param uValue U-value between room and outdoor air [W/(m²K)]
   * @param mass its class
   * @param facing which way it faces: fixes the internal surface resistance contained in the
   *     U-value
   */
  public Construction construction(String name, double uValue, MassClass mass, Facing facing) {
    double resistance = FromUValue.layersResistance(uValue, facing);
    List<Layer> layers = new ArrayList<>();
    for (int node = 0; node < share.length; node++) {
      if (share[node] > 0) {
        layers.add(new Layer("node", 0, share[node] * mass.arealCapacity()));
      }
      if (node < BETWEEN.length) {
        layers.add(Layer.cavity("between nodes", BETWEEN[node] * resistance));
      }
    }
    return new Construction(name, layers);
  }
}
