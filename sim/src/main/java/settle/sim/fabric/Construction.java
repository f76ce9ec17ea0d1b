package settle.sim.fabric;

import java.util.ArrayList;
import java.util.List;
import settle.sim.units.Range;

/**
 * An opaque element's make-up.
 *
 * @param name what it is called
 * @param layers from the room's side outwards (for a partition: from its first room to its second);
 *     not empty
 */
public record Construction(String name, List<Layer> layers) {

  public Construction {
    layers = List.copyOf(layers);
    if (layers.isEmpty()) {
      throw new IllegalArgumentException("construction '" + name + "' has no layers");
    }
  }

  /** Resistance of all layers, surfaces not included [m²K/W]. */
  public double resistance() {
    double sum = 0;
    for (Layer layer : layers) {
      sum += layer.resistance();
    }
    return sum;
  }

  /** Heat capacity of all layers [J/(m²K)]. */
  public double arealCapacity() {
    double sum = 0;
    for (Layer layer : layers) {
      sum += layer.arealCapacity();
    }
    return sum;
  }

  /**
   * U-value between room and outdoor air [W/(m²K)], ISO 6946.
   *
   * @param facing which way the surface faces
   */
  public double uValue(Facing facing) {
    return 1 / (facing.surfaceResistance() + resistance() + Facing.EXTERNAL_RESISTANCE);
  }

  /**
   * This make-up with every conductivity scaled alike, so that its layers together have another
   * resistance; heat capacities stay.
   *
   * @param other resistance of all layers, surfaces not included [m²K/W], above 0
   * @throws IllegalArgumentException if it has no resistance to be changed
   */
  public Construction withResistance(double other) {
    double present = resistance();
    Range.positive("resistance of construction '" + name + "'", present, "m2 K/W");
    Range.positive("other resistance of construction '" + name + "'", other, "m2 K/W");
    List<Layer> changed = new ArrayList<>();
    for (Layer layer : layers) {
      changed.add(
          new Layer(
              layer.name(),
              layer.resistance() * other / present,
              layer.arealCapacity(),
              layer.thickness()));
    }
    return new Construction(name, changed);
  }
}
