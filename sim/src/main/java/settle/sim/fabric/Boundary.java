package settle.sim.fabric;

/** What lies behind a room's surface. */
public sealed interface Boundary {

  /** Outdoor air, through the external surface resistance. */
  record Outdoors() implements Boundary {}

  /**
   * A temperature that does not follow the weather: ground, a neighbour, an unheated space.
   *
   * @param what what is there, in words for the reader
   * @param temperature its temperature [°C]
   */
  record Held(String what, double temperature) implements Boundary {}

  /** No heat passes: the like on the other side does the same. */
  record Adiabatic() implements Boundary {}
}
