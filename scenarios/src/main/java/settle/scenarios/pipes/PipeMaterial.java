package settle.scenarios.pipes;

/**
 * What a pipe is made of; values by EN ISO 10456:2007 Table 3, those of steel and plastic (high
 * density polyethylene) from memory.
 *
 * @param density [kg/m³]
 * @param specificHeat [J/(kg K)]
 * @param conductivity [W/(m K)]
 */
public record PipeMaterial(double density, double specificHeat, double conductivity) {

  private static final PipeMaterial COPPER = new PipeMaterial(8900, 380, 380);
  private static final PipeMaterial STEEL = new PipeMaterial(7800, 450, 50);
  private static final PipeMaterial PLASTIC = new PipeMaterial(980, 1800, 0.5);

  /** The material of a word of the format. */
  public static PipeMaterial of(String word) {
    return switch (word) {
      case "copper" -> COPPER;
      case "steel" -> STEEL;
      case "plastic" -> PLASTIC;
      default -> throw new IllegalArgumentException("no pipe material '" + word + "'");
    };
  }
}
