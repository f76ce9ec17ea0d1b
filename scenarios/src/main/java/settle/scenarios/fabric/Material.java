package settle.scenarios.fabric;

import settle.scenarios.definition.Described;
import settle.sim.fabric.Layer;

/**
 * A building material.
 *
 * @param described its name and source
 * @param conductivity design thermal conductivity [W/(m K)]
 * @param density [kg/m3]
 * @param specificHeat [J/(kg K)]
 */
public record Material(
    Described described, double conductivity, double density, double specificHeat) {

  /** A layer of it, so thick [m]. */
  public Layer layer(double thickness) {
    return Layer.solid(described.name(), thickness, conductivity, density, specificHeat);
  }
}
