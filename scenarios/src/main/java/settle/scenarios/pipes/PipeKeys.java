package settle.scenarios.pipes;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.List;
import settle.scenarios.definition.DefinitionKeys;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;

/** Pipes, each described once and used by name. */
public final class PipeKeys {

  public static final String PIPE = "pipe";

  public static final Key BORE =
      Key.required(
          "bore",
          Forms.of(Dimension.LENGTH, 0.001, 0.3, "from a capillary to a street main")
              .usually(0.004, 0.06),
          "inside diameter");
  public static final Key ROUGHNESS =
      Key.optional(
              "roughness",
              Forms.of(Dimension.LENGTH, 0, 0.01, "smooth to a heavily furred pipe")
                  .usually(0, 0.0005),
              "absolute roughness of the bore")
          .orElse("0.0015 mm", "drawn tubing, Moody 1944, from memory");
  public static final Key WALL =
      Key.optional(
              "wall",
              Forms.of(Dimension.LENGTH, 0.00005, 0.02, "from a foil to a street main")
                  .usually(0.0004, 0.005),
              "wall thickness")
          .orElse("0.7 mm", "15 mm copper, EN 1057");
  public static final Key MADE_OF =
      Key.optional("made of", new Choice(List.of("copper", "steel", "plastic")), "its material")
          .orElse("copper", PRACTICE);
  public static final Table PIPE_TABLE =
      Table.of(
          "a pipe", BORE, WALL, MADE_OF, ROUGHNESS, DefinitionKeys.ABOUT, DefinitionKeys.SOURCE);

  public static final Key PIPES = DefinitionKeys.section("pipes", PIPE, new Keys(PIPE_TABLE));

  private PipeKeys() {}
}
