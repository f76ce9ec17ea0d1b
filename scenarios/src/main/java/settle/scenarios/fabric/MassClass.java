package settle.scenarios.fabric;

import java.util.Locale;

/**
 * Mass classes of ISO 13790:2008 Table 12 (from memory). The table gives the effective heat
 * capacity C_m and mass area A_m of a room per square metre of its floor; per square metre of
 * massive element that is C_m/A_m.
 */
public enum MassClass {
  VERY_LIGHT(80_000, 2.5),
  LIGHT(110_000, 2.5),
  MEDIUM(165_000, 2.5),
  HEAVY(260_000, 3.0),
  VERY_HEAVY(370_000, 3.5);

  private final double capacityPerFloor;
  private final double massAreaPerFloor;

  MassClass(double capacityPerFloor, double massAreaPerFloor) {
    this.capacityPerFloor = capacityPerFloor;
    this.massAreaPerFloor = massAreaPerFloor;
  }

  /** The class of a word of the format, such as "very light". */
  public static MassClass of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }

  /** Heat capacity of an element [J/(m2 K)]. */
  public double arealCapacity() {
    return capacityPerFloor / massAreaPerFloor;
  }
}
