package settle.scenarios.fabric;

import settle.scenarios.definition.Defined;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;
import settle.sim.fabric.Layer;

/**
 * A building material.
 *
 * @param described its name and source
 * @param conductivity design thermal conductivity [W/(m K)]
 * @param density [kg/m3]
 * @param specificHeat [J/(kg K)]
 */
public record Material(
    Described described, double conductivity, double density, double specificHeat)
    implements Defined {

  static final Key CONDUCTIVITY =
      Key.required(
          "conductivity",
          Forms.of(Dimension.CONDUCTIVITY, 0.001, 500, "from an evacuated panel to silver")
              .usually(0.015, 400),
          "design thermal conductivity");
  static final Key DENSITY =
      Key.required(
          "density",
          Forms.of(Dimension.DENSITY, 0.5, 23_000, "from warm air to the heaviest metals")
              .usually(5, 9000),
          "density");
  static final Key SPECIFIC_HEAT =
      Key.required("specific heat", Forms.SPECIFIC_HEAT, "specific heat capacity");

  /** What messages call it. */
  static final String MATERIAL = "material";

  public static final DefinitionSection<Material> SECTION =
      DefinitionSection.of(
          "materials",
          MATERIAL,
          "brick",
          Table.of("a building material", CONDUCTIVITY, DENSITY, SPECIFIC_HEAT),
          Material::read);

  private static Material read(Described described, Section s, Definitions known) {
    return new Material(
        described, s.number(CONDUCTIVITY), s.number(DENSITY), s.number(SPECIFIC_HEAT));
  }

  /** A layer of it, so thick [m]. */
  Layer layer(double thickness) {
    return Layer.solid(described.name(), thickness, conductivity, density, specificHeat);
  }

  @Override
  public String facts() {
    return Dimension.CONDUCTIVITY.show(conductivity)
        + ", "
        + Dimension.DENSITY.show(density)
        + ", "
        + Dimension.SPECIFIC_HEAT.show(specificHeat);
  }
}
