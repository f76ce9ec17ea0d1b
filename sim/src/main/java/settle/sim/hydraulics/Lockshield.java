package settle.sim.hydraulics;

/**
 * The balancing valve on an emitter's return.
 *
 * @param name what it is called
 * @param turns turns open at which it is set [-]
 * @param kv its flow coefficient there [m³/h at 1 bar]; 0 is shut
 */
public record Lockshield(String name, double turns, double kv) {

  public Lockshield {
    if (!(turns >= 0 && kv >= 0)) {
      throw new IllegalArgumentException(
          "lockshield '" + name + "': turns " + turns + " and Kv " + kv + " must be >= 0");
    }
  }
}
