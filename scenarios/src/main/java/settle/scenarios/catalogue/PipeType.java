package settle.scenarios.catalogue;

import settle.sim.hydraulics.Pipe;

/**
 * A pipe size.
 *
 * @param described its name and source
 * @param bore inside diameter [m]
 * @param roughness [m]
 */
public record PipeType(Described described, double bore, double roughness) {

  /** A branch of it: flow and return together [m], loss coefficients of its fittings [1]. */
  public Pipe branch(double length, double fittings) {
    return Pipe.withoutDelay(described.name(), bore, roughness, length, fittings);
  }
}
