package settle.sim.hydraulics;

/**
 * A branch's flow and return pipe together.
 *
 * @param name what it is called
 * @param bore inside diameter [m]
 * @param roughness absolute roughness [m]
 * @param length flow and return together [m]; 0 for none
 * @param fittings sum of the loss coefficients zeta of its fittings [-]
 */
public record Pipe(String name, double bore, double roughness, double length, double fittings) {

  public Pipe {
    if (!(bore > 0 && roughness >= 0 && length >= 0 && fittings >= 0)) {
      throw new IllegalArgumentException(
          "pipe '"
              + name
              + "': bore "
              + bore
              + " m must be > 0; roughness, length and fittings must be >= 0");
    }
  }
}
