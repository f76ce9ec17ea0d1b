package settle.scenarios.pipes;

import settle.scenarios.definition.Described;
import settle.sim.house.WaterProperties;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipeLoss;
import settle.sim.hydraulics.Tube;

/**
 * A pipe size.
 *
 * @param described its name and source
 * @param bore inside diameter [m]
 * @param wall thickness [m]
 * @param material what it is made of
 * @param roughness [m]
 */
public record PipeType(
    Described described, double bore, double wall, PipeMaterial material, double roughness) {

  /**
   * A run of it, full of water.
   *
   * @param length flow and return together [m]
   * @param fittings loss coefficients of its fittings [1]
   * @param insulation thickness of the insulation round it [m]; 0 for none
   */
  public Pipe run(double length, double fittings, double insulation) {
    double outside = bore + 2 * wall;
    WaterProperties water = WaterProperties.AT_50;
    Tube tube = new Tube(outside, wall, material.density(), material.specificHeat());
    return new Pipe(
        described.name(),
        bore,
        roughness,
        length,
        fittings,
        tube.heatCapacityPerMetre(water.density(), water.specificHeat()),
        PipeLoss.perMetre(
            bore,
            outside,
            material.conductivity(),
            insulation,
            PipeLoss.INSULATION,
            PipeLoss.INDOOR_SURFACE));
  }
}
