package settle.scenarios.fabric;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import settle.scenarios.definition.Described;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Layer;

/** What an opaque element is made of, before it is known which way it faces. */
public sealed interface MakeUp {

  /** Its name and source. */
  Described described();

  /** The element seen from a room in which it faces so. */
  Construction construction(Facing facing);

  /**
   * Known layer by layer.
   *
   * @param described its name and source
   * @param layers from the room outwards, or from below
   * @param fromBelow whether the first layer is the ceiling of the room below
   */
  record Layered(Described described, List<Layer> layers, boolean fromBelow) implements MakeUp {

    public Layered {
      layers = List.copyOf(layers);
    }

    @Override
    public Construction construction(Facing facing) {
      if (!fromBelow || facing != Facing.FLOOR) {
        return new Construction(described.name(), layers);
      }
      List<Layer> turned = new ArrayList<>(layers);
      Collections.reverse(turned);
      return new Construction(described.name(), turned);
    }

    /**
     * The half towards the room of an element whose far side is as warm: heat does not cross its
     * middle.
     */
    public Construction half(Facing facing) {
      Construction whole = construction(facing);
      double middle = whole.resistance() / 2;
      List<Layer> half = new ArrayList<>();
      double reached = 0;
      for (Layer layer : whole.layers()) {
        double rest = middle - reached;
        if (rest <= layer.resistance()) {
          half.add(layer.slice(rest / layer.resistance()));
          break;
        }
        half.add(layer);
        reached += layer.resistance();
      }
      return new Construction("half of " + described.name(), half);
    }
  }

  /**
   * Known by its U-value and mass.
   *
   * @param described its name and source
   * @param uValue U-value between room and outdoor air [W/(m2 K)]
   * @param mass mass class
   */
  record Lumped(Described described, double uValue, MassClass mass) implements MakeUp {

    /** What an element could reach that had next to no resistance of its own [W/(m2 K)]. */
    public static double largestUValue(Facing facing) {
      return 1 / (facing.surfaceResistance() + Facing.EXTERNAL_RESISTANCE + 0.01);
    }

    @Override
    public Construction construction(Facing facing) {
      return Construction.ofUValue(described.name(), uValue, mass.arealCapacity(), facing);
    }
  }
}
