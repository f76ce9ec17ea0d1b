package settle.scenarios.fabric;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import settle.scenarios.definition.Defined;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Several;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.NumberText;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Layer;

/** What an opaque element is made of, before it is known which way it faces. */
public sealed interface MakeUp extends Defined {

  Key LAYERS =
      Key.optional("layers", new Several(new Keys(Layers.TABLE)), "layers from the room outwards");
  Key U_VALUE =
      Key.optional(
          "U-value",
          Forms.TRANSMITTANCE.usually(0.05, 4),
          "U-value between room and outdoor air, surface resistances included");
  Key MASS =
      Key.optional(
              "mass",
              new Choice(List.of("very light", "light", "medium", "heavy", "very heavy")),
              "mass class of an element known by its U-value, ISO 13790:2008 Table 12")
          .orElse("medium", PRACTICE);
  Key LAYERS_FROM =
      Key.optional(
              "layers from",
              new Choice(List.of("the room", "below")),
              "for floors between rooms: 'below' when the first layer is the ceiling of the room below")
          .orElse("the room", "the usual order");

  /** What messages call it. */
  String CONSTRUCTION = "construction";

  DefinitionSection<MakeUp> SECTION =
      DefinitionSection.of(
          "constructions",
          CONSTRUCTION,
          "solid brick wall",
          Table.of("the make-up of a wall, floor, ceiling or roof", MASS, LAYERS_FROM)
              .oneOf(LAYERS, U_VALUE),
          MakeUp::read);

  private static MakeUp read(Described described, Section s, Definitions known) {
    Optional<Value> layers = s.value(LAYERS);
    if (layers.isPresent()) {
      boolean fromBelow =
          s.value(LAYERS_FROM)
              .map(v -> v.choice((Choice) LAYERS_FROM.form()).equals("below"))
              .orElse(false);
      return new Layered(described, Layers.read(layers.get(), known), fromBelow);
    }
    return Lumped.read(described, s);
  }

  @Override
  default String facts() {
    Facing facing = usualFacing(described().name());
    Construction construction = construction(facing);
    return "U "
        + Dimension.TRANSMITTANCE.show(NumberText.rounded(construction.uValue(facing), 2))
        + " as "
        + facing.name().toLowerCase(Locale.ROOT)
        + ", "
        + Dimension.AREAL_CAPACITY.show(NumberText.rounded(construction.arealCapacity(), -3));
  }

  /**
   * Which way an element is usually met, by the word in its name: only for the U-value in the list.
   */
  private static Facing usualFacing(String name) {
    if (name.contains("floor")) {
      return Facing.FLOOR;
    }
    return name.contains("ceiling") || name.contains("roof") ? Facing.CEILING : Facing.WALL;
  }

  /** The element seen from a room in which it faces so. */
  Construction construction(Facing facing);

  /**
   * Known layer by layer.
   *
   * @param described its name and source
   * @param layers from the room outwards, or from below
   * @param fromBelow whether the first layer is the ceiling of the room below
   */
  record Layered(Described described, List<Layer> layers, boolean fromBelow) implements MakeUp {

    public Layered {
      layers = List.copyOf(layers);
    }

    @Override
    public Construction construction(Facing facing) {
      if (!fromBelow || facing != Facing.FLOOR) {
        return new Construction(described.name(), layers);
      }
      List<Layer> turned = new ArrayList<>(layers);
      Collections.reverse(turned);
      return new Construction(described.name(), turned);
    }

    /**
     * The half towards the room of an element whose far side is as warm: heat does not cross its
     * middle.
     */
    public Construction half(Facing facing) {
      Construction whole = construction(facing);
      double middle = whole.resistance() / 2;
      List<Layer> half = new ArrayList<>();
      double reached = 0;
      for (Layer layer : whole.layers()) {
        double rest = middle - reached;
        if (rest <= layer.resistance()) {
          half.add(layer.slice(rest / layer.resistance()));
          break;
        }
        half.add(layer);
        reached += layer.resistance();
      }
      return new Construction("half of " + described.name(), half);
    }
  }

  /**
   * Known by its U-value and mass.
   *
   * @param described its name and source
   * @param uValue U-value between room and outdoor air [W/(m2 K)]
   * @param mass mass class
   */
  record Lumped(Described described, double uValue, MassClass mass) implements MakeUp {

    /** Reads it from a section that has the keys of both. */
    public static Lumped read(Described described, Section s) {
      return new Lumped(described, s.number(U_VALUE), MassClass.of(s.choice(MASS)));
    }

    /** What an element could reach that had next to no resistance of its own [W/(m2 K)]. */
    public static double largestUValue(Facing facing) {
      return 1 / (facing.surfaceResistance() + Facing.EXTERNAL_RESISTANCE + 0.01);
    }

    @Override
    public Construction construction(Facing facing) {
      return Construction.ofUValue(described.name(), uValue, mass.arealCapacity(), facing);
    }
  }
}
