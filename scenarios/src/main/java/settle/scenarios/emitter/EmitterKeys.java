package settle.scenarios.emitter;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.List;
import settle.scenarios.definition.DefinitionKeys;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Variants;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;

/** Emitters, each described once and used by name. */
public final class EmitterKeys {

  public static final String EMITTER = "emitter";

  public static final String PERIMETER = "perimeter";
  public static final String PANEL = "panel";
  public static final String TOWEL_RAIL = "towel rail";
  private static final Key EMITTER_KIND =
      Key.required(
          DefinitionKeys.KIND,
          new Choice(List.of(PERIMETER, PANEL, TOWEL_RAIL)),
          "perimeter (heated skirting), panel or towel rail");

  public static final Key OUTPUT_PER_METRE =
      Key.required(
          "output per metre",
          Forms.of(
                  Dimension.POWER_PER_LENGTH, 1, 20_000, "from a bare pipe to the largest radiator")
              .usually(10, 4500),
          "output per metre at 75/65/20 (mean excess 50 K), EN 442");
  public static final Key OUTPUT =
      Key.required(
          "output",
          Forms.of(Dimension.POWER, 1, 50_000, "from a bare pipe to the largest radiator")
              .usually(30, 3000),
          "output at 75/65/20 (mean excess 50 K), EN 442");
  public static final Key EXPONENT =
      Key.optional(
              "exponent",
              Forms.of(Dimension.NUMBER, 1, 1.8, "from radiation alone to a fast draught")
                  .usually(1.1, 1.5),
              "exponent n of the characteristic equation")
          .orElse("1.3", "common value, " + PRACTICE);
  public static final Key WATER_PER_METRE =
      Key.required(
          "water per metre",
          Forms.of(Dimension.VOLUME_PER_LENGTH, 1e-6, 0.2, "from a capillary to a drum")
              .usually(3e-5, 2e-2),
          "water content per metre");
  public static final Key WATER =
      Key.required(
          "water",
          Forms.of(Dimension.VOLUME, 1e-5, 1, "from a capillary to a drum").usually(2e-4, 0.05),
          "water content");
  public static final Key METAL_PER_METRE =
      Key.required(
          "metal per metre",
          Forms.of(Dimension.MASS_PER_LENGTH, 0.01, 1000, "from a foil to solid iron")
              .usually(0.1, 120),
          "metal in good contact with the water, per metre");
  public static final Key METAL =
      Key.required(
          "metal",
          Forms.of(Dimension.MASS, 0.01, 2000, "from a foil to solid iron").usually(0.5, 100),
          "metal in good contact with the water");
  public static final Key METAL_HEAT =
      Key.optional("metal specific heat", Forms.SPECIFIC_HEAT, "specific heat of the metal")
          .orElse("450 J/kgK", "steel, EN ISO 10456");
  public static final Key RADIANT_SHARE =
      Key.optional(
              "radiant share",
              Forms.SHARE.usually(0.05, 0.6),
              "share of the output given by radiation")
          .orElse("30 %", PRACTICE);
  public static final Key FACE_HEIGHT =
      Key.required(
          "face height",
          Forms.of(Dimension.LENGTH, 0.005, 2, "what runs along the foot of a wall")
              .usually(0.05, 0.4),
          "height of the face");
  public static final Key FACE_DEPTH =
      Key.required(
          "face depth",
          Forms.of(Dimension.LENGTH, 0.001, 1, "what runs along the foot of a wall")
              .usually(0.01, 0.12),
          "how far it stands out from the wall");
  public static final Key LOWER_CONNECTION =
      Key.required(
          "lower connection",
          Forms.of(Dimension.LENGTH, 0, 5, "the wall of a room"),
          "height of the lower connection's centre above the finished floor");
  public static final Key UPPER_CONNECTION =
      Key.required(
          "upper connection",
          Forms.of(Dimension.LENGTH, 0, 5, "the wall of a room"),
          "height of the upper connection's centre above the finished floor");
  public static final Key HEIGHT =
      Key.optional(
          "height",
          Forms.of(Dimension.LENGTH, 0.01, 5, "the wall of a room").usually(0.15, 2.2),
          "overall height");

  public static final Table PERIMETER_TABLE =
      Table.of(
          "heated skirting, described per metre",
          EMITTER_KIND,
          OUTPUT_PER_METRE,
          EXPONENT,
          WATER_PER_METRE,
          METAL_PER_METRE,
          METAL_HEAT,
          RADIANT_SHARE,
          FACE_HEIGHT,
          FACE_DEPTH,
          LOWER_CONNECTION,
          UPPER_CONNECTION,
          DefinitionKeys.ABOUT,
          DefinitionKeys.SOURCE);
  public static final Table PANEL_TABLE =
      Table.of(
          "a panel radiator, described per metre of its length",
          EMITTER_KIND,
          OUTPUT_PER_METRE,
          EXPONENT,
          WATER_PER_METRE,
          METAL_PER_METRE,
          METAL_HEAT,
          RADIANT_SHARE,
          HEIGHT,
          DefinitionKeys.ABOUT,
          DefinitionKeys.SOURCE);
  public static final Table TOWEL_RAIL_TABLE =
      Table.of(
          "a towel rail or another emitter of one size",
          EMITTER_KIND,
          OUTPUT,
          EXPONENT,
          WATER,
          METAL,
          METAL_HEAT,
          RADIANT_SHARE,
          HEIGHT,
          DefinitionKeys.ABOUT,
          DefinitionKeys.SOURCE);
  public static final Variants EMITTER_FORM =
      new Variants(
          DefinitionKeys.KIND,
          DefinitionKeys.ordered(
              PERIMETER, PERIMETER_TABLE, PANEL, PANEL_TABLE, TOWEL_RAIL, TOWEL_RAIL_TABLE));

  public static final Key EMITTERS = DefinitionKeys.section("emitters", EMITTER, EMITTER_FORM);

  private EmitterKeys() {}
}
