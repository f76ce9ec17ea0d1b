package settle.sim.fabric;

/** Mass of an opaque element by its class, ISO 52016-1:2017 Table B.13 (from memory). */
public enum MassClass {
  VERY_LIGHT(50_000),
  LIGHT(75_000),
  MEDIUM(110_000),
  HEAVY(175_000),
  VERY_HEAVY(250_000);

  private final double arealCapacity;

  MassClass(double arealCapacity) {
    this.arealCapacity = arealCapacity;
  }

  /** Heat capacity of the element, kappa_m [J/(m²K)]. */
  public double arealCapacity() {
    return arealCapacity;
  }
}
