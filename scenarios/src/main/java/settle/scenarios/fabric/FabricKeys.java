package settle.scenarios.fabric;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.List;
import settle.scenarios.definition.DefinitionKeys;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Quantity;
import settle.scenarios.format.Form.Reference;
import settle.scenarios.format.Form.Several;
import settle.scenarios.format.Form.Words;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;

/**
 * Materials, layers, constructions, windows and outside doors, each described once and used by
 * name.
 */
public final class FabricKeys {

  public static final String MATERIAL = "material";
  public static final String CONSTRUCTION = "construction";
  public static final String GLAZING = "glazing or door";

  // Materials and layers.

  private static final Quantity CONDUCTIVITY_FORM =
      Forms.of(Dimension.CONDUCTIVITY, 0.001, 500, "from an evacuated panel to silver")
          .usually(0.015, 400);
  private static final Quantity DENSITY_FORM =
      Forms.of(Dimension.DENSITY, 0.5, 23_000, "from warm air to the heaviest metals")
          .usually(5, 9000);

  public static final Key CONDUCTIVITY =
      Key.required("conductivity", CONDUCTIVITY_FORM, "design thermal conductivity");
  public static final Key DENSITY = Key.required("density", DENSITY_FORM, "density");
  public static final Key SPECIFIC_HEAT =
      Key.required("specific heat", Forms.SPECIFIC_HEAT, "specific heat capacity");
  public static final Table MATERIAL_TABLE =
      Table.of(
          "a building material",
          CONDUCTIVITY,
          DENSITY,
          SPECIFIC_HEAT,
          DefinitionKeys.ABOUT,
          DefinitionKeys.SOURCE);

  public static final Key LAYER_MATERIAL =
      Key.optional("material", new Reference(MATERIAL), "a material by name");
  public static final Key LAYER_CONDUCTIVITY =
      Key.optional("conductivity", CONDUCTIVITY_FORM, "design thermal conductivity");
  public static final Key LAYER_RESISTANCE =
      Key.optional(
          "resistance",
          Forms.of(
                  Dimension.RESISTANCE,
                  0.0001,
                  50,
                  "from a skim of plaster to metres of insulation")
              .usually(0.005, 12),
          "resistance of an air layer, or of a layer that holds no heat worth counting");
  public static final Key LAYER_THICKNESS =
      Key.optional(
          "thickness",
          Forms.of(Dimension.LENGTH, 0.00001, 5, "from a foil to the wall of a castle")
              .usually(0.0005, 1),
          "thickness of the layer");
  public static final Key LAYER_DENSITY = Key.optional("density", DENSITY_FORM, "density");
  public static final Key LAYER_SPECIFIC_HEAT =
      Key.optional("specific heat", Forms.SPECIFIC_HEAT, "specific heat capacity");
  public static final Key LAYER_NAME = Key.optional("name", new Words(), "what the layer is");
  public static final Table LAYER_TABLE =
      Table.of(
              "a layer: a material and a thickness, or the properties themselves, or a resistance",
              LAYER_NAME,
              LAYER_THICKNESS,
              LAYER_DENSITY,
              LAYER_SPECIFIC_HEAT)
          .oneOf(LAYER_MATERIAL, LAYER_CONDUCTIVITY, LAYER_RESISTANCE);

  // Constructions.

  public static final Key LAYERS =
      Key.optional("layers", new Several(new Keys(LAYER_TABLE)), "layers from the room outwards");
  public static final Key U_VALUE =
      Key.optional(
          "U-value",
          Forms.TRANSMITTANCE.usually(0.05, 4),
          "U-value between room and outdoor air, surface resistances included");
  public static final Key MASS =
      Key.optional(
              "mass",
              new Choice(List.of("very light", "light", "medium", "heavy", "very heavy")),
              "mass class of an element known by its U-value, ISO 13790:2008 Table 12")
          .orElse("medium", PRACTICE);
  public static final Key LAYERS_FROM =
      Key.optional(
              "layers from",
              new Choice(List.of("the room", "below")),
              "for floors between rooms: 'below' when the first layer is the ceiling of the room below")
          .orElse("the room", "the usual order");
  public static final Table CONSTRUCTION_TABLE =
      Table.of(
              "the make-up of a wall, floor, ceiling or roof",
              MASS,
              LAYERS_FROM,
              DefinitionKeys.ABOUT,
              DefinitionKeys.SOURCE)
          .oneOf(LAYERS, U_VALUE);

  // Glazing and doors.

  public static final Key OPENING_U =
      Key.required(
          "U-value",
          Forms.of(Dimension.TRANSMITTANCE, 0.01, 7.5, "from the best wall to a single pane")
              .usually(0.5, 6),
          "U-value with its frame");
  public static final Key OPENING_G =
      Key.optional(
              "g-value", Forms.SHARE, "share of the sun's radiation that becomes heat in the room")
          .orElse("0.6", "common double glazing, frame included, " + PRACTICE);
  public static final Table GLAZING_TABLE =
      Table.of(
          "a window or door to outdoors",
          OPENING_U,
          OPENING_G,
          DefinitionKeys.ABOUT,
          DefinitionKeys.SOURCE);

  public static final Key MATERIALS =
      DefinitionKeys.section("materials", MATERIAL, new Keys(MATERIAL_TABLE));
  public static final Key CONSTRUCTIONS =
      DefinitionKeys.section("constructions", CONSTRUCTION, new Keys(CONSTRUCTION_TABLE));
  public static final Key GLAZINGS =
      DefinitionKeys.section("glazing", GLAZING, new Keys(GLAZING_TABLE));

  private FabricKeys() {}
}
