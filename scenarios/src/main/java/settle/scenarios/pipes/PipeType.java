package settle.scenarios.pipes;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.List;
import settle.scenarios.definition.Defined;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.NumberText;
import settle.sim.house.WaterProperties;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipeLoss;
import settle.sim.hydraulics.Tube;

/**
 * A pipe size.
 *
 * @param described its name and source
 * @param bore inside diameter [m]
 * @param wall thickness [m]
 * @param material what it is made of
 * @param roughness [m]
 */
public record PipeType(
    Described described, double bore, double wall, PipeMaterial material, double roughness)
    implements Defined {

  private static final Key BORE =
      Key.required(
          "bore",
          Forms.of(Dimension.LENGTH, 0.001, 0.3, "from a capillary to a street main")
              .usually(0.004, 0.06),
          "inside diameter");
  private static final Key WALL =
      Key.optional(
              "wall",
              Forms.of(Dimension.LENGTH, 0.00005, 0.02, "from a foil to a street main")
                  .usually(0.0004, 0.005),
              "wall thickness")
          .orElse("0.7 mm", "15 mm copper, EN 1057");
  private static final Key MADE_OF =
      Key.optional("made of", new Choice(List.of("copper", "steel", "plastic")), "its material")
          .orElse("copper", PRACTICE);
  private static final Key ROUGHNESS =
      Key.optional(
              "roughness",
              Forms.of(Dimension.LENGTH, 0, 0.01, "smooth to a heavily furred pipe")
                  .usually(0, 0.0005),
              "absolute roughness of the bore")
          .orElse("0.0015 mm", "drawn tubing, Moody 1944, from memory");

  /** What messages call it. */
  public static final String PIPE = "pipe";

  public static final DefinitionSection<PipeType> SECTION =
      DefinitionSection.of(
          "pipes",
          PIPE,
          "15 mm copper",
          Table.of("a pipe", BORE, WALL, MADE_OF, ROUGHNESS),
          PipeType::read);

  private static PipeType read(Described described, Section s, Definitions known) {
    return new PipeType(
        described,
        s.number(BORE),
        s.number(WALL),
        PipeMaterial.of(s.choice(MADE_OF)),
        s.number(ROUGHNESS));
  }

  @Override
  public String facts() {
    Pipe metre = run(1, 0, 0);
    return "bore "
        + Dimension.LENGTH.show(bore)
        + ", "
        + Dimension.CAPACITY_PER_LENGTH.show(NumberText.rounded(metre.heatCapacity(), 0))
        + " with its water, bare "
        + Dimension.CONDUCTANCE_PER_LENGTH.show(NumberText.rounded(metre.lossCoefficient(), 2));
  }

  /**
   * A run of it, full of water.
   *
   * @param length flow and return together [m]
   * @param fittings loss coefficients of its fittings [1]
   * @param insulation thickness of the insulation round it [m]; 0 for none
   */
  public Pipe run(double length, double fittings, double insulation) {
    double outside = bore + 2 * wall;
    WaterProperties water = WaterProperties.AT_50;
    Tube tube = new Tube(outside, wall, material.density(), material.specificHeat());
    return new Pipe(
        described.name(),
        bore,
        roughness,
        length,
        fittings,
        tube.heatCapacityPerMetre(water.density(), water.specificHeat()),
        PipeLoss.perMetre(
            bore,
            outside,
            material.conductivity(),
            insulation,
            PipeLoss.INSULATION,
            PipeLoss.INDOOR_SURFACE));
  }
}
