package settle.sim.hydraulics;

/**
 * A circulator that holds a constant differential pressure.
 *
 * @param head differential pressure across the branches [Pa], > 0
 * @param efficiency hydraulic power over electrical power [-], 0 to 1
 */
public record Pump(double head, double efficiency) {

  public Pump {
    if (!(head > 0)) {
      throw new IllegalArgumentException("pump head " + head + " Pa must be > 0");
    }
    if (!(efficiency > 0 && efficiency <= 1)) {
      throw new IllegalArgumentException("pump efficiency " + efficiency + " must lie in 0..1");
    }
  }
}
