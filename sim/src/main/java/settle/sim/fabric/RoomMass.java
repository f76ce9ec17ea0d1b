package settle.sim.fabric;

import java.util.List;

/**
 * Mass of a whole room of which no surface is known, by its class: ISO 13790:2008 Table 12 (from
 * memory), given there for the inside of a zone per floor area, so that it is what a day and a
 * night take part in.
 */
public enum RoomMass {
  VERY_LIGHT(80_000),
  LIGHT(110_000),
  MEDIUM(165_000),
  HEAVY(260_000),
  VERY_HEAVY(370_000);

  private static final double MASONRY_CONDUCTIVITY = 0.77;
  private static final double MASONRY_DENSITY = 1700;
  private static final double MASONRY_SPECIFIC_HEAT = 800;

  private final double perFloorArea;

  RoomMass(double perFloorArea) {
    this.perFloorArea = perFloorArea;
  }

  /** Heat capacity, air and furnishings not included [J/(m² K) of floor]. */
  public double perFloorArea() {
    return perFloorArea;
  }

  /**
   * Masonry that holds as much, spread evenly over all that surrounds a room: what a wall, floor or
   * ceiling is made of up to where no heat passes.
   *
   * @param name what it is called
   * @param floorArea of the room [m²]
   * @param area of its walls, floor and ceiling together [m²]
   */
  public Construction spread(String name, double floorArea, double area) {
    double arealCapacity = perFloorArea * floorArea / area;
    return new Construction(
        name,
        List.of(
            Layer.solid(
                "masonry",
                arealCapacity / (MASONRY_DENSITY * MASONRY_SPECIFIC_HEAT),
                MASONRY_CONDUCTIVITY,
                MASONRY_DENSITY,
                MASONRY_SPECIFIC_HEAT)));
  }
}
