package settle.scenarios.fabric;

import java.util.ArrayList;
import java.util.List;
import settle.scenarios.definition.Definitions;
import settle.scenarios.format.Form.Reference;
import settle.scenarios.format.Form.Words;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.fabric.Layer;

/** The layers of an opaque element. */
public final class Layers {

  private static final Key NAME = Key.optional("name", new Words(), "what the layer is");
  private static final Key THICKNESS =
      Key.optional(
          "thickness",
          Forms.of(Dimension.LENGTH, 0.00001, 5, "from a foil to the wall of a castle")
              .usually(0.0005, 1),
          "thickness of the layer");
  private static final Key DENSITY = Material.DENSITY.mayBeLeftOut();
  private static final Key SPECIFIC_HEAT = Material.SPECIFIC_HEAT.mayBeLeftOut();
  private static final Key MATERIAL =
      Key.optional("material", new Reference(Material.MATERIAL), "a material by name");
  private static final Key CONDUCTIVITY = Material.CONDUCTIVITY.mayBeLeftOut();
  private static final Key RESISTANCE =
      Key.optional(
          "resistance",
          Forms.of(
                  Dimension.RESISTANCE,
                  0.0001,
                  50,
                  "from a skim of plaster to metres of insulation")
              .usually(0.005, 12),
          "resistance of an air layer, or of a layer that holds no heat worth counting");

  static final Table TABLE =
      Table.of(
              "a layer: a material and a thickness, or the properties themselves, or a resistance",
              NAME,
              THICKNESS,
              DENSITY,
              SPECIFIC_HEAT)
          .oneOf(MATERIAL, CONDUCTIVITY, RESISTANCE);

  private Layers() {}

  /**
   * A list of layers.
   *
   * @param value the list
   * @param known materials by name
   * @return the layers, from the room outwards
   */
  public static List<Layer> read(Value value, Definitions known) {
    List<Layer> layers = new ArrayList<>();
    for (Value item : value.several()) {
      layers.add(layer(item.section(TABLE), known));
    }
    return layers;
  }

  private static Layer layer(Section s, Definitions known) {
    if (s.has(RESISTANCE)) {
      refuse(s, "resistance", THICKNESS, DENSITY, SPECIFIC_HEAT);
      return Layer.cavity(s.words(NAME, "air layer"), s.number(RESISTANCE));
    }
    if (s.has(MATERIAL)) {
      refuse(s, "material", DENSITY, SPECIFIC_HEAT);
      return known.named(s, MATERIAL, Material.SECTION).layer(needed(s, THICKNESS));
    }
    return Layer.solid(
        s.words(NAME, "layer"),
        needed(s, THICKNESS),
        s.number(CONDUCTIVITY),
        needed(s, DENSITY),
        needed(s, SPECIFIC_HEAT));
  }

  private static double needed(Section s, Key key) {
    if (!s.has(key) && s.isSound()) {
      s.lacks(key);
    }
    return s.number(key);
  }

  private static void refuse(Section s, String given, Key... keys) {
    for (Key key : keys) {
      s.value(key)
          .ifPresent(v -> v.problem("does not go with '" + given + "'; leave one of them out"));
    }
  }
}
