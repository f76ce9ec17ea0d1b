package settle.sim.fabric;

/**
 * Inner leaf of an element of which only the U-value is known: what warms with the room. Areal heat
 * capacities and resistances are those of the leaf with its plaster, rounded; common practice, no
 * source.
 */
public enum Leaf {
  /**
   * Plasterboard of 12.5 mm, with what follows it of quilt and studs: timber frame, dry lining,
   * ceilings.
   */
  BOARD("board", 0.06, 10_000, 0.0125),
  /** Aerated block of 100 mm with plasterboard or light plaster. */
  LIGHT_BLOCK("light block", 0.55, 70_000, 0.1),
  /** Medium-density or dense block of 100 mm, plastered. */
  DENSE_BLOCK("dense block", 0.2, 150_000, 0.113),
  /** One brick, 215 mm. */
  BRICK("brick", 0.28, 290_000, 0.215),
  /** Concrete of 200 mm. */
  CONCRETE("concrete", 0.12, 480_000, 0.2);

  private final Layer layer;

  Leaf(String word, double resistance, double arealCapacity, double thickness) {
    layer = new Layer(word, resistance, arealCapacity, thickness);
  }

  /** What it is called: "light block". */
  public String word() {
    return layer.name();
  }

  /** The leaf as a layer. */
  Layer layer() {
    return layer;
  }

  /**
   * The leaf taken where none is named; common practice, no source.
   *
   * @param facing which way the element faces
   * @param behind what it separates the room from
   */
  public static Leaf usual(Facing facing, Behind behind) {
    return switch (facing) {
      case WALL -> LIGHT_BLOCK;
      case CEILING -> BOARD;
      case FLOOR -> behind == Behind.GROUND ? CONCRETE : BOARD;
    };
  }
}
