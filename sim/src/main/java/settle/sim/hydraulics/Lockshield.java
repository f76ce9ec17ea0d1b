package settle.sim.hydraulics;

/**
 * The balancing valve on an emitter's return.
 *
 * @param name what it is called
 * @param turns turns open at which it is set [-]; infinite where none is fitted
 * @param kv its flow coefficient there [m³/h at 1 bar]; 0 is shut
 */
public record Lockshield(String name, double turns, double kv) {

  /** Where none is fitted: it takes next to nothing of any pressure. */
  public static final Lockshield NONE =
      new Lockshield("no lockshield", Double.POSITIVE_INFINITY, 1000);

  public Lockshield {
    if (!(turns >= 0 && kv >= 0)) {
      throw new IllegalArgumentException(
          "lockshield '" + name + "': turns " + turns + " and Kv " + kv + " must be >= 0");
    }
  }

  /** Whether there is one to set. */
  public boolean isFitted() {
    return Double.isFinite(turns);
  }
}
